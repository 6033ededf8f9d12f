package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Harrington and Minges 1954 (in Knott's Handbook), held cell by cell, and what must hold between the cells. */
class SeedlingsComingUpTest {
    private static final Map<Double, Double> CUCUMBER = Map.of(15.0, 13.0, 20.0, 6.0, 25.0, 4.0, 30.0, 3.0, 35.0, 3.0);
    private static final LocalDate SOWN = LocalDate.of(2027, 4, 3);
    private final Emergence cucumber = Emergence.table(CUCUMBER);

    /** Days by temperature of every crop in the printed table. */
    static Map<String, Map<Double, Double>> tables() {
        return Printed.rows("emergence/emergence_days.csv").stream()
                .filter(row -> !row.get("days").isEmpty())
                .collect(Collectors.groupingBy(
                        row -> row.get("crop"),
                        TreeMap::new,
                        Collectors.toMap(
                                row -> Double.valueOf(row.get("soil_c")), row -> Double.valueOf(row.get("days")))));
    }

    static List<Map.Entry<String, Map<Double, Double>>> crops() {
        return List.copyOf(tables().entrySet());
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest
    @MethodSource("crops")
    void every_printed_cell_is_met_exactly(Map.Entry<String, Map<Double, Double>> crop) {
        Emergence emergence = Emergence.table(crop.getValue());

        crop.getValue()
                .forEach((tempC, days) -> assertThat(emergence.days(tempC).orElseThrow())
                        .as("%s at %s °C", crop.getKey(), tempC)
                        .isCloseTo(days, within(1e-9)));
    }

    @Test
    void the_printed_table_has_135_day_counts_and_four_rows_of_weaker_origin_have_18_more() {
        List<Map<String, String>> days = Printed.rows("emergence/emergence_days.csv").stream()
                .filter(row -> !row.get("days").isEmpty())
                .toList();

        assertThat(days).hasSize(153);
        assertThat(days.stream().filter(row -> row.get("source").startsWith("Harrington")))
                .hasSize(135);
        assertThat(tables()).hasSize(28);
    }

    @Test
    void every_printed_percentage_is_met_exactly() {
        Map<String, Map<Double, Double>> percents = Printed.rows("emergence/emergence_days.csv").stream()
                .filter(row -> !row.get("percent").isEmpty())
                .collect(Collectors.groupingBy(
                        row -> row.get("crop"),
                        Collectors.toMap(
                                row -> Double.valueOf(row.get("soil_c")), row -> Double.valueOf(row.get("percent")))));

        percents.forEach((crop, rows) -> rows.forEach(
                (tempC, percent) -> assertThat(Emergence.percent(rows, tempC).orElseThrow())
                        .as("%s at %s °C", crop, tempC)
                        .isCloseTo(percent, within(1e-9))));
    }

    @Test
    void nothing_is_said_below_the_coldest_and_above_the_warmest_that_came() {
        assertThat(cucumber.days(14.9)).isEmpty();
        assertThat(cucumber.days(35.1)).isEmpty();
        assertThat(cucumber.curve(10)).isEmpty();
        assertThat(Emergence.percent(Map.of(15.0, 95.0, 20.0, 99.0), 12)).isEmpty();
    }

    @Test
    void between_two_cells_the_rate_is_halfway() {
        // rates 1/13 and 1/6 per day, so halfway is (1/13 + 1/6) / 2
        assertThat(cucumber.days(17.5).orElseThrow()).isCloseTo(2 / (1 / 13.0 + 1 / 6.0), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void warmer_is_sooner_up_to_the_optimum(long seed) {
        Random random = new Random(seed);
        List<Map.Entry<String, Map<Double, Double>>> crops = crops();
        Map.Entry<String, Map<Double, Double>> crop = crops.get(random.nextInt(crops.size()));
        // celery (15 °C, 12 days, against 10 °C, 16) is monotone as well; every printed row is, up to its fastest cell
        Emergence emergence = Emergence.table(crop.getValue());
        double span = emergence.optimumC() - emergence.lowestC();
        double cooler = emergence.lowestC() + span * random.nextDouble();
        double warmer = cooler + (emergence.optimumC() - cooler) * random.nextDouble();

        assertThat(emergence.days(warmer).orElseThrow())
                .as("seed %d: %s at %s and %s °C", seed, crop.getKey(), cooler, warmer)
                .isLessThanOrEqualTo(emergence.days(cooler).orElseThrow() + 1e-9);
    }

    @Test
    void there_is_no_nan_over_the_whole_input_range() {
        crops().forEach(crop -> {
            Emergence emergence = Emergence.table(crop.getValue());
            for (double tempC = -20; tempC <= 60; tempC += 0.25) {
                emergence.days(tempC).ifPresent(days -> assertThat(days).isBetween(0.5, 400.0));
                assertThat(emergence.share(Collections.nCopies(400, tempC))).isBetween(0.0, 1.0);
            }
        });
    }

    @Test
    void half_are_up_on_the_printed_day_at_a_steady_temperature() {
        assertThat(cucumber.share(Collections.nCopies(13, 15.0))).isCloseTo(0.5, within(1e-9));
        assertThat(cucumber.curve(15).orElseThrow().share(13)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void the_days_of_one_in_ten_half_and_nine_in_ten_stand_around_the_printed_day() {
        Emergence.Dates dates = cucumber.dates(SOWN, List.of(), 15).orElseThrow();

        // 13 days × 0.726, × 1 and × 1.378
        assertThat(dates)
                .isEqualTo(new Emergence.Dates(
                        LocalDate.of(2027, 4, 13), LocalDate.of(2027, 4, 16), LocalDate.of(2027, 4, 21)));
    }

    @Test
    void a_cold_week_puts_the_day_off_by_a_week() {
        LocalDate warm = cucumber.upBy(SOWN, List.of(), 20, 0.9).orElseThrow();

        LocalDate cold =
                cucumber.upBy(SOWN, Collections.nCopies(7, 12.0), 20, 0.9).orElseThrow();

        assertThat(cold).isEqualTo(warm.plusDays(7));
    }

    @Test
    void in_soil_that_stays_too_cold_there_is_no_such_day() {
        assertThat(cucumber.dates(SOWN, List.of(), 12)).isEmpty();
        assertThat(cucumber.share(Collections.nCopies(100, 12.0))).isZero();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_day_by_which_a_share_is_up_is_the_first_day_with_that_share(long seed) {
        Random random = new Random(seed);
        List<Double> temps = DoubleStream.generate(() -> 15 + 20 * random.nextDouble())
                .limit(60)
                .boxed()
                .toList();
        double share = 0.05 + 0.9 * random.nextDouble();

        LocalDate by = cucumber.upBy(SOWN, temps, 20, share).orElseThrow();

        int days = (int) java.time.temporal.ChronoUnit.DAYS.between(SOWN, by);
        assertThat(cucumber.share(temps.subList(0, days))).as("seed %d", seed).isGreaterThanOrEqualTo(share - 1e-6);
        assertThat(cucumber.share(temps.subList(0, days - 1)))
                .as("seed %d", seed)
                .isLessThan(share + 1e-6);
    }

    @Test
    void without_a_table_the_usual_days_hold_between_the_published_limits() {
        Emergence leek = Emergence.usually(8, 18, 2, 35);

        assertThat(leek.days(20).orElseThrow()).isCloseTo(12, within(1e-9));
        assertThat(leek.days(2).orElseThrow()).isCloseTo(12, within(1e-9));
        assertThat(leek.days(1.9)).isEmpty();
        assertThat(Emergence.usually(8, 18, 20, 20).days(20)).isNotEmpty();
    }

    @Test
    void usual_days_put_one_in_ten_at_the_low_end_and_nine_in_ten_at_the_high_end() {
        EmergenceCurve curve = EmergenceCurve.usually(7, 14);

        assertThat(curve.share(7)).isCloseTo(0.1, within(1e-9));
        assertThat(curve.share(14)).isCloseTo(0.9, within(1e-9));
        assertThat(curve.daysUntil(0.9)).isCloseTo(14, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {70, -25, Double.NaN, Double.POSITIVE_INFINITY})
    void degrees_fahrenheit_taken_for_celsius_are_refused(double soilTempC) {
        assertThatThrownBy(() -> cucumber.days(soilTempC))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("soilTempC is ")
                .hasMessageContaining("allowed is -20 to 60 °C");
    }

    @Test
    void a_table_without_rows_or_with_impossible_days_is_refused() {
        assertThatThrownBy(() -> Emergence.table(Map.of())).hasMessageContaining("no row");
        assertThatThrownBy(() -> Emergence.table(Map.of(20.0, 0.0)))
                .hasMessage("days is 0 days; allowed is 0.5 to 400 days");
    }
}
