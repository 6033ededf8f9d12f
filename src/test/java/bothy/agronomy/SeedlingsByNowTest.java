package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

class SeedlingsByNowTest {
    /** Carrot, Harrington and Minges 1954. */
    private static final Emergence CARROT = Emergence.table(Map.of(5.0, 51.0, 10.0, 17.0, 15.0, 10.0, 20.0, 7.0));

    /** Held against Apache Commons Statistics 1.1, where the warmth makes no difference. */
    @Test
    void the_range_is_that_of_the_binomial_distribution_where_warmth_changes_nothing() {
        Emergence flat = Emergence.usually(8, 12.5, -5, 50);
        for (int sown : new int[] {1, 10, 60, 400}) {
            List<Double> days = Collections.nCopies(11, 20.0);
            BinomialDistribution expected = BinomialDistribution.of(sown, 0.8 * flat.share(days));
            SeedlingsByNow up = SeedlingsByNow.of(flat, 2, sown, days, 0.8);
            assertThat(up)
                    .isEqualTo(new SeedlingsByNow(
                            expected.inverseCumulativeProbability(0.05),
                            expected.inverseCumulativeProbability(0.5),
                            expected.inverseCumulativeProbability(0.95)));
        }
    }

    @Test
    void more_are_up_from_day_to_day_and_in_warmer_soil() {
        int before = 0;
        for (int day = 0; day <= 120; day++) {
            SeedlingsByNow up = SeedlingsByNow.of(CARROT, 2, 100, Collections.nCopies(day, 12.0), 0.7);
            SeedlingsByNow warmer = SeedlingsByNow.of(CARROT, 2, 100, Collections.nCopies(day, 14.0), 0.7);
            assertThat(up.likely()).isGreaterThanOrEqualTo(before);
            assertThat(warmer.likely()).isGreaterThanOrEqualTo(up.likely());
            assertThat(up.low()).isLessThanOrEqualTo(up.likely());
            assertThat(up.high()).isBetween(up.likely(), 100);
            before = up.likely();
        }
        assertThat(before).isGreaterThan(60);
    }

    @Test
    void none_is_up_on_the_day_of_sowing_or_in_frozen_ground() {
        assertThat(SeedlingsByNow.of(CARROT, 2, 50, List.of(), 0.9)).isEqualTo(new SeedlingsByNow(0, 0, 0));
        assertThat(SeedlingsByNow.of(CARROT, 0.5, 50, Collections.nCopies(60, -5.0), 0.9))
                .isEqualTo(new SeedlingsByNow(0, 0, 0));
    }
}
