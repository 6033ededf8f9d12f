package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Seeds are held against Apache Commons Statistics 1.1; spacing against plane geometry done by hand. */
class HowManyTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 80);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_seeds_to_sow_are_enough_and_one_fewer_is_not(long seed) {
        Random random = new Random(seed);
        int plants = 1 + random.nextInt(60);
        double chance = 0.2 + 0.79 * random.nextDouble();

        int toSow = SeedNumbers.toSow(plants, chance, 0.95);

        assertThat(atLeast(toSow, plants, chance)).as("seed %d", seed).isGreaterThanOrEqualTo(0.95 - 1e-9);
        if (toSow > plants) {
            assertThat(atLeast(toSow - 1, plants, chance)).as("seed %d", seed).isLessThan(0.95 + 1e-9);
        }
    }

    private static double atLeast(int sown, int plants, double chance) {
        return BinomialDistribution.of(sown, chance).survivalProbability(plants - 1);
    }

    @Test
    void for_six_plants_from_seed_that_comes_up_eight_times_in_ten_sow_ten() {
        assertThat(SeedNumbers.toSow(6, 0.8, 0.95)).isEqualTo(10);
        assertThat(SeedNumbers.certainty(10, 6, 0.8)).isCloseTo(0.967, within(0.0005));
        assertThat(SeedNumbers.certainty(9, 6, 0.8)).isCloseTo(0.914, within(0.0005));
    }

    @Test
    void seed_that_always_comes_needs_no_more_than_the_plants() {
        assertThat(SeedNumbers.toSow(12, 1, 0.95)).isEqualTo(12);
    }

    @Test
    void two_seeds_a_cell_leave_fewer_than_one_cell_in_twenty_empty_at_eight_in_ten() {
        assertThat(SeedNumbers.perCell(0.8, 0.95)).isEqualTo(2);
        assertThat(SeedNumbers.perCell(0.6, 0.95)).isEqualTo(4);
    }

    @ParameterizedTest
    @CsvSource({
        // bed length and width in m, spacing in the row, between rows; plants by hand
        "3, 1.2, 0.3, 0.3, 40", // 10 × 4
        "3, 1.2, 0.4, 0.6, 15", // two rows of 7 along; the better way round five rows of 3
        "2, 0.3, 0.45, 0.6, 4", // narrower than the rows: one row
        "1, 1, 0.5, 0.5, 4",
        "1.2, 2.4, 0.15, 0.3, 64", // 8 rows of 8 across the bed, 4 rows of 16 along: 64 both ways
    })
    void plants_in_rows_are_counted_as_by_hand(
            double lengthM, double widthM, double alongM, double acrossM, int plants) {
        assertThat(Spacing.rows(alongM, acrossM).plantsIn(new Bed.Rectangle(lengthM, widthM)))
                .isEqualTo(plants);
    }

    @Test
    void offset_rows_take_more_than_the_square_in_a_large_bed_only() {
        // rows 0.26 m apart: 1 + ⌊(1.2 − 0.3)/0.2598⌋ = 4 rows of 10, 9, 10, 9; the other way round 11 rows of 4, 3, …:
        // 39
        assertThat(Spacing.offset(0.3).plantsIn(new Bed.Rectangle(3, 1.2))).isEqualTo(39);
        // 10 m by 10 m at 0.1 m: 1 + ⌊9.9/0.0866⌋ = 115 rows, 58 of 100 and 57 of 99; on the square 10 000
        assertThat(Spacing.offset(0.1).plantsIn(new Bed.Rectangle(10, 10))).isEqualTo(58 * 100 + 57 * 99);
        assertThat(Spacing.square(0.1).plantsIn(new Bed.Rectangle(10, 10))).isEqualTo(10_000);
    }

    @Test
    void a_round_bed_of_three_spacings_takes_seven_offset_and_one_of_five_takes_nineteen() {
        // the hexagonal numbers 7 and 19
        assertThat(Spacing.offset(0.2).plantsIn(new Bed.Round(0.6))).isEqualTo(7);
        assertThat(Spacing.offset(0.2).plantsIn(new Bed.Round(1.0))).isEqualTo(19);
    }

    @Test
    void a_cut_corner_takes_a_triangle_of_plants() {
        int plants = Spacing.square(0.1).plantsIn(new Bed.Corner(2, 2));

        assertThat(plants).isBetween(150, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_bed_holds_more_plants_than_its_area_allows_and_wider_spacing_never_holds_more(long seed) {
        Random random = new Random(seed);
        Bed bed =
                switch (random.nextInt(3)) {
                    case 0 -> new Bed.Rectangle(0.5 + 4 * random.nextDouble(), 0.5 + 2 * random.nextDouble());
                    case 1 -> new Bed.Round(0.5 + 3 * random.nextDouble());
                    default -> new Bed.Corner(0.5 + 3 * random.nextDouble(), 0.5 + 3 * random.nextDouble());
                };
        double spacingM = 0.1 + 0.4 * random.nextDouble();

        int plants = Spacing.square(spacingM).plantsIn(bed);

        assertThat((double) plants)
                .as("seed %d: %s", seed, bed)
                .isLessThanOrEqualTo(bed.areaM2() / (spacingM * spacingM) + 1e-6);
        assertThat(Spacing.square(spacingM * 2).plantsIn(bed))
                .as("seed %d: %s", seed, bed)
                .isLessThanOrEqualTo(plants);
    }

    @Test
    void cells_trays_and_compost_are_rounded_up() {
        assertThat(Filling.cells(25, 2)).isEqualTo(13);
        assertThat(Filling.trays(13, 12)).isEqualTo(2);
        assertThat(Filling.compostLitres(84, 0.018)).isCloseTo(84 * 0.018 * 1.1, within(1e-9));
        // a straight tube of 10 cm and 12.73 cm height holds one litre
        assertThat(Filling.potLitres(10, 10, 12.7324)).isCloseTo(1, within(1e-5));
    }

    /** Common practice, no source: a cell of a 24-cell tray holds some 80 ml, of a 40-cell tray some 50. */
    @Test
    void a_tray_of_cells_holds_half_of_a_plain_one_and_a_flat_more() {
        assertThat(Filling.trayLitres(true, false)).isCloseTo(24 * 0.08, within(0.2));
        assertThat(Filling.trayLitres(true, false)).isCloseTo(40 * 0.05, within(0.2));
        assertThat(Filling.trayLitres(false, false)).isCloseTo(3.8 * 2.4 * 0.45, within(0.2));
        // 20 by 10 inches to 38 by 24 cm
        assertThat(Filling.trayLitres(true, true) / Filling.trayLitres(true, false))
                .isCloseTo(50.8 * 25.4 / (38 * 24), within(0.05));
    }

    @Test
    void a_tenth_more_sets_are_planted_and_at_least_one() {
        assertThat(Filling.spare(1)).isEqualTo(1);
        assertThat(Filling.spare(20)).isEqualTo(2);
        assertThat(Filling.spare(61)).isEqualTo(7);
    }

    @Test
    void a_yield_is_a_span() {
        assertThat(Yield.ofPlants(6, 2, 4)).isEqualTo(new Yield(12, 24));
        assertThat(Yield.ofArea(2.5, 1.5, 3)).isEqualTo(new Yield(3.75, 7.5));
    }

    @Test
    void what_cannot_be_is_refused_with_the_range() {
        assertThatThrownBy(() -> SeedNumbers.toSow(0, 0.8, 0.95))
                .hasMessage("plants is 0 plants; allowed is 1 to 5000 plants");
        assertThatThrownBy(() -> SeedNumbers.toSow(6, 80, 0.95)).hasMessage("chanceEach is 80; allowed is 0.05 to 1");
        assertThatThrownBy(() -> new Bed.Rectangle(-1, 1)).hasMessage("lengthM is -1 m; allowed is 0.05 to 1000 m");
        assertThatThrownBy(() -> Spacing.square(0.01).plantsIn(new Bed.Rectangle(1000, 1000)))
                .hasMessageContaining("plants that could fit is 10000000000 plants");
    }
}
