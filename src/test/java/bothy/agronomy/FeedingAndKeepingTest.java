package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plain proportion and dates; lives and conditions are the sheet's, here those of USDA Agriculture Handbook 66 (1954). */
class FeedingAndKeepingTest {
    private static final LocalDate OCTOBER = LocalDate.of(2027, 10, 1);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @Test
    void twenty_millilitres_in_four_and_a_half_litres_are_forty_four_in_a_can_of_ten() {
        // 44.4 by proportion, down to the half millilitre
        assertThat(new FeedDose(20, 4.5).mlFor(10)).isEqualTo(44);
        assertThat(new FeedDose(20, 4.5).halfStrength().mlFor(10)).isEqualTo(22);
    }

    @Test
    void one_to_two_hundred_is_fifty_millilitres_in_ten_litres() {
        assertThat(FeedDose.oneTo(200).mlFor(10)).isEqualTo(50);
        assertThat(FeedDose.oneTo(1000).mlFor(1.5)).isEqualTo(1.5);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_can_is_never_stronger_than_the_label(long seed) {
        Random random = new Random(seed);
        FeedDose label = new FeedDose(1 + 50 * random.nextDouble(), 1 + 20 * random.nextDouble());
        double canLitres = 0.5 + 15 * random.nextDouble();

        double dose = label.mlFor(canLitres);

        assertThat(dose / canLitres)
                .as("seed %d", seed)
                .isLessThanOrEqualTo(label.feedMl() / label.waterLitres() + 1e-6)
                .isGreaterThan(label.feedMl() / label.waterLitres() - 1 / canLitres - 1e-6);
    }

    @Test
    void a_label_read_as_one_to_two_is_refused() {
        assertThatThrownBy(() -> new FeedDose(500, 1))
                .hasMessage("parts of water to one of feed is 2; allowed is 10 to 10000000");
    }

    @Test
    void the_next_feed_is_the_interval_after_the_last_but_not_before_the_start() {
        assertThat(FeedDose.next(null, OCTOBER, 7)).isEqualTo(OCTOBER);
        assertThat(FeedDose.next(OCTOBER, OCTOBER, 7)).isEqualTo(OCTOBER.plusDays(7));
        assertThat(FeedDose.next(OCTOBER.minusDays(30), OCTOBER, 7)).isEqualTo(OCTOBER);
    }

    @Test
    void winter_squash_held_24_to_26_weeks_comes_to_its_end_in_march_and_is_looked_at_every_week() {
        // USDA Agriculture Handbook 66 (1954): squash, winter, 50 to 55 °F, 24 to 26 weeks
        assertThat(Keeping.keepsUntil(OCTOBER, 24 * 7, 26 * 7))
                .isEqualTo(new Window(LocalDate.of(2028, 3, 17), LocalDate.of(2028, 3, 31)));
        assertThat(Keeping.checks(OCTOBER, 7, 26 * 7))
                .hasSize(26)
                .startsWith(LocalDate.of(2027, 10, 8))
                .endsWith(LocalDate.of(2028, 3, 31));
    }

    @Test
    void ten_degrees_too_warm_shorten_the_life_two_and_a_half_times_and_a_colder_store_never_lengthens_it() {
        assertThat(Keeping.lifeDaysAt(100, 10, 20)).isCloseTo(40, within(1e-9));
        assertThat(Keeping.lifeDaysAt(100, 10, 10)).isEqualTo(100);
        assertThat(Keeping.lifeDaysAt(100, 10, 2)).isEqualTo(100);
    }

    @Test
    void squash_cured_for_ten_days_is_done_on_the_eleventh_day_and_cold_days_do_not_count() {
        List<Double> warm = Collections.nCopies(10, 27.0);
        List<Double> mixed = List.of(27.0, 27.0, 15.0, 27.0);

        assertThat(Keeping.curedBetween(OCTOBER, 10, 14))
                .isEqualTo(new Window(OCTOBER.plusDays(10), OCTOBER.plusDays(14)));
        assertThat(Keeping.curedOn(OCTOBER, warm, 26, 10)).contains(OCTOBER.plusDays(10));
        assertThat(Keeping.curedOn(OCTOBER, mixed, 26, 3)).contains(OCTOBER.plusDays(4));
        assertThat(Keeping.curedOn(OCTOBER, mixed, 26, 4)).isEmpty();
    }
}
