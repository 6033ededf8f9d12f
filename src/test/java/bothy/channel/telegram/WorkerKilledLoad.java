package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * Three workers on one PostgreSQL take in by webhook what comes through a load balancer; now and then one is killed (SIGKILL) and another
 * put in its place. What a dead one had at hand goes to the others after a minute. Run by {@code mvn verify -Pload}.
 */
class WorkerKilledLoad {
    private static final int WORKERS = 3;
    private static final int KILLS = 4;
    private static final int LINES_A_LIFE = 250;
    private static final long SEED = 20270525;
    private static final long PATIENCE_NANOS = 180_000_000_000L;

    private final HttpClient http = HttpClient.newHttpClient();
    private final List<Worker> workers = new ArrayList<>();
    private final Talk talk = new Talk();
    private final Random random = new Random(SEED);

    private record Worker(Process process, URI address) {}

    @AfterEach
    void stop() {
        workers.forEach(worker -> worker.process().destroyForcibly());
    }

    @Test
    void a_worker_of_three_that_is_killed_takes_nothing_along() throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.builder().start();
                BotApiServer api = new BotApiServer();
                Store store = Shelf.open(server.getJdbcUrl("postgres", "postgres"))) {
            String diary = server.getJdbcUrl("postgres", "postgres");
            for (int number = 0; number < WORKERS; number++) {
                workers.add(start(diary, api));
            }
            for (int kill = 0; kill <= KILLS; kill++) {
                for (int line = 0; line < LINES_A_LIFE; line++) {
                    deliver(update(talk.next(), talk.count()));
                }
                if (kill < KILLS) {
                    workers.remove(random.nextInt(WORKERS))
                            .process()
                            .destroyForcibly()
                            .waitFor();
                    workers.add(start(diary, api));
                }
            }
            long until = System.nanoTime() + PATIENCE_NANOS;
            while (talk.answered(api) < talk.count()) {
                assertThat(System.nanoTime()).as("waited in vain").isLessThan(until);
                Rig.sleep(50);
            }

            System.out.printf(
                    "WorkerKilledLoad: %d workers on one PostgreSQL, %d killed, %d messages, %d answered twice (seed %d)%n",
                    WORKERS, KILLS, talk.count(), api.received() - talk.count(), SEED);
            talk.assertKept(store, api);
        }
    }

    /** As the service does it: one after the other, to any of the workers, again until one says that it has it. */
    private void deliver(String update) throws InterruptedException {
        for (int tries = 0; tries < 200; tries++) {
            Worker worker = workers.get(random.nextInt(workers.size()));
            try {
                HttpRequest request = HttpRequest.newBuilder(worker.address())
                        .POST(BodyPublishers.ofString(update))
                        .build();
                if (http.send(request, BodyHandlers.discarding()).statusCode() == 200) {
                    return;
                }
            } catch (IOException killed) {
                // to another
            }
            Rig.sleep(50);
        }
        throw new AssertionError("no worker takes anything in");
    }

    private static String update(String told, int number) {
        return "{\"update_id\":" + number + "," + told.substring(1);
    }

    private static Worker start(String diary, BotApiServer api) throws IOException {
        Process process = new ProcessBuilder(
                        java.nio.file.Path.of(System.getProperty("java.home"), "bin", "java")
                                .toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Djava.util.logging.config.file=src/test/resources/logging/nothing.properties",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WorkerProgram.class.getName(),
                        diary,
                        api.address().toString())
                .redirectErrorStream(true)
                .start();
        BufferedReader output = process.inputReader();
        for (String line = output.readLine(); line != null; line = output.readLine()) {
            if (line.startsWith("port ")) {
                return new Worker(process, URI.create("http://localhost:" + line.substring(5) + "/telegram"));
            }
        }
        throw new IOException("the worker ended at once");
    }
}
