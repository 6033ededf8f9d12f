package bothy.weather;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.zip.GZIPOutputStream;

/** A forecast service on loopback that answers as it is told, one answer after the other, and remembers what it was asked. */
public final class ForecastServer implements AutoCloseable {

    /** What it was asked. */
    public record Asked(String path, Headers headers) {}

    /** What it does with a request. */
    public interface Answer {
        void to(HttpExchange exchange) throws IOException;
    }

    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final Deque<Answer> answers = new ArrayDeque<>();
    public final List<Asked> asked = new ArrayList<>();

    public ForecastServer() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        server.setExecutor(threads);
        server.createContext("/", this::handle);
        server.start();
    }

    public URI address() {
        return URI.create("http://localhost:" + server.getAddress().getPort() + "/weatherapi/locationforecast/2.0/");
    }

    public ForecastServer then(Answer answer) {
        answers.add(answer);
        return this;
    }

    private void handle(HttpExchange exchange) throws IOException {
        Answer answer;
        synchronized (this) {
            asked.add(new Asked(exchange.getRequestURI().toString(), exchange.getRequestHeaders()));
            answer = answers.poll();
        }
        try (exchange) {
            if (answer == null) {
                exchange.sendResponseHeaders(418, -1);
            } else {
                answer.to(exchange);
            }
        }
    }

    public static Answer forecast(String json, String expires, String lastModified) {
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put("Expires", expires);
        headers.put("Last-Modified", lastModified);
        return status(200, headers, json.getBytes(StandardCharsets.UTF_8));
    }

    static Answer packed(String json) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(json.getBytes(StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return status(200, Map.of("Content-Encoding", "gzip"), bytes.toByteArray());
    }

    public static Answer status(int status, Map<String, String> headers, byte[] body) {
        return exchange -> {
            headers.forEach((name, value) -> exchange.getResponseHeaders().set(name, value));
            exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
            exchange.getResponseBody().write(body);
        };
    }

    static Answer body(String text) {
        return status(200, Map.of(), text.getBytes(StandardCharsets.UTF_8));
    }

    static Answer afterMillis(long millis, Answer answer) {
        return exchange -> {
            pause(millis);
            answer.to(exchange);
        };
    }

    /** Headers at once, then a body that never comes to its end. */
    static Answer trickle() {
        return exchange -> {
            exchange.sendResponseHeaders(200, 0);
            try (OutputStream out = exchange.getResponseBody()) {
                for (int i = 0; i < 100; i++) {
                    out.write(' ');
                    out.flush();
                    pause(50);
                }
            }
        };
    }

    /** Says that more is to come than comes. */
    static Answer cutOff(String json) {
        return exchange -> {
            byte[] whole = json.getBytes(StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(200, whole.length);
            exchange.getResponseBody().write(whole, 0, whole.length / 2);
            exchange.getResponseBody().flush();
        };
    }

    private static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
