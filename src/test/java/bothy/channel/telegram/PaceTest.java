package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.channel.telegram.TelegramSettings.Rate;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How fast messages may go: 25 a second overall, 1 a second in a chat after a burst of 3, about 20 a minute in a group. */
class PaceTest {
    private static final Instant NOON = Instant.parse("2027-05-01T12:00:00Z");
    private static final Duration NOW = Duration.ZERO;

    private final Pace pace = new Pace(TelegramSettings.of("1:a", Map.of(), ""));

    @Test
    void three_go_at_once_to_one_chat_and_then_one_a_second() {
        assertThat(pace.ask("1", NOON)).isEqualTo(NOW);
        assertThat(pace.ask("1", NOON)).isEqualTo(NOW);
        assertThat(pace.ask("1", NOON)).isEqualTo(NOW);

        assertThat(pace.ask("1", NOON)).isEqualTo(Duration.ofSeconds(1));
        assertThat(pace.ask("1", NOON.plusMillis(999))).isEqualTo(Duration.ofMillis(1));
        assertThat(pace.ask("1", NOON.plusMillis(1000))).isEqualTo(NOW);
        assertThat(pace.ask("1", NOON.plusMillis(1000))).isEqualTo(Duration.ofSeconds(1));
    }

    @Test
    void a_group_gets_twenty_in_a_minute_at_most() {
        long sent = 0;
        for (int second = 0; second < 600; second++) {
            sent += pace.ask("-100200300", NOON.plusSeconds(second)).isZero() ? 1 : 0;
        }

        assertThat(sent / 10.0).isBetween(17.0, 20.0);
    }

    @Test
    void all_chats_together_get_twenty_five_a_second() {
        int sent = 0;
        for (int chat = 0; chat < 40; chat++) {
            sent += pace.ask("chat" + chat, NOON).isZero() ? 1 : 0;
        }
        assertThat(sent).isEqualTo(25);

        assertThat(pace.ask("chat39", NOON)).isEqualTo(Duration.ofMillis(40));
        assertThat(pace.ask("chat39", NOON.plusMillis(40))).isEqualTo(NOW);
    }

    @Test
    void a_chat_that_has_to_wait_takes_no_leave_from_the_others() {
        for (int times = 0; times < 100; times++) {
            pace.ask("1", NOON);
        }

        for (int chat = 0; chat < 22; chat++) {
            assertThat(pace.ask("chat" + chat, NOON)).isEqualTo(NOW);
        }
    }

    @Test
    void a_clock_set_back_stops_nothing_and_one_set_forward_gives_no_more_than_the_burst() {
        for (int times = 0; times < 3; times++) {
            pace.ask("1", NOON);
        }

        assertThat(pace.ask("1", NOON.minusSeconds(3600))).isEqualTo(Duration.ofSeconds(1));
        assertThat(pace.ask("1", NOON.minusSeconds(3599))).isEqualTo(NOW);
        Instant later = NOON.plusSeconds(86_400);
        for (int times = 0; times < 3; times++) {
            assertThat(pace.ask("1", later)).isEqualTo(NOW);
        }
        assertThat(pace.ask("1", later)).isEqualTo(Duration.ofSeconds(1));
    }

    @Test
    void all_wait_when_two_chats_were_told_that_they_are_too_fast() {
        pace.tooFast("1", NOON, NOON.plusSeconds(7));
        assertThat(pace.ask("3", NOON)).isEqualTo(NOW);

        pace.tooFast("2", NOON, NOON.plusSeconds(9));
        assertThat(pace.ask("3", NOON)).isEqualTo(Duration.ofSeconds(9));
        assertThat(pace.ask("3", NOON.plusSeconds(9))).isEqualTo(NOW);
    }

    @Test
    void rates_other_than_the_published_ones_can_be_set() {
        Pace slow = new Pace(
                TelegramSettings.of("1:a", Map.of(), "").withPace(new Rate(0.5, 1), new Rate(1, 1), new Rate(1, 1)));

        assertThat(slow.ask("1", NOON)).isEqualTo(NOW);
        assertThat(slow.ask("2", NOON)).isEqualTo(Duration.ofSeconds(2));
    }
}
