package bothy.agronomy.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked examples of extension services (in °F, converted) and of a published sine and triangle; normals of the Seattle record. */
class DegreeDaysOfARecordTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    @Test
    void nine_printed_examples_are_met_to_the_last_digit() {
        double sumOfThreeDays = 0;
        int checked = 0;
        for (Map<String, String> row : Printed.rows("degree-days/worked_examples.csv")) {
            double printed = Double.parseDouble(row.get("printed_result"));
            double tolerance = Printed.tolerance(row.get("printed_result"));
            double computed = row.get("event").startsWith("sum of the three") ? sumOfThreeDays : of(row);
            assertThat(computed).as(row.get("source")).isCloseTo(printed, within(tolerance));
            sumOfThreeDays += checked < 3 ? computed : 0;
            checked++;
        }
        assertThat(checked).isEqualTo(9);
    }

    private static double of(Map<String, String> row) {
        double tmin = Double.parseDouble(row.get("tmin"));
        double tmax = Double.parseDouble(row.get("tmax"));
        if (row.get("input_unit").equals("F")) {
            // base 50 and limit 86 °F are 10 and 30 °C; Fahrenheit degree days are 1.8 to one of Celsius
            return 1.8 * DegreeDays.capped(celsius(tmin), celsius(tmax), 10, 30);
        }
        return row.get("method").startsWith("single sine")
                ? DegreeDays.sine(tmin, tmax, 12, 33)
                : DegreeDays.triangle(tmin, tmax, 12, 33);
    }

    @Test
    void the_averaging_method_gives_the_smaller_sums_that_its_paper_names() {
        // 72/46 and 63/42 °F of the examples: 9 and 2.5 by averaging (own arithmetic), against 11 and 6.5
        assertThat(1.8 * DegreeDays.averaging(celsius(46), celsius(72), 10)).isCloseTo(9, within(1e-9));
        assertThat(1.8 * DegreeDays.averaging(celsius(42), celsius(63), 10)).isCloseTo(2.5, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_method_rises_with_either_temperature_and_is_neither_nan_nor_negative(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 100; i++) {
            double tmin = -60 + 120 * random.nextDouble();
            double tmax = tmin + (60 - tmin) * random.nextDouble();
            double warmer = tmax + (60 - tmax) * random.nextDouble();
            double base = -5 + 35 * random.nextDouble();
            double upper = base + (60 - base) * random.nextDouble();
            String as = "seed " + seed + ": " + tmin + " to " + tmax + ", base " + base + ", upper " + upper;

            assertThat(DegreeDays.averaging(tmin, tmax, base))
                    .as(as)
                    .isBetween(0.0, DegreeDays.averaging(tmin, warmer, base));
            assertThat(DegreeDays.capped(tmin, tmax, base, upper))
                    .as(as)
                    .isBetween(0.0, DegreeDays.capped(tmin, warmer, base, upper));
            assertThat(DegreeDays.sine(tmin, tmax, base, upper)).as(as).isBetween(-1e-9, upper - base + 1e-9);
            assertThat(DegreeDays.sine(tmin, tmax, base, upper))
                    .as(as)
                    .isLessThanOrEqualTo(DegreeDays.sine(tmin, warmer, base, upper) + 1e-9);
            assertThat(DegreeDays.triangle(tmin, tmax, base, upper))
                    .as(as)
                    .isBetween(-1e-9, DegreeDays.triangle(tmin, warmer, base, upper) + 1e-9);
        }
    }

    @Test
    void the_days_until_a_sum_are_counted() {
        assertThat(DegreeDays.daysUntil(Collections.nCopies(10, 5.0), 12)).hasValue(3);
        assertThat(DegreeDays.daysUntil(Collections.nCopies(10, 5.0), 50)).hasValue(10);
        assertThat(DegreeDays.daysUntil(Collections.nCopies(10, 5.0), 50.1)).isEmpty();
        assertThat(DegreeDays.daysUntil(Collections.nCopies(10, 5.0), 0)).hasValue(0);
    }

    @Test
    void the_last_sowing_by_warmth_is_counted_back_from_the_frost() {
        List<Double> cooling = List.of(10.0, 8.0, 6.0, 4.0, 2.0);

        assertThat(DegreeDays.daysBeforeEnd(cooling, 12)).hasValue(3);
        assertThat(DegreeDays.daysBeforeEnd(cooling, 12.1)).hasValue(4);
        assertThat(DegreeDays.daysBeforeEnd(cooling, 31)).isEmpty();
    }

    @Test
    void soil_follows_the_mean_of_a_week_of_air() {
        assertThat(SoilWarmth.fromAirC(List.of(0.0, 7.0, 7.0, 7.0, 7.0, 7.0, 7.0, 7.0)))
                .containsExactly(0.0, 3.5, 14 / 3.0, 5.25, 5.6, 35 / 6.0, 6.0, 7.0);
    }

    @Test
    void seattle_is_wet_in_winter_and_dry_in_july_as_its_published_normals_say() {
        NavigableMap<LocalDate, Double> rain = new TreeMap<>();
        Printed.rows("weather/seattle-daily-2012-2015.csv")
                .forEach(row -> rain.put(LocalDate.parse(row.get("date")), Double.valueOf(row.get("precipitation"))));

        MonthlyNormals normals = MonthlyNormals.of(rain);

        // NOAA 1991-2020 normals of Seattle-Tacoma, from memory: about 1000 mm a year, 15 mm in July, 150 mm or more in
        // November;
        // four years differ from thirty, so only a third either way is asked
        assertThat(normals.years(Month.JULY)).isEqualTo(4);
        assertThat(normals.meanYear().orElseThrow()).isBetween(670.0, 1330.0);
        assertThat(normals.mean(Month.JULY).orElseThrow()).isLessThan(30);
        assertThat(normals.mean(Month.NOVEMBER).orElseThrow()).isBetween(100.0, 250.0);
    }

    @Test
    void a_month_with_a_missing_day_does_not_count() {
        NavigableMap<LocalDate, Double> rain = new TreeMap<>();
        for (LocalDate day = LocalDate.of(2027, 1, 1); day.getMonthValue() < 3; day = day.plusDays(1)) {
            rain.put(day, 2.0);
        }
        rain.remove(LocalDate.of(2027, 2, 14));

        MonthlyNormals normals = MonthlyNormals.of(rain);

        assertThat(normals.mean(Month.JANUARY)).contains(62.0);
        assertThat(normals.mean(Month.FEBRUARY)).isEmpty();
        assertThat(normals.meanYear()).isEmpty();
    }

    @Test
    void negative_rain_and_crossed_temperatures_are_refused() {
        assertThatThrownBy(() -> MonthlyNormals.of(new TreeMap<>(Map.of(LocalDate.of(2027, 1, 1), -1.0))))
                .hasMessage("the value of 2027-01-01 is -1.0; it must not be negative");
        assertThatThrownBy(() -> DegreeDays.averaging(20, 10, 10)).hasMessage("tminC 20.0 °C is above tmaxC 10.0 °C");
        assertThatThrownBy(() -> DegreeDays.averaging(70, 80, 10))
                .hasMessage("tminC is 70 °C; allowed is -60 to 60 °C");
    }
}
