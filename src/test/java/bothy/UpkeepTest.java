package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class UpkeepTest {
    private static final Instant NOON = Instant.parse("2027-05-01T12:00:00Z");

    private static String damage(Object found) throws InterruptedException {
        CountDownLatch looked = new CountDownLatch(1);
        var store = Stores.that((method, arguments) -> {
            looked.countDown();
            if (found instanceof RuntimeException failure) {
                throw failure;
            }
            return found;
        });
        try (Upkeep upkeep = new Upkeep(store, () -> NOON, Duration.ofDays(30)).start()) {
            assertThat(looked.await(10, TimeUnit.SECONDS)).isTrue();
            for (int tries = 0; tries < 50 && upkeep.damage().isEmpty(); tries++) {
                Thread.sleep(10);
            }
            return upkeep.damage();
        }
    }

    @Test
    void damage_is_told_with_what_to_do() throws InterruptedException {
        assertThat(damage(Optional.of("row 7 is missing")))
                .isEqualTo(
                        "The diary is damaged (row 7 is missing). Stop, keep a copy of it, and put a backup in its place.");
    }

    @Test
    void a_sound_store_and_one_that_cannot_be_read_through_just_now_are_no_damage() throws InterruptedException {
        assertThat(damage(Optional.empty())).isEmpty();
        assertThat(damage(new IllegalStateException("busy"))).isEmpty();
    }

    @Test
    void post_older_than_is_kept_is_removed_and_a_failure_does_not_come_out() {
        Object[] removed = new Object[1];
        var store = Stores.that((method, arguments) -> {
            removed[0] = method + arguments[0];
            throw new IllegalStateException("busy");
        });
        try (Upkeep upkeep = new Upkeep(store, () -> NOON, Duration.ofDays(30))) {
            upkeep.clear();
        }

        assertThat(removed[0]).isEqualTo("clearPost" + NOON.minus(Duration.ofDays(30)));
    }
}
