package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class OnwardTest {
    private static final Instant NOON = Instant.parse("2027-05-01T12:00:00Z");

    private Instant shown = NOON;
    private long nanos = 77;
    private final Onward clock = new Onward(() -> shown, () -> nanos);

    @Test
    void a_clock_that_is_set_back_goes_on_all_the_same() {
        shown = NOON.minusSeconds(7200);
        nanos += 3_000_000_000L;

        assertThat(clock.instant()).isEqualTo(NOON.plusSeconds(3));
    }

    @Test
    void a_clock_that_is_set_forward_is_followed_and_not_back_again() {
        shown = NOON.plusSeconds(7200);
        assertThat(clock.instant()).isEqualTo(NOON.plusSeconds(7200));

        shown = NOON;
        nanos += 1_000_000_000L;
        assertThat(clock.instant()).isEqualTo(NOON.plusSeconds(7201));
    }
}
