package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import com.code_intelligence.jazzer.junit.FuzzTest;
import com.code_intelligence.jazzer.mutation.annotation.NotNull;
import com.code_intelligence.jazzer.mutation.annotation.WithUtf8Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A grower of whom nothing is known says a few lines, two days apart, and is spoken to: everything is answered. Run by
 * {@code mvn verify -Pfuzz-guided}.
 */
class AnyTalkAnsweredGuidedFuzz {
    private static final Instant BEGIN = Instant.parse("2027-04-10T09:00:00Z");
    private static final int MOST_LINES = 5;
    private static final AtomicLong GROWERS = new AtomicLong();
    private static final Store STORE = Shelf.open(memory().resolve("fuzz.db").toString());
    private static final Knowledge KNOWLEDGE =
            Workshop.knowledge(Workshop.folder(Path.of("rules")), null, WeatherSource.none());
    private static final String RULES_FAILED = KNOWLEDGE.replier().talk("rules-failed");
    private static final Conversation CONVERSATION = new Conversation(STORE, KNOWLEDGE);

    /** A folder in memory where there is one: what is looked for is no matter of the disk. */
    private static Path memory() {
        try {
            Path shared = Path.of("/dev/shm");
            return Files.isWritable(shared)
                    ? Files.createTempDirectory(shared, "bothy-fuzz")
                    : Files.createTempDirectory("bothy-fuzz");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<Arguments> toldBefore() {
        return Stream.of(
                        List.of(
                                "sowed 12 tomatoes in pots",
                                "6 up",
                                "potted on",
                                "planted out 6 in bed 2",
                                "picked 2 kg"),
                        List.of("planted 20 onion sets in bed 1", "leaves are yellow", "no, dry", "better now", "/why"),
                        List.of("cucumbers have white patches", "yes", "12 C at night", "undo", "/week"),
                        List.of(
                                "I live in Leeds",
                                "when do I sow chard?",
                                "how many seeds for 20 plants",
                                "/plot",
                                "/mydata"),
                        List.of(
                                "away until 3 May",
                                "remind me tomorrow",
                                "only Sundays",
                                "stop messages",
                                "delete my data"))
                .map(lines -> Arguments.of(String.join("\n", lines)));
    }

    @MethodSource("toldBefore")
    @FuzzTest(maxDuration = "20m")
    void whatever_is_told_is_answered(@NotNull @WithUtf8Length(max = 400) String told) {
        String grower = "fuzz:" + GROWERS.incrementAndGet();
        Instant moment = BEGIN;
        List<String> lines = told.lines().limit(MOST_LINES).toList();
        for (int number = 0; number < lines.size(); number++) {
            moment = moment.plus(Duration.ofDays(2));
            Message message = Message.text(grower + "/" + number, grower, moment, ZoneOffset.UTC, lines.get(number));
            String reply =
                    CONVERSATION.handle(message, null).orElseThrow().reply().text();
            assertThat(reply).doesNotContain(RULES_FAILED);
        }
        CONVERSATION.speakUp(
                grower, moment.plus(Duration.ofDays(1)), ZoneOffset.UTC, new Conversation.Address("fuzz", grower));
    }
}
