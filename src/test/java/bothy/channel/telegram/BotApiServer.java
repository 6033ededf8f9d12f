package bothy.channel.telegram;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A Bot API server on loopback: long polls, offsets, a second reader, the limits on text and buttons, and faults on demand. It speaks the
 * published format of the methods that the channel uses (core.telegram.org/bots/api), and refuses all others.
 */
public final class BotApiServer implements AutoCloseable {
    public static final String TOKEN = "4242424242:AAF-secret_Token-of-the-school-plot";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final Pattern FIELD =
            Pattern.compile("name=\"(\\w+)\"[^\\n]*\\n(?:[^\\r\\n]+\\r?\\n)*\\r?\\n(.*?)\\r?\\n--", Pattern.DOTALL);

    /** What goes wrong with a request, instead of its answer. */
    interface Fault {
        void happen(HttpExchange exchange) throws IOException;
    }

    static {
        // Without it the JDK's server and the client's delayed acknowledgement hold each answer back by 40 ms.
        System.setProperty("sun.net.httpserver.nodelay", "true");
    }

    private static final Fault SERVED = exchange -> {};
    private static final Fault ANSWER_LOST = HttpExchange::close;

    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final List<JsonNode> updates = new ArrayList<>();
    private final Map<String, Queue<Fault>> faults = new ConcurrentHashMap<>();
    /** Copied on reading only: a load run sends tens of thousands. */
    private final List<JsonNode> sent = new ArrayList<>();

    private final List<JsonNode> answeredTaps = new CopyOnWriteArrayList<>();
    private final Queue<String> asked = new ConcurrentLinkedQueue<>();
    private final List<String> documents = new CopyOnWriteArrayList<>();
    private volatile Function<String, Fault> trouble = method -> SERVED;
    private volatile JsonNode webhook = MAPPER.createObjectNode();
    private volatile JsonNode commands = MAPPER.createArrayNode();
    private int nextUpdate = 1001;
    private int nextMessage = 501;
    private int readers;
    private boolean closed;

