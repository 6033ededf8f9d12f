package bothy.agronomy.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Arithmetic of {@link DegreeDayNormals} and {@link RipeningWarmth}, worked by hand. */
class RipeningByWarmthTest {
    /** A June of 20 °C: 600 degree days above 0, 60 fewer for each 2 °C. */
    private static final List<Double> JUNE = List.of(600.0, 540.0, 480.0, 420.0, 360.0, 300.0, 240.0, 180.0, 120.0);

    @Test
    void a_usual_day_has_its_share_of_the_month() {
        assertThat(DegreeDayNormals.ofADay(JUNE, 2, 0, 30)).isEqualTo(20);
        assertThat(DegreeDayNormals.ofADay(JUNE, 2, 10, 30)).isEqualTo(10);
        assertThat(DegreeDayNormals.ofADay(JUNE, 2, 3.3, 30)).isCloseTo(16.7, within(1e-9));
        assertThat(DegreeDayNormals.ofADay(JUNE, 2, 16, 30)).isEqualTo(4);
    }

    @Test
    void a_higher_base_leaves_never_more() {
        double before = Double.MAX_VALUE;
        for (double base = 0; base <= 16; base += 0.1) {
            double day = DegreeDayNormals.ofADay(JUNE, 2, base, 30);
            assertThat(day).isLessThanOrEqualTo(before).isNotNaN().isNotNegative();
            before = day;
        }
    }

    @Test
    void days_are_spent_at_the_warmth_that_the_class_likes() {
        // 80 days at 21 °C above 10: 880; 81 at 17 above 3.3: 1109.7
        assertThat(RipeningWarmth.needed(80, 10, true)).isEqualTo(880);
        assertThat(RipeningWarmth.needed(81, 3.3, false)).isCloseTo(1109.7, within(1e-9));
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> DegreeDayNormals.ofADay(JUNE, 2, 17, 30))
                .hasMessage("baseC is 17 °C; allowed is 0 to 16 °C");
        assertThatThrownBy(() -> RipeningWarmth.needed(4, 10, true))
                .hasMessage("days is 4 days; allowed is 5 to 400 days");
    }
}
