package bothy.channel.telegram;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import okhttp3.ConnectionPool;
import okhttp3.Dispatcher;
import okhttp3.Interceptor;
import okhttp3.OkHttpClient;
import okhttp3.Protocol;
import okhttp3.Request;
import okhttp3.Response;
import okhttp3.ResponseBody;

/** HTTP clients that give up in time and hand out whole answers only. */
final class Http {
    private static final Duration CONNECTING = Duration.ofSeconds(10);
    private static final Duration SLACK = Duration.ofSeconds(15);
    private static final Duration SENDING = Duration.ofSeconds(5);
    private static final Duration KEPT = Duration.ofMinutes(5);

    private Http() {}

    static OkHttpClient forRequests(TelegramSettings settings) {
        Dispatcher dispatcher = new Dispatcher(new OnTheSpot());
        dispatcher.setMaxRequestsPerHost(dispatcher.getMaxRequests()); // all go to one host, and five is the default
        return basic(settings.patience())
                .callTimeout(settings.patience().plus(SENDING))
                .dispatcher(dispatcher)
                .connectionPool(new ConnectionPool(settings.workers(), KEPT.toMinutes(), TimeUnit.MINUTES))
                .addInterceptor(Http::whole)
                .build();
    }

    static OkHttpClient forUpdates(TelegramSettings settings) {
        return basic(settings.longPoll().plus(SLACK)).build();
    }

    /** A client that puts each request to an interceptor, and nothing on the wire itself. */
    static OkHttpClient answeredBy(Interceptor interceptor) {
        return new OkHttpClient.Builder().addInterceptor(interceptor).build();
    }

    private static OkHttpClient.Builder basic(Duration patience) {
        return new OkHttpClient.Builder()
                .connectTimeout(CONNECTING)
                .readTimeout(patience)
                .writeTimeout(patience);
    }

    /** Reads an answer to its end, so that one that breaks off fails the request instead of leaving it open for ever. */
    static Response whole(Interceptor.Chain chain) throws IOException {
        try (Response response = chain.proceed(chain.request())) {
            return withBody(
                    response, response.body() == null ? "" : response.body().string());
        }
    }

    static Response withBody(Response response, String body) {
        return response.newBuilder().body(ResponseBody.create(body, null)).build();
    }

    /** An answer that did not come over the wire. */
    static Response made(Request request, String body) {
        return new Response.Builder()
                .request(request)
                .protocol(Protocol.HTTP_1_1)
                .code(200)
                .message("OK")
                .body(ResponseBody.create(body, null))
                .build();
    }

    static void close(OkHttpClient client) {
        client.dispatcher().cancelAll();
        client.dispatcher().executorService().shutdown();
        client.connectionPool().evictAll();
    }
}
