package bothy;

import bothy.channel.telegram.TelegramChannel;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;

/** Where the service is looked at and called from outside: /health, /metrics and, with a webhook, /telegram. */
final class Porch implements AutoCloseable {
    static final String WEBHOOK = "/telegram";
    private static final String SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token";
    private static final int LONGEST_UPDATE = 1 << 20;
    private static final int THREADS = 8;
    private static final int BACKLOG = 100;

    private final HttpServer server;
    private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, work -> {
        Thread thread = new Thread(work, "porch");
        thread.setDaemon(true);
        return thread;
    });

    private record Answer(int status, String type, String text) {}

    private interface Answering {
        Answer to(HttpExchange exchange) throws IOException;
    }

    private Porch(HttpServer server) {
        this.server = server;
        server.setExecutor(threads);
    }

    /** @throws Complaints.MisUse when the address cannot be listened at */
    static Porch at(InetSocketAddress address) {
        try {
            return new Porch(HttpServer.create(address, BACKLOG));
        } catch (IOException taken) {
            throw new Complaints.MisUse("Nothing can be served at --http " + address.getHostString() + ":"
                    + address.getPort() + " (" + taken.getMessage() + "). Name a free port.");
        }
    }

    int port() {
        return server.getAddress().getPort();
    }

    /** @param wrong what is wrong just now, empty text when all is well */
    Porch open(Supplier<String> wrong, Supplier<String> metrics) {
        serve("/health", "GET", exchange -> {
            String found = wrong.get();
            return new Answer(found.isEmpty() ? 200 : 503, "text/plain", found.isEmpty() ? "well\n" : found + "\n");
        });
        serve("/metrics", "GET", exchange -> new Answer(200, "text/plain; version=0.0.4", metrics.get()));
        server.start();
        return this;
    }

    void receiveFor(TelegramChannel channel) {
        serve(WEBHOOK, "POST", exchange -> {
            byte[] body = exchange.getRequestBody().readNBytes(LONGEST_UPDATE);
            String secret = exchange.getRequestHeaders().getFirst(SECRET_HEADER);
            int status = channel.delivered(new String(body, StandardCharsets.UTF_8), secret);
            return new Answer(status, "text/plain", "");
        });
    }

    private void serve(String path, String method, Answering answering) {
        server.createContext(path, exchange -> {
            try (exchange) {
                Answer answer = exchange.getRequestMethod().equals(method)
                                && exchange.getRequestURI().getPath().equals(path)
                        ? answering.to(exchange)
                        : new Answer(404, "text/plain", "");
                byte[] bytes = answer.text().getBytes(StandardCharsets.UTF_8);
                exchange.getResponseHeaders().set("Content-Type", answer.type() + "; charset=utf-8");
                exchange.sendResponseHeaders(answer.status(), bytes.length == 0 ? -1 : bytes.length);
                if (bytes.length > 0) {
                    exchange.getResponseBody().write(bytes);
                }
            }
        });
    }

    /** Takes no more calls; those at hand come to their end, two seconds at most. */
    @Override
    public void close() {
        server.stop(2);
        threads.shutdownNow();
    }
}
