package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.channel.telegram.BotApiServer;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The service as a process of its own: it answers, is looked at, and is stopped. */
class ServingTest {
    private static final Pattern PORT = Pattern.compile("port (\\d+)");
    private static final long PATIENCE_MILLIS = 120_000;
    private static final int SIGTERM_EXIT = 128 + 15;

    @TempDir
    Path folder;

    private final HttpClient http = HttpClient.newHttpClient();
    private final List<String> output = new CopyOnWriteArrayList<>();
    private Process service;

    @AfterEach
    void kill() {
        if (service != null) {
            service.destroyForcibly();
        }
    }

    private void start(BotApiServer api, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Bothy.class.getName(),
                "serve",
                "--db=" + folder.resolve("diary.db"),
                "--telegram-service=" + api.address(),
                "--http=0"));
        command.addAll(List.of(more));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("BOTHY_TELEGRAM_TOKEN", BotApiServer.TOKEN);
        builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
        service = builder.start();
        BufferedReader reader = service.inputReader();
        Thread listening = new Thread(() -> reader.lines().forEach(output::add));
        listening.setDaemon(true);
        listening.start();
    }

    private interface Done {
        boolean yet() throws IOException, InterruptedException;
    }

    private void await(String what, Done done) throws IOException, InterruptedException {
        long until = System.nanoTime() + PATIENCE_MILLIS * 1_000_000;
        while (!done.yet()) {
            assertThat(System.nanoTime())
                    .as("waited in vain for %s; output: %s", what, output)
                    .isLessThan(until);
            Thread.sleep(20);
        }
    }

    private int port() {
        for (String line : output) {
            Matcher matcher = PORT.matcher(line);
            if (matcher.find()) {
                return Integer.parseInt(matcher.group(1));
            }
        }
        return 0;
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + port() + path))
                        .build(),
                BodyHandlers.ofString());
    }

    @Test
    void it_answers_is_well_counts_and_stops_gracefully() throws Exception {
        try (BotApiServer api = new BotApiServer()) {
            start(api);
            await("the port", () -> port() > 0);
            api.push(update(1, "sowed 6 cucumbers by the medlar today"));
            await("the answer", () -> api.received() == 1);

            assertThat(api.texts().get(0)).contains("cucumbers");
            assertThat(get("/health").body()).isEqualTo("well\n");
            assertThat(get("/health").statusCode()).isEqualTo(200);
            assertThat(get("/metrics").body())
                    .contains("bothy_message_seconds_count 1", "bothy_growers", "bothy_message_failures_total 0.0");

            api.push(update(2, "watered the cucumbers"));
            service.destroy(); // SIGTERM
            assertThat(service.waitFor(40, TimeUnit.SECONDS)).isTrue();
            assertThat(service.exitValue()).isEqualTo(SIGTERM_EXIT);
            assertThat(String.join("\n", output))
                    .as("neither a grower's words nor the token")
                    .doesNotContain("medlar", "cucumber", BotApiServer.TOKEN);

            start(api);
            await("the answer after the start", () -> api.received() == 2);
            service.destroy();
            assertThat(service.waitFor(40, TimeUnit.SECONDS)).isTrue();
        }
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            assertThat(store.lines("telegram:4711"))
                    .extracting(line -> line.message())
                    .containsExactly("4711/1", "4711/2");
            assertThat(store.lookThrough()).isEmpty();
        }
    }

    @Test
    void what_it_cannot_go_on_with_ends_it_with_a_sentence_and_an_exit_code() throws Exception {
        try (BotApiServer api = new BotApiServer()) {
            start(api, "--door=invited");
            assertThat(service.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)).isTrue();

            assertThat(service.exitValue()).isEqualTo(1);
            assertThat(String.join("\n", output))
                    .contains("--door invited needs at least one code in BOTHY_INVITE_CODES");

            output.clear();
            api.endUpdates();
            start(api);
            assertThat(service.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)).isTrue();
            assertThat(service.exitValue()).isEqualTo(1);
            assertThat(String.join("\n", output))
                    .contains("Another program fetches messages with the same Telegram bot token");
        }
    }

    private static String update(int number, String text) {
        return "{\"message\":{\"message_id\":" + number
                + ",\"date\":1809172800,\"chat\":{\"id\":4711,\"type\":\"private\",\"first_name\":\"Ida\"},"
                + "\"from\":{\"id\":4711,\"is_bot\":false,\"first_name\":\"Ida\"},\"text\":\"" + text + "\"}}";
    }
}
