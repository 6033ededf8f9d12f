package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Address;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.garden.Outgoing;
import bothy.garden.Sent;
import bothy.reminding.Rounds;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The machine's clock is wrong for a while, by hours or by a year: the weekly list comes once a week all the same. */
class ClockJumpsTest {
    private static final Instant MONDAY = Instant.parse("2027-05-03T10:00:00Z");
    private static final Instant FAR = Instant.parse("2999-01-01T00:00:00Z");
    private static final int WEEKS = 6;
    private static final long SEED = 20270526;
    private static final String SCHOOL = "telegram:4711";

    @TempDir
    Path folder;

    private Instant now = MONDAY;
    private final List<Instant> lists = new ArrayList<>();
    private int said;

    private void live(Store store, Rounds rounds, Instant until, Duration wrong) {
        for (Instant time = now; time.isBefore(until); time = time.plus(Duration.ofMinutes(30))) {
            now = time.plus(wrong);
            rounds.goRound();
            for (Outgoing reply : store.toSend("telegram", FAR, 10)) {
                said++;
                if (reply.reply().text().contains("This week:")) {
                    lists.add(time);
                }
                store.sent(List.of(new Sent(reply.number(), "1")));
            }
        }
        now = until;
    }

    @Test
    void jumps_of_hours_lose_no_list_and_bring_none_twice() {
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            Rounds rounds = begun(store);
            Random random = new Random(SEED);
            for (int half = 0; half < WEEKS * 14; half++) {
                Duration wrong = half % 3 == 0 ? Duration.ofMinutes(random.nextInt(-600, 600)) : Duration.ZERO;
                live(store, rounds, now.plus(Duration.ofHours(12)), wrong);
            }

            assertThat(lists).as("seed %d, lists %s", SEED, lists).hasSize(WEEKS);
            assertThat(said).as("no storm").isLessThan(WEEKS * 7 * 2);
            rounds.close();
        }
    }

    @Test
    void a_clock_that_was_a_year_ahead_for_an_hour_costs_no_list() {
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            Rounds rounds = begun(store);
            live(store, rounds, now.plus(Duration.ofDays(1)), Duration.ZERO);
            live(store, rounds, now.plus(Duration.ofHours(1)), Duration.ofDays(365));
            lists.clear();
            live(store, rounds, MONDAY.plus(Duration.ofDays(7L * WEEKS)), Duration.ZERO);

            assertThat(lists).hasSize(WEEKS);
            rounds.close();
        }
    }

    private Rounds begun(Store store) {
        Knowledge knowledge = Workshop.knowledge(Workshop.folder(Path.of("rules")), null, WeatherSource.none());
        Conversation conversation = new Conversation(store, knowledge);
        conversation.handle(
                Message.text(
                        "m1", SCHOOL, MONDAY, ZoneOffset.UTC, "sowed 6 tomatoes in modules on the windowsill today"),
                new Address("telegram", "4711"));
        store.toSend("telegram", FAR, 10).forEach(reply -> store.sent(List.of(new Sent(reply.number(), "1"))));
        return new Rounds(conversation, () -> now, ZoneOffset.UTC, 1, () -> {});
    }
}
