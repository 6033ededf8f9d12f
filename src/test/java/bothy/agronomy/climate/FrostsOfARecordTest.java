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

/**
 * The published frost chances of Georgetown, Delaware; 79 years of freezes at Portland, Maine, against NOAA's normal dates and a printed
 * regression; records made up with known frosts; the Seattle record, of which four years say little.
 */
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

        // A weak check: four years, and no better outside one is at hand for this record (see Portland for a long one).
        // NOAA normals of Seattle-Tacoma, from memory, to about five days: half of the years' last 32 °F after 15
        // March, one in
        // ten after 8 April, first 32 °F on 15 November as often before as after. Last frost "around March 24th" by the
        // mean of
        // 30 years up to 2018 (KING 5 weather desk, copy:
        // king5.com/article/weather/chances-of-lowland-snow-this-winter-are-fading).
        // Four years only: the standard error of their mean is half of the spread of 16 days, twice that is 16; with
        // the five days
        // of memory 21 days are allowed. The 10 % date has the error of the spread too, 40 % with four years: 28 days.
        FrostCurve spring = record.lastSpring(0).orElseThrow().curve();
        FrostCurve autumn = record.firstAutumn(0).orElseThrow().curve();
        assertThat(spring.spreadDays()).isCloseTo(16.05, within(0.01));
        assertNear(spring.dateWithChanceAfter(0.5), MonthDay.of(3, 15), 21);
        assertNear(spring.dateWithChanceAfter(0.5), MonthDay.of(3, 24), 22);
        assertNear(spring.dateWithChanceAfter(0.1), MonthDay.of(4, 8), 28);
        assertNear(autumn.dateWithChanceAfter(0.5), MonthDay.of(11, 15), 21);
        assertThat(record.lastSpring(0).orElseThrow().years()).isEqualTo(4);
    }

    /** The freezes at Portland Jetport, Maine, told by NOAA for each year, in days that are warm otherwise. */
    private static FrostRecord portland(int firstYear, int lastYear) {
        NavigableMap<LocalDate, Double> days = new TreeMap<>();
        for (LocalDate day = LocalDate.of(firstYear, 1, 1); day.getYear() <= lastYear; day = day.plusDays(1)) {
            days.put(day, 10.0);
        }
        Printed.rows("frost/portland_jetport_freezes.csv").forEach(row -> {
            int year = Integer.parseInt(row.get("year"));
            if (year >= firstYear && year <= lastYear) {
                days.put(MonthDay.parse(row.get("last_spring")).atYear(year), 0.0);
                days.put(MonthDay.parse(row.get("first_autumn")).atYear(year), 0.0);
            }
        });
        return FrostRecord.of(days, false);
    }

    /** NOAA's list of normal dates (copy: a reprinted list, its years 1951 to 1980 by memory), printed to the day. */
    @Test
    void thirty_years_of_portland_give_noaas_normal_dates_to_the_day() {
        FrostRecord record = portland(1951, 1980);

        assertThat(record.lastSpring(0).orElseThrow().years()).isEqualTo(30);
        for (boolean spring : new boolean[] {true, false}) {
            MonthDay normal = Printed.rows("frost/station_probabilities.csv").stream()
                    .filter(row -> row.get("place").equals("Portland, ME")
                            && row.get("season").startsWith("spring") == spring)
                    .map(row -> MonthDay.parse(row.get("date")))
                    .findFirst()
                    .orElseThrow();
            FrostRecord.Fitted fitted = (spring ? record.lastSpring(0) : record.firstAutumn(0)).orElseThrow();
            assertNear(fitted.curve().middle(), normal, 1);
        }
    }

    /**
     * Bohlen (Casco Bay Estuary Partnership 2021, copy) prints the lines of the same dates over the years 1941 to 2019: last freeze on
     * day 516.94450 − 0.19752 × year, residual standard error 9.687 on 77 degrees of freedom, R² 0.1816; first freeze on day −299.16894
     * + 0.29160 × year, 8.186, 0.4037. At the middle year, 1980, a line goes through the mean; the spread is
     * √(77 s² / (1 − R²) / 78).
     */
    @Test
    void seventy_nine_years_of_portland_have_the_mean_and_spread_that_their_printed_regression_implies() {
        FrostRecord record = portland(1941, 2019);
        FrostRecord.Fitted spring = record.lastSpring(0).orElseThrow();
        FrostRecord.Fitted autumn = record.firstAutumn(0).orElseThrow();

        assertThat(spring.years()).isEqualTo(79);
        assertThat((double) spring.curve().middle().atYear(2001).getDayOfYear())
                .isCloseTo(516.94450 - 0.19752 * 1980, within(0.5));
        assertThat(spring.curve().spreadDays())
                .isCloseTo(Math.sqrt(77 * 9.687 * 9.687 / (1 - 0.1816) / 78), within(0.01));
        // The print counts days of the year, so autumns of leap years a day on: a quarter of a day in the mean, and no
        // more in the spread
        // than the spread of that shift itself, √(1/4 × 3/4) = 0.43.
        assertThat((double) autumn.curve().middle().atYear(2001).getDayOfYear())
                .isCloseTo(-299.16894 + 0.29160 * 1980, within(0.75));
        assertThat(autumn.curve().spreadDays())
                .isCloseTo(Math.sqrt(77 * 8.186 * 8.186 / (1 - 0.4037) / 78), within(0.43));
    }

    /** The normal curve against plain counting in the same 79 years: so many of the years are later. */
    @Test
    void the_percentiles_of_portland_are_those_counted_in_its_years_to_two_days() {
        FrostRecord record = portland(1941, 2019);
        for (boolean spring : new boolean[] {true, false}) {
            FrostCurve curve = (spring ? record.lastSpring(0) : record.firstAutumn(0))
                    .orElseThrow()
                    .curve();
            List<MonthDay> years = Printed.rows("frost/portland_jetport_freezes.csv").stream()
                    .map(row -> MonthDay.parse(row.get(spring ? "last_spring" : "first_autumn")))
                    .sorted()
                    .toList();
            for (int eighth = 1; eighth < 8; eighth++) {
                // the tenth, twentieth … of 79 dates in order has as many eighths of eighty before it
                MonthDay counted = years.get(10 * eighth - 1);
                assertNear(curve.dateWithChanceAfter(1 - eighth / 8.0), counted, 2);
            }
            assertNear(curve.dateWithChanceAfter(0.1), years.get(71), 2);
            assertNear(curve.dateWithChanceAfter(0.9), years.get(7), 2);
        }
    }

    /**
     * NOAA's normals of 1991 to 2020 for Albany, New York (copy, restated in public code): not quite even to either side of the middle, up to
     * five days by the tenth on the other side. So much a normal curve costs; its daily record is not at hand.
     */
    @Test
    void albany_by_noaa_is_uneven_by_no_more_than_five_days() {
        Map<String, List<Map<String, String>>> tables = Printed.rows("frost/station_probabilities.csv").stream()
                .filter(row -> row.get("place").startsWith("Albany International"))
                .collect(Collectors.groupingBy(row -> row.get("threshold_f") + row.get("season")));

        assertThat(tables).hasSize(4);
        tables.values().forEach(rows -> {
            boolean spring = rows.get(0).get("season").startsWith("spring");
            Map<Integer, MonthDay> printed = rows.stream()
                    .collect(Collectors.toMap(
                            row -> Integer.valueOf(row.get("probability_pct")),
                            row -> MonthDay.parse(row.get("date"))));
            double tenth = Math.abs(FrostCurve.daysFrom(printed.get(50), printed.get(10)));
            FrostCurve curve = new FrostCurve(printed.get(50), tenth / 1.2816);

            assertNear(curve.dateWithChanceAfter(spring ? 0.9 : 0.1), printed.get(90), 5);
        });
    }

    private static void assertNear(MonthDay reckoned, MonthDay published, int days) {
        assertThat(Math.abs(FrostCurve.daysFrom(published, reckoned)))
                .as("%s against %s", reckoned, published)
                .isLessThanOrEqualTo(days);
    }

    /** Thirty made-up years whose last frosts fall on the published deciles of Georgetown, Delaware, at 32 °F. */
    @Test
    void a_record_drawn_from_a_published_table_gives_its_percentiles_back() {
        Map<Integer, MonthDay> printed = delaware().stream()
                .filter(rows -> rows.get(0).get("threshold_f").equals("32")
                        && rows.get(0).get("season").startsWith("spring"))
                .findFirst()
                .orElseThrow()
                .stream()
                .collect(Collectors.toMap(
                        row -> Integer.valueOf(row.get("probability_pct")), row -> MonthDay.parse(row.get("date"))));
        NavigableMap<LocalDate, Double> days = new TreeMap<>();
        for (int year = 1971; year <= 2000; year++) {
            for (LocalDate day = LocalDate.of(year, 1, 1); day.getYear() == year; day = day.plusDays(1)) {
                days.put(day, 10.0);
            }
            // the share of later frosts of this year among thirty, on the table's line between its printed chances
            double later = (year - 1971 + 0.5) / 30 * 100;
            days.put(between(printed, later).atYear(year), -1.0);
        }

        FrostCurve curve =
                FrostRecord.of(days, false).lastSpring(0).orElseThrow().curve();

        // the table runs on straight beyond 10 and 90 % here, so that the tails are a little short: three days
        printed.forEach((percent, date) -> assertNear(curve.dateWithChanceAfter(percent / 100.0), date, 3));
    }

    private static MonthDay between(Map<Integer, MonthDay> printed, double percent) {
        NavigableMap<Integer, MonthDay> rows = new TreeMap<>(printed);
        Integer below = rows.lowerKey((int) Math.ceil(percent));
        int from = below == null ? rows.firstKey() : below.equals(rows.lastKey()) ? rows.lowerKey(below) : below;
        int to = rows.higherKey(from);
        double part = (percent - from) / (to - from);
        long step = FrostCurve.daysFrom(rows.get(from), rows.get(to));
        return MonthDay.from(rows.get(from).atYear(2001).plusDays(Math.round(part * step)));
    }

    @Test
    void impossible_values_are_refused() {
        assertThatThrownBy(() -> FrostRecord.of(new TreeMap<>(Map.of(LocalDate.of(2027, 1, 1), 70.0)), false))
                .hasMessage("tminC is 70 °C; allowed is -90 to 60 °C");
        assertThatThrownBy(() -> FrostCurve.around(MonthDay.of(5, 1)).dateWithChanceAfter(1))
                .hasMessage("chance is 1; allowed is 0.01 to 0.99");
    }
}
