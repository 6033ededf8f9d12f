package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.NothingUp.Chances;
import bothy.agronomy.NothingUp.Moisture;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The chances are an own model: what is asserted is their order and their limits, which any sound reasoning must keep. */
class NothingUpTest {
    private static final double FRESH = SeedAge.viableShare(0, 5, 80);
    private final NothingUp cucumbers =
            new NothingUp(Emergence.table(Map.of(15.0, 13.0, 20.0, 6.0, 25.0, 4.0, 30.0, 3.0, 35.0, 3.0)));

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private Chances after(int days, double tempC, int sown, int up, double viable, Moisture moisture) {
        return cucumbers.chances(sown, up, Collections.nCopies(days, tempC), viable, moisture);
    }

    @Test
    void before_its_time_a_sowing_is_most_likely_only_slow() {
        assertThat(after(3, 20, 6, 0, FRESH, Moisture.MOIST).slow()).isGreaterThan(0.75);
    }

    @Test
    void three_weeks_in_warm_moist_soil_without_a_seedling_mean_dead_seed() {
        assertThat(after(21, 22, 6, 0, FRESH, Moisture.MOIST).dead()).isGreaterThan(0.8);
    }

    @Test
    void a_month_in_cold_soil_without_a_seedling_means_too_cold() {
        Chances chances = after(29, 12, 6, 0, FRESH, Moisture.MOIST);

        assertThat(chances.tooCold()).isGreaterThan(0.6).isGreaterThan(chances.dead());
    }

    @Test
    void dry_soil_is_blamed_when_it_was_told() {
        Chances chances = after(14, 20, 6, 0, FRESH, Moisture.DRY);

        assertThat(chances.tooDry()).isGreaterThan(0.7);
    }

    @Test
    void a_seedling_proves_that_there_was_water() {
        assertThat(after(14, 20, 6, 1, FRESH, Moisture.DRY).tooDry()).isZero();
    }

    @Test
    void old_seed_is_more_likely_dead() {
        double old = SeedAge.viableShare(12, 5, 80);

        assertThat(after(9, 20, 6, 0, old, Moisture.MOIST).dead())
                .isGreaterThan(after(9, 20, 6, 0, FRESH, Moisture.MOIST).dead());
    }

    @Test
    void seed_in_wet_soil_is_more_likely_dead() {
        assertThat(after(9, 20, 6, 0, FRESH, Moisture.WET).dead())
                .isGreaterThan(after(9, 20, 6, 0, FRESH, Moisture.MOIST).dead() + 0.02);
        assertThat(after(3, 20, 6, 0, FRESH, Moisture.WET).dead())
                .isGreaterThan(after(3, 20, 6, 0, FRESH, Moisture.MOIST).dead() + 0.2);
    }

    @Test
    void the_missing_ones_are_less_likely_dead_when_others_have_just_come() {
        assertThat(after(6, 20, 10, 4, FRESH, Moisture.MOIST).slow()).isGreaterThan(0.7);
        assertThat(after(30, 20, 10, 8, FRESH, Moisture.MOIST).dead()).isGreaterThan(0.9);
    }

    @Test
    void soil_hotter_than_any_that_brought_seedlings_up_is_blamed() {
        assertThat(after(14, 41, 6, 0, FRESH, Moisture.MOIST).tooHot()).isGreaterThan(0.6);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_chances_add_up_to_one_whatever_is_told(long seed) {
        Random random = new Random(seed);
        int sown = 1 + random.nextInt(200);
        Chances chances = cucumbers.chances(
                sown,
                random.nextInt(sown + 1),
                Collections.nCopies(1 + random.nextInt(60), -10 + 60 * random.nextDouble()),
                random.nextDouble(),
                Moisture.values()[random.nextInt(4)]);

        assertThat(chances.slow() + chances.tooCold() + chances.tooHot() + chances.tooDry() + chances.dead())
                .as("seed %d", seed)
                .isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_longer_nothing_comes_the_less_likely_it_is_only_slow(long seed) {
        Random random = new Random(seed);
        double tempC = 16 + 15 * random.nextDouble();
        double viable = 0.3 + 0.65 * random.nextDouble();
        Chances last = after(1, tempC, 8, 0, viable, Moisture.MOIST);
        double first = last.dead();
        for (int days = 2; days <= 30; days++) {
            Chances chances = after(days, tempC, 8, 0, viable, Moisture.MOIST);
            assertThat(chances.slow())
                    .as("seed %d, day %d at %s °C", seed, days, tempC)
                    .isLessThanOrEqualTo(last.slow() + 1e-9);
            last = chances;
        }
        assertThat(last.dead()).isGreaterThan(first);
    }

    @Test
    void more_seedlings_than_seeds_are_refused() {
        assertThatThrownBy(() -> cucumbers.chances(6, 7, List.of(20.0), 0.9, Moisture.MOIST))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("up is 7 seedlings; allowed is 0 to 6 seedlings");
    }

    @Test
    void seed_reaches_the_legal_least_germination_at_the_end_of_its_published_life() {
        // Knott's list gives cucumber 5 years and 7 CFR 201.31 80 %; onion 1 year and 70 %
        assertThat(SeedAge.viableShare(5, 5, 80)).isCloseTo(0.80, within(1e-9));
        assertThat(SeedAge.viableShare(1, 1, 70)).isCloseTo(0.70, within(1e-9));
        assertThat(SeedAge.viableShare(0, 1, 70)).isCloseTo(0.85, within(1e-9));
    }

    @Test
    void every_crop_of_the_printed_lists_falls_from_fresh_seed_to_its_legal_least_over_its_life() {
        Map<String, Double> years = column("years");
        Map<String, Double> least = column("min_germination_pct_us");
        years.keySet().retainAll(least.keySet());

        assertThat(years).hasSizeGreaterThanOrEqualTo(30);
        years.forEach((crop, life) -> {
            double percent = least.get(crop);
            assertThat(SeedAge.viableShare(0, life, percent)).as(crop).isCloseTo((1 + percent / 100) / 2, within(1e-9));
            assertThat(SeedAge.viableShare(life, life, percent)).as(crop).isCloseTo(percent / 100, within(1e-9));
            assertThat(SeedAge.viableShare(3 * life, life, percent)).as(crop).isStrictlyBetween(0.0, percent / 100);
        });
    }

    private static Map<String, Double> column(String name) {
        return Printed.rows("emergence/seed_life.csv").stream()
                .filter(row -> !row.get(name).isEmpty())
                .collect(Collectors.toMap(
                        row -> row.get("crop"),
                        row -> Double.valueOf(row.get(name)),
                        (one, other) -> one,
                        TreeMap::new));
    }

    @Test
    void seedlings_still_to_come_are_those_not_dead() {
        assertThat(new Chances(0.5, 0.2, 0, 0.1, 0.2).stillToCome(10)).isCloseTo(8, within(1e-9));
    }

    @Test
    void seed_never_gets_better_with_age() {
        for (int years = 1; years <= 50; years++) {
            assertThat(SeedAge.viableShare(years, 3, 70)).isBetween(0.0, SeedAge.viableShare(years - 1, 3, 70));
        }
    }
}
