package bothy.agronomy.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published frost chances of Georgetown, Delaware; records made up with known frosts; the Seattle record. */
class FrostsOfARecordTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    /** Rows of the University of Delaware's table, by threshold and season: five chances each. */
    static List<List<Map<String, String>>> delaware() {
        return List.copyOf(Printed.rows("frost/station_probabilities.csv").stream()
                .filter(row -> row.get("place").startsWith("Georgetown"))
                .collect(Collectors.groupingBy(row -> row.get("threshold_f") + row.get("season")))
                .values());
    }

    @ParameterizedTest
    @MethodSource("delaware")
    void from_its_middle_and_tenth_the_curve_meets_the_other_printed_chances_to_a_day(List<Map<String, String>> rows) {
        boolean spring = rows.get(0).get("season").startsWith("spring");
        Map<Integer, MonthDay> printed = rows.stream()
                .collect(Collectors.toMap(
                        row -> Integer.valueOf(row.get("probability_pct")), row -> MonthDay.parse(row.get("date"))));
        double tenth = Math.abs(FrostCurve.daysFrom(printed.get(50), printed.get(10)));
        FrostCurve curve = new FrostCurve(printed.get(50), tenth / 1.2816);

        assertThat(printed).hasSize(5);
        printed.forEach((percent, date) -> {
            // spring: chance of a later frost; autumn: of an earlier one
            double after = spring ? percent / 100.0 : 1 - percent / 100.0;
            assertThat(Math.abs(FrostCurve.daysFrom(curve.dateWithChanceAfter(after), date)))
                    .as("%s %d %%", rows.get(0), percent)
                    .isLessThanOrEqualTo(1);
        });
    }

    @Test
    void chance_and_date_turn_back_into_each_other() {
        FrostCurve curve = new FrostCurve(MonthDay.of(4, 25), 11.7);

        for (double chance = 0.05; chance < 1; chance += 0.05) {
            // dates are whole days, each worth up to 3.4 % at this spread
            assertThat(curve.chanceAfter(curve.dateWithChanceAfter(chance))).isCloseTo(chance, within(0.02));
        }
        assertThat(curve.chanceAfter(MonthDay.of(4, 25))).isEqualTo(0.5);
    }

    @Test
    void a_curve_may_lie_across_the_new_year() {
        FrostCurve curve = new FrostCurve(MonthDay.of(12, 28), 12);

        assertThat(curve.dateWithChanceAfter(0.1)).isEqualTo(MonthDay.of(1, 12));
        assertThat(curve.chanceAfter(MonthDay.of(1, 12))).isCloseTo(0.1, within(0.02));
        assertThat(curve.chanceAfter(MonthDay.of(12, 1))).isGreaterThan(0.98);
    }

    /** Ten years of days at 10 °C with a frost at a known day before and after summer. */
    private static NavigableMap<LocalDate, Double> record(int spread, Random random, boolean southern) {
        NavigableMap<LocalDate, Double> days = new TreeMap<>();
        for (LocalDate day = LocalDate.of(2001, 1, 1); day.getYear() < 2012; day = day.plusDays(1)) {
            days.put(day, 10.0);
        }
        for (int year = 2001; year < 2012; year++) {
            LocalDate spring =
                    LocalDate.of(year, southern ? 10 : 4, 20).plusDays(random.nextInt(2 * spread + 1) - spread);
            LocalDate autumn =
                    LocalDate.of(year, southern ? 5 : 10, 20).plusDays(random.nextInt(2 * spread + 1) - spread);
            days.put(spring, -1.0);
            days.put(autumn, -1.0);
        }
        return days;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void known_frosts_are_found_in_either_hemisphere(long seed) {
        for (boolean southern : new boolean[] {false, true}) {
            FrostRecord record = FrostRecord.of(record(10, new Random(seed), southern), southern);

            FrostRecord.Fitted spring = record.lastSpring(0).orElseThrow();
            FrostRecord.Fitted autumn = record.firstAutumn(0).orElseThrow();

            assertThat(Math.abs(FrostCurve.daysFrom(
                            MonthDay.of(southern ? 10 : 4, 20), spring.curve().middle())))
                    .as("seed %d south %s", seed, southern)
                    .isLessThanOrEqualTo(6);
            assertThat(Math.abs(FrostCurve.daysFrom(
                            MonthDay.of(southern ? 5 : 10, 20), autumn.curve().middle())))
                    .as("seed %d south %s", seed, southern)
                    .isLessThanOrEqualTo(6);
            assertThat(spring.curve().spreadDays()).isBetween(2.0, 11.0);
            assertThat(spring.years()).isBetween(10, 11);
            assertThat(spring.withoutFrost()).isZero();
        }
    }

    @Test
    void years_with_a_hole_of_more_than_ten_days_are_left_out() {
        NavigableMap<LocalDate, Double> days = record(5, new Random(1), false);
        for (int day = 0; day < 11; day++) {
            days.remove(LocalDate.of(2005, 3, 1).plusDays(day));
        }

        assertThat(FrostRecord.of(days, false).lastSpring(0).orElseThrow().years())
                .isEqualTo(10);
    }

    @Test
    void a_place_without_frost_or_a_record_too_short_gives_nothing() {
        NavigableMap<LocalDate, Double> days = record(5, new Random(1), false);

        assertThat(FrostRecord.of(days, false).lastSpring(-10)).isEmpty();
        assertThat(FrostRecord.of(days.headMap(LocalDate.of(2002, 12, 31), true), false)
                        .lastSpring(0))
                .isEmpty();
        assertThat(FrostRecord.of(new TreeMap<>(), false).firstAutumn(0)).isEmpty();
    }

    @Test
    void seattle_has_its_last_frost_in_march_or_april_and_its_first_in_november() {
        NavigableMap<LocalDate, Double> tmin = new TreeMap<>();
        Printed.rows("weather/seattle-daily-2012-2015.csv")
                .forEach(row -> tmin.put(LocalDate.parse(row.get("date")), Double.valueOf(row.get("temp_min"))));
        FrostRecord record = FrostRecord.of(tmin, false);

        // NOAA normals of Seattle-Tacoma, from memory: last 32 °F about mid-March, first about mid-November; four
        // years, three weeks
        // either way
        assertThat(Math.abs(FrostCurve.daysFrom(
                        MonthDay.of(3, 15),
                        record.lastSpring(0).orElseThrow().curve().middle())))
                .isLessThanOrEqualTo(21);
        assertThat(Math.abs(FrostCurve.daysFrom(
                        MonthDay.of(11, 15),
                        record.firstAutumn(0).orElseThrow().curve().middle())))
                .isLessThanOrEqualTo(21);
        assertThat(record.lastSpring(0).orElseThrow().years()).isEqualTo(4);
    }

    @Test
    void impossible_values_are_refused() {
        assertThatThrownBy(() -> FrostRecord.of(new TreeMap<>(Map.of(LocalDate.of(2027, 1, 1), 70.0)), false))
                .hasMessage("tminC is 70 °C; allowed is -90 to 60 °C");
        assertThatThrownBy(() -> FrostCurve.around(MonthDay.of(5, 1)).dateWithChanceAfter(1))
                .hasMessage("chance is 1; allowed is 0.01 to 0.99");
    }
}
