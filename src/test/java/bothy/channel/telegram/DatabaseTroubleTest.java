package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.diary.sql.SmallDisk;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database fails under a running service and comes back: nothing is lost, nothing is recorded twice, each chat keeps its order. */
class DatabaseTroubleTest {
    private static final long PATIENCE_NANOS = 90_000_000_000L;

    @TempDir
    Path folder;

    private final Talk talk = new Talk();

    /** How many lines are told before, during and after the trouble, each. */
    int lines() {
        return 60;
    }

    interface Trouble {
        void happen() throws Exception;
    }

    private void talkThrough(String what, String diary, Trouble trouble) throws Exception {
        try (BotApiServer api = new BotApiServer();
                Store store = Shelf.open(diary);
                TelegramChannel channel = new TelegramChannel(
                        Talk.settings(api.address()), store, Talk.writing(store, message -> {}), Clock.systemUTC())) {
            channel.start();
            tell(api);
            await(api, lines() / 2);
            tell(api);
            trouble.happen();
            tell(api);
            await(api, talk.count());

            System.out.printf(
                    "%s, %s: %d messages, %d answered twice%n",
                    getClass().getSimpleName(), what, talk.count(), api.received() - talk.count());
            talk.assertKept(store, api);
        }
    }

    private void tell(BotApiServer api) {
        for (int number = 0; number < lines(); number++) {
            api.push(talk.next());
        }
    }

    private void await(BotApiServer api, int answers) {
        long until = System.nanoTime() + PATIENCE_NANOS;
        while (talk.answered(api) < answers) {
            assertThat(System.nanoTime())
                    .as("waited in vain for %d answers; there are: %s", answers, api.texts())
                    .isLessThan(until);
            Rig.sleep(20);
        }
    }

    @Test
    void a_file_that_another_program_locks_for_a_while_costs_nothing() throws Exception {
        Path diary = folder.resolve("diary.db");
        talkThrough("file locked for 7 s", diary.toString(), () -> {
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + diary);
                    Statement statement = other.createStatement()) {
                statement.execute("pragma busy_timeout = 10000");
                statement.execute("begin immediate");
                Rig.sleep(7_000);
                statement.execute("rollback");
            }
        });
    }

    @Test
    void a_disk_that_is_full_for_a_while_costs_nothing() throws Exception {
        try (SmallDisk disk = SmallDisk.at(folder, 24)) {
            talkThrough("disk full for 4 s", folder.resolve("diary.db").toString(), () -> {
                Path ballast = fill(folder.resolve("photos"));
                Rig.sleep(4_000);
                Files.delete(ballast);
            });
        }
    }

    private static Path fill(Path file) throws IOException {
        try (var out = Files.newOutputStream(file)) {
            byte[] photo = new byte[4096];
            while (true) {
                out.write(photo);
            }
        } catch (IOException full) {
            return file;
        }
    }

    @Test
    void a_diary_that_may_not_be_written_for_a_while_costs_nothing() throws Exception {
        Path diary = folder.resolve("diary.db");
        talkThrough("diary not to be written for 4 s", diary.toString(), () -> {
            // A disk with files open for writing cannot be made read-only, so the database itself refuses, whatever is
            // written.
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + diary);
                    Statement statement = other.createStatement()) {
                statement.execute("pragma busy_timeout = 10000");
                for (String table : List.of("inbox", "outbox", "handled", "diary_line")) {
                    statement.execute("create trigger no_" + table + " before insert on " + table
                            + " begin select raise(abort, 'attempt to write a readonly database'); end");
                }
                Rig.sleep(4_000);
                for (String table : List.of("inbox", "outbox", "handled", "diary_line")) {
                    statement.execute("drop trigger no_" + table);
                }
            }
        });
    }

    @Test
    void a_postgresql_that_is_started_anew_under_load_costs_nothing() throws Exception {
        Path data = folder.resolve("data");
        try (EmbeddedPostgres server =
                EmbeddedPostgres.builder().setDataDirectory(data).start()) {
            talkThrough(
                    "PostgreSQL broken off and started three times", server.getJdbcUrl("postgres", "postgres"), () -> {
                        for (int times = 0; times < 3; times++) {
                            breakOffAndStart(data);
                            Rig.sleep(500);
                        }
                    });
        }
    }

    /** As after a power cut: the server does not finish anything. */
    private static void breakOffAndStart(Path data) throws IOException, InterruptedException {
        Path control;
        try (Stream<Path> files = Files.walk(Path.of(System.getProperty("java.io.tmpdir"), "embedded-pg"), 3)) {
            control = files.filter(file -> file.endsWith("bin/pg_ctl"))
                    .findFirst()
                    .orElseThrow();
        }
        // PostgreSQL refuses to run as root; in a user name space of its own it does not see that it is.
        boolean root = System.getProperty("user.name").equals("root");
        List<String> command = Stream.concat(
                        root ? Stream.of("unshare", "-U") : Stream.of(),
                        Stream.of(control.toString(), "-D", data.toString(), "-m", "immediate", "-w", "restart"))
                .toList();
        Process restart = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(restart.waitFor()).as("%s", command).isZero();
    }
}
