package bothy.diary.sql;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.diary.Page;
import bothy.diary.Store;
import bothy.garden.Logged;
import bothy.garden.Outgoing;
import bothy.garden.Sent;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed (SIGKILL) in the middle of writing, several times over. */
class KilledWhileWritingTest {
    private static final int KILLS = 5;
    private static final long SEED = 20270501;

    @TempDir
    Path folder;

    private final List<String> replies = new ArrayList<>();

    @Test
    void every_acknowledged_message_is_there_once_and_whole() throws Exception {
        String address = folder.resolve("diary.db").toString();
        Random random = new Random(SEED);
        int acknowledged = 0;

        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged = writeAndKill(address, messages(address).size(), 20 + random.nextInt(400));

            List<String> messages = messages(address);
            assertThat(messages).as("seed %d, kill %d", SEED, kill).doesNotHaveDuplicates();
            assertThat(messages.size()).isBetween(acknowledged, acknowledged + 1);
            assertThat(replies(address)).isEqualTo(messages);
        }
        System.out.printf(
                "KilledWhileWritingTest: %d kills, %d messages acknowledged, all there%n", KILLS, acknowledged);
    }

    /** Returns how many messages in all are known to be kept. */
    private static int writeAndKill(String address, int first, int afterMessages)
            throws IOException, InterruptedException {
        Process scribe = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Scribe.class.getName(),
                        address,
                        String.valueOf(first))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        int kept = first;
        try (BufferedReader said = scribe.inputReader()) {
            for (int heard = 0; heard < afterMessages; heard++) {
                kept = Integer.parseInt(said.readLine()) + 1;
            }
            // The handle's way of killing leaves the pipe open, so that what was acknowledged to the last is heard.
            scribe.toHandle().destroyForcibly();
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                kept = Math.max(kept, Integer.parseInt(line) + 1);
            }
        }
        scribe.waitFor();
        return kept;
    }

    /** The messages in the diary, each after a look that both of its lines are there. */
    private static List<String> messages(String address) {
        try (Store store = Shelf.open(address)) {
            List<Logged> lines = store.write(StoreSuite.SCHOOL, Page::lines);
            List<String> messages = new ArrayList<>();
            for (int line = 0; line < lines.size(); line += 2) {
                messages.add(lines.get(line).message());
                assertThat(lines.get(line + 1).message())
                        .isEqualTo(lines.get(line).message());
            }
            assertThat(lines.size()).isEqualTo(2 * messages.size());
            return messages;
        }
    }

    /** Takes the replies out of the outbox, and returns all that were taken out so far. */
    private List<String> replies(String address) {
        try (Store store = Shelf.open(address)) {
            for (List<Outgoing> next = first(store); !next.isEmpty(); next = first(store)) {
                replies.add(next.get(0).reply().text());
                store.sent(List.of(new Sent(next.get(0).number(), "counted")));
            }
        }
        return List.copyOf(replies);
    }

    private static List<Outgoing> first(Store store) {
        return store.toSend("telegram", StoreSuite.NOON, 1);
    }
}