    public BotApiServer() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.setExecutor(threads);
        server.createContext("/", this::serve);
        server.start();
    }

    public URI address() {
        return URI.create("http://localhost:" + server.getAddress().getPort());
    }

    // What a test does and looks at

    /** Puts an update into the queue; its number is filled in and returned. */
    public synchronized int push(String json) {
        try {
            ObjectNode update = (ObjectNode) MAPPER.readTree(json);
            updates.add(update.put("update_id", nextUpdate));
            notifyAll();
            return nextUpdate++;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Another program fetches the updates from now on. */
    public void endUpdates() {
        troubled(method -> method.equals("getupdates")
                ? refuse(409, "Conflict: terminated by other getUpdates request", "")
                : SERVED);
    }

    /** The next requests of this method meet these faults, one each. */
    void fail(String method, Fault... next) {
        Queue<Fault> queue =
                faults.computeIfAbsent(method.toLowerCase(Locale.ROOT), name -> new ConcurrentLinkedQueue<>());
        queue.addAll(List.of(next));
    }

    /** Every request meets what this gives for its method, {@link #served()} for nothing. */
    void troubled(Function<String, Fault> trouble) {
        this.trouble = trouble;
    }

    static Fault refuse(int code, String description, String more) {
        return exchange -> answer(
                exchange,
                code,
                "{\"ok\":false,\"error_code\":" + code + ",\"description\":\"" + description + "\"" + more + "}");
    }

    static Fault tooFast(int seconds) {
        return refuse(429, "Too Many Requests", ",\"parameters\":{\"retry_after\":" + seconds + "}");
    }

    /** No fault: the request is served as always. */
    static Fault served() {
        return SERVED;
    }

    /** The request is done, and the caller does not hear of it. */
    static Fault answerLost() {
        return ANSWER_LOST;
    }

    /** Served, after a while. */
    static Fault slowly(long millis) {
        return new Slowly(millis);
    }

    private record Slowly(long millis) implements Fault {
        @Override
        public void happen(HttpExchange exchange) {
            sleep(millis);
        }
    }

    static Fault badGateway() {
        return exchange -> answer(exchange, 502, "<html><body><h1>502 Bad Gateway</h1></body></html>");
    }

    static Fault dropped() {
        return HttpExchange::close;
    }

    static Fault brokenOff() {
        return exchange -> {
            exchange.sendResponseHeaders(200, 400);
            exchange.getResponseBody().write("{\"ok\":true,\"result\":[{\"upd".getBytes(StandardCharsets.UTF_8));
            exchange.getResponseBody().flush();
            exchange.close();
        };
    }

    static Fault silence(long millis) {
        return exchange -> {
            sleep(millis);
            exchange.close();
        };
    }

    synchronized List<JsonNode> sent() {
        return List.copyOf(sent);
    }

    public List<String> texts() {
        return sent().stream().map(message -> message.path("text").asText()).toList();
    }

    /** How many messages arrived. */
    public synchronized int received() {
        return sent.size();
    }

    /** Lets go of what was sent and asked so far: in a long run it is what fills the heap. */
    public synchronized void forget() {
        sent.clear();
        asked.clear();
    }

    List<JsonNode> answeredTaps() {
        return answeredTaps;
    }

    /** The bodies of the documents sent, with their fields and names. */
    List<String> documents() {
        return documents;
    }

    JsonNode webhook() {
        return webhook;
    }

    JsonNode commands() {
        return commands;
    }

    /** Names of the methods asked for, in small letters, in order. */
    List<String> asked() {
        return List.copyOf(asked);
    }

    /** How many updates were not acknowledged yet. */
    synchronized int waiting() {
        return updates.size();
    }

    // The Bot API

    private void serve(HttpExchange exchange) throws IOException {
        JsonNode arguments = arguments(exchange);
        String prefix = "/bot" + TOKEN + "/";
        String path = exchange.getRequestURI().getPath();
        String method = path.substring(path.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
        asked.add(method);
        Queue<Fault> waiting = faults.get(method);
        Fault fault = waiting == null || waiting.isEmpty() ? trouble.apply(method) : waiting.poll();
        if (!path.startsWith(prefix)) {
            refuse(401, "Unauthorized", "").happen(exchange);
        } else if (fault == ANSWER_LOST && method.equals("sendmessage")) {
            synchronized (this) {
                sent.add(arguments);
            }
            fault.happen(exchange);
        } else if (fault != SERVED && !(fault instanceof Slowly)) {
            fault.happen(exchange);
        } else {
            fault.happen(exchange);
            serve(exchange, method, arguments);
        }
    }

    private void serve(HttpExchange exchange, String method, JsonNode arguments) throws IOException {
        switch (method) {
            case "getme" ->
                succeed(
                        exchange,
                        "{\"id\":4242424242,\"is_bot\":true,\"first_name\":\"Bothy\",\"username\":\"bothybot\"}");
            case "deletewebhook" -> succeed(exchange, "true");
            case "setmycommands" -> {
                commands = arguments.path("commands");
                succeed(exchange, "true");
            }
            case "answercallbackquery" -> {
                answeredTaps.add(arguments);
                succeed(exchange, "true");
            }
            case "getupdates" -> getUpdates(exchange, arguments);
            case "sendmessage" -> sendMessage(exchange, arguments);
            case "senddocument" -> {
                documents.add(arguments.path("multipart").asText());
                sent(exchange, arguments, "");
            }
            case "setwebhook" -> {
                webhook = arguments;
                succeed(exchange, "true");
            }
            default -> refuse(404, "Not Found: method not found", "").happen(exchange);
        }
    }

    private void getUpdates(HttpExchange exchange, JsonNode arguments) throws IOException {
        int offset = arguments.path("offset").asInt();
        long until = System.nanoTime() + arguments.path("timeout").asLong() * 1_000_000_000L;
        String result;
        synchronized (this) {
            int me = ++readers;
            notifyAll();
            updates.removeIf(update -> update.path("update_id").asInt() < offset);
            while (updates.isEmpty() && me == readers && !closed && System.nanoTime() < until) {
                waitFor((until - System.nanoTime()) / 1_000_000 + 1);
            }
            result = me == readers ? first(arguments.path("limit").asInt(100)) : null;
        }
        if (result == null) {
            refuse(409, "Conflict: terminated by other getUpdates request", "").happen(exchange);
        } else {
            succeed(exchange, result);
        }
    }

    private String first(int limit) {
        ArrayNode batch = MAPPER.createArrayNode();
        updates.stream().limit(limit).forEach(batch::add);
        return batch.toString();
    }

    private void sendMessage(HttpExchange exchange, JsonNode arguments) throws IOException {
        String text = arguments.path("text").asText();
        boolean buttonsFit = arguments.path("reply_markup").findValues("callback_data").stream()
                .allMatch(data -> data.asText().getBytes(StandardCharsets.UTF_8).length <= 64);
        if (text.isBlank() || text.length() > 4096 || !buttonsFit) {
            refuse(400, "Bad Request: message text is empty or too long, or button data invalid", "")
                    .happen(exchange);
            return;
        }
        synchronized (this) {
            sent.add(arguments);
        }
        sent(exchange, arguments, text);
    }

    private void sent(HttpExchange exchange, JsonNode arguments, String text) throws IOException {
        int number;
        synchronized (this) {
            number = nextMessage++;
        }
        succeed(
                exchange,
                "{\"message_id\":" + number + ",\"date\":1809172800,\"chat\":{\"id\":"
                        + arguments.path("chat_id").asLong() + ",\"type\":\"private\"},\"text\":"
                        + MAPPER.writeValueAsString(text) + "}");
    }

    private static JsonNode arguments(HttpExchange exchange) throws IOException {
        byte[] body = exchange.getRequestBody().readAllBytes();
        String type = String.valueOf(exchange.getRequestHeaders().getFirst("Content-Type"));
        if (type.startsWith("multipart/")) {
            return fields(new String(body, StandardCharsets.UTF_8));
        }
        return body.length == 0 ? MAPPER.createObjectNode() : MAPPER.readTree(body);
    }

    private static JsonNode fields(String multipart) {
        ObjectNode fields = MAPPER.createObjectNode().put("multipart", multipart);
        Matcher field = FIELD.matcher(multipart);
        while (field.find()) {
            fields.put(field.group(1), field.group(2));
        }
        return fields;
    }

    private static void succeed(HttpExchange exchange, String result) throws IOException {
        answer(exchange, 200, "{\"ok\":true,\"result\":" + result + "}");
    }

    private static void answer(HttpExchange exchange, int status, String body) throws IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(status, bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    private void waitFor(long millis) {
        try {
            wait(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            closed = true;
        }
    }

    private static void sleep(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        server.stop(0);
        threads.shutdownNow();
    }
}
