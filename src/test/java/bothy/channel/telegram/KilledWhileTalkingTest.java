package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.diary.Page;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Event;
import bothy.garden.Logged;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed (SIGKILL) in the middle of receiving, handling and sending, several times over. */
class KilledWhileTalkingTest {
    private static final int CHATS = 7;
    private static final long SEED = 20270520;
    private static final long PATIENCE_MILLIS = 60_000;

    @TempDir
    Path folder;

    private final Map<Long, List<String>> told = new HashMap<>();
    private int messages;

    @Test
    void every_message_is_recorded_once_in_order_and_answered_at_least_once() throws Exception {
        Random random = new Random(SEED);
        String diary = folder.resolve("diary.db").toString();
        try (BotApiServer api = new BotApiServer()) {
            for (int kill = 0; kill < kills(); kill++) {
                Process program = start(api, diary);
                int answersBefore = api.sent().size();
                tell(api, messagesALife());
                awaitAnswers(api, answersBefore + 1 + random.nextInt(messagesALife() / 2));
                program.destroyForcibly().waitFor();
            }
            Process program = start(api, diary);
            awaitAllAnswered(api);
            program.destroyForcibly().waitFor();

            int answers = api.sent().size();
            System.out.printf(
                    "KilledWhileTalkingTest: %d kills, %d messages, %d answered twice (seed %d)%n",
                    kills(), messages, answers - messages, SEED);
        }
        assertThat(recorded(diary)).isEqualTo(told);
    }

    int kills() {
        return 5;
    }

    int messagesALife() {
        return 60;
    }

    private static Process start(BotApiServer api, String diary) throws Exception {
        Process program = ChannelProgram.start(
                List.of("-Djava.util.logging.config.file=src/test/resources/logging/nothing.properties"),
                diary,
                api.address().toString(),
                BotApiServer.TOKEN);
        program.getInputStream().close();
        return program;
    }

    private void tell(BotApiServer api, int count) {
        for (int number = 0; number < count; number++) {
            long chat = 1 + messages % CHATS;
            String text = "line " + messages++;
            told.computeIfAbsent(chat, key -> new ArrayList<>()).add(text);
            api.push(Said.text(chat, messages, text));
        }
    }

    private static void awaitAnswers(BotApiServer api, int count) {
        await(() -> api.sent().size() >= count, api);
    }

    private void awaitAllAnswered(BotApiServer api) {
        await(() -> new HashSet<>(api.texts()).size() == messages, api);
    }

    private static void await(java.util.function.BooleanSupplier done, BotApiServer api) {
        long until = System.nanoTime() + PATIENCE_MILLIS * 1_000_000;
        while (!done.getAsBoolean()) {
            assertThat(System.nanoTime())
                    .as("waited in vain; answered: %s", api.texts())
                    .isLessThan(until);
            Rig.sleep(2);
        }
    }

    private static Map<Long, List<String>> recorded(String diary) {
        Map<Long, List<String>> recorded = new HashMap<>();
        try (Store store = Shelf.open(diary)) {
            for (String grower : store.growers()) {
                List<Logged> lines = store.write(grower, Page::lines);
                recorded.put(
                        Long.valueOf(grower.replace("telegram:", "")),
                        lines.stream()
                                .map(line -> ((Event) line.entry()).detail())
                                .toList());
            }
        }
        return recorded;
    }
}
