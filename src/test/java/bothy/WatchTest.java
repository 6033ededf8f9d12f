package bothy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.channel.telegram.Handler;
import bothy.diary.Store;
import bothy.diary.StoreFailure;
import bothy.garden.Message;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class WatchTest {
    private static final Instant NOON = Instant.parse("2027-05-01T12:00:00Z");
    private static final Message SAID =
            Message.text("4711/12", "telegram:4711", NOON, ZoneOffset.UTC, "sowed beans by the medlar");

    private Instant now = NOON;
    private int asked;
    private boolean unreachable;
    private final Watch watch = new Watch(
            Stores.that((method, arguments) -> {
                asked++;
                if (unreachable) {
                    throw new StoreFailure(StoreFailure.Reason.NOT_THERE, "No server answers.", null);
                }
                return new Store.Waiting(3, 4, 5, 6);
            }),
            () -> now);

    private static Handler handler(boolean failing) {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                if (failing) {
                    throw new IllegalStateException("A rule broke.");
                }
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {}
        };
    }

    @Test
    void what_is_handled_fails_and_is_given_up_is_counted_without_a_word_of_it() {
        watch.watched(handler(false)).handle(SAID, "telegram", "4711");
        Handler failing = watch.watched(handler(true));
        assertThatThrownBy(() -> failing.handle(SAID, "telegram", "4711")).hasMessage("A rule broke.");
        failing.apologise(SAID, "telegram", "4711", new IllegalStateException());
        watch.spokenUnasked();

        assertThat(watch.metrics())
                .contains(
                        "bothy_message_seconds_count 1",
                        "bothy_message_failures_total 1.0",
                        "bothy_message_given_up_total 1.0",
                        "bothy_unasked_total 1.0")
                .doesNotContain("medlar", "4711");
    }

    @Test
    void the_queues_are_asked_for_every_few_seconds_at_most() {
        assertThat(watch.metrics())
                .contains(
                        "bothy_inbox_waiting 3.0",
                        "bothy_outbox_waiting 4.0",
                        "bothy_looks_due 5.0",
                        "bothy_growers 6.0");
        watch.metrics();
        assertThat(asked).isEqualTo(1);

        now = NOON.plusSeconds(6);
        watch.metrics();
        assertThat(asked).isEqualTo(2);
        now = NOON.minusSeconds(3600);
        watch.metrics();
        assertThat(asked)
                .as("a clock that was set back is no reason not to ask")
                .isEqualTo(3);
    }

    @Test
    void a_store_that_cannot_be_asked_leaves_the_other_figures() {
        unreachable = true;

        assertThatThrownBy(watch::waiting).hasMessage("No server answers.");
        assertThat(watch.metrics()).contains("bothy_inbox_waiting NaN", "jvm_memory_used_bytes");
    }
}
