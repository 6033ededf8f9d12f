package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Windows around the frost are arithmetic; the printed lists of NOAA normals check the count of days and the rough estimate. */
class SowingByTheFrostTest {
    private static final FrostDates NORTH = new FrostDates(MonthDay.of(5, 10), MonthDay.of(10, 8));
    private static final FrostDates SOUTH = new FrostDates(MonthDay.of(11, 9), MonthDay.of(4, 9));

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @Test
    void a_day_in_winter_belongs_to_the_season_to_come() {
        assertThat(NORTH.seasonAt(LocalDate.of(2027, 1, 20)))
                .isEqualTo(new Season(LocalDate.of(2027, 5, 10), LocalDate.of(2027, 10, 8)));
        assertThat(NORTH.seasonAt(LocalDate.of(2027, 10, 9)).lastFrost()).isEqualTo(LocalDate.of(2028, 5, 10));
        assertThat(NORTH.seasonAt(LocalDate.of(2027, 10, 8)).lastFrost()).isEqualTo(LocalDate.of(2027, 5, 10));
    }

    @Test
    void in_the_south_the_season_spans_the_new_year() {
        Season season = new Season(LocalDate.of(2026, 11, 9), LocalDate.of(2027, 4, 9));

        assertThat(SOUTH.seasonAt(LocalDate.of(2026, 8, 1))).isEqualTo(season);
        assertThat(SOUTH.seasonAt(LocalDate.of(2027, 2, 1))).isEqualTo(season);
        assertThat(SOUTH.seasonAt(LocalDate.of(2027, 4, 10)).lastFrost()).isEqualTo(LocalDate.of(2027, 11, 9));
    }

    @Test
    void tomatoes_six_to_eight_weeks_before_the_frost_and_out_one_to_two_weeks_after_it() {
        Season season = NORTH.seasonAt(LocalDate.of(2027, 3, 1));

        assertThat(season.beforeLastFrost(6, 8))
                .isEqualTo(new Window(LocalDate.of(2027, 3, 15), LocalDate.of(2027, 3, 29)));
        assertThat(season.fromLastFrost(1, 2))
                .isEqualTo(new Window(LocalDate.of(2027, 5, 17), LocalDate.of(2027, 5, 24)));
        assertThat(Season.sowingFor(season.fromLastFrost(1, 2), 6, 8))
                .isEqualTo(new Window(LocalDate.of(2027, 3, 22), LocalDate.of(2027, 4, 12)));
    }

    @Test
    void garlic_is_set_around_the_first_frost() {
        assertThat(NORTH.seasonAt(LocalDate.of(2027, 9, 1)).fromFirstFrost(-1, 4))
                .isEqualTo(new Window(LocalDate.of(2027, 10, 1), LocalDate.of(2027, 11, 5)));
    }

    @Test
    void the_last_sowing_still_ripens_and_a_day_later_it_does_not() {
        Season season = NORTH.seasonAt(LocalDate.of(2027, 7, 1));

        LocalDate last = season.lastSowing(60, 14, Season.AUTUMN_SLACK_DAYS);

        assertThat(last).isEqualTo(LocalDate.of(2027, 7, 12));
        assertThat(last.plusDays(60 + 14 + 14)).isEqualTo(season.firstFrost());
        assertThat(season.stillRipens(last, 60, 14, 14)).isTrue();
        assertThat(season.stillRipens(last.plusDays(1), 60, 14, 14)).isFalse();
    }

    @Test
    void successions_end_with_the_last_sowing_that_ripens() {
        assertThat(Season.succession(LocalDate.of(2027, 6, 1), 14, LocalDate.of(2027, 7, 12)))
                .containsExactly(LocalDate.of(2027, 6, 1), LocalDate.of(2027, 6, 15), LocalDate.of(2027, 6, 29));
        assertThat(Season.succession(LocalDate.of(2027, 7, 13), 14, LocalDate.of(2027, 7, 12)))
                .isEmpty();
    }

    @Test
    void a_growing_season_counts_the_days_that_the_printed_lists_count() {
        // NOAA normal freeze dates, reprinted list: 20 places. In one (Phoenix) the printed days do not fit the printed
        // dates by 4
        // days; the others fit exactly or within the day by which the list itself varies.
        Map<String, List<Map<String, String>>> places = normals();

        long fit = places.values().stream()
                .filter(rows -> {
                    long printed = Long.parseLong(rows.get(0).get("frost_free_days"));
                    return Math.abs(season(rows).frostFreeDays() - printed) <= 1;
                })
                .count();

        assertThat(places).hasSize(20);
        assertThat(fit).isEqualTo(19);
    }

    @Test
    void the_estimate_by_latitude_is_right_to_its_margin_at_most_stations() {
        // what the margin is worth: nine in ten of the 40 printed dates of 20 American stations (latitudes from memory)
        long within = normals().values().stream()
                .flatMap(List::stream)
                .filter(row -> {
                    FrostDates typical = FrostDates.typical(Double.parseDouble(row.get("latitude")))
                            .orElseThrow();
                    MonthDay estimate =
                            row.get("season").equals("spring last") ? typical.lastSpring() : typical.firstAutumn();
                    long off = ChronoUnit.DAYS.between(
                            estimate.atYear(2001),
                            MonthDay.parse(row.get("date")).atYear(2001));
                    return Math.abs(off) <= FrostDates.TYPICAL_MARGIN_DAYS;
                })
                .count();

        assertThat(within).isGreaterThanOrEqualTo(36);
    }

    private static Map<String, List<Map<String, String>>> normals() {
        return Printed.rows("frost/station_probabilities.csv").stream()
                .filter(row -> row.get("source").startsWith("NOAA normal"))
                .collect(Collectors.groupingBy(row -> row.get("place")));
    }

    private static Season season(List<Map<String, String>> rows) {
        Map<String, MonthDay> dates = rows.stream()
                .collect(Collectors.toMap(row -> row.get("season"), row -> MonthDay.parse(row.get("date"))));
        return new FrostDates(dates.get("spring last"), dates.get("fall first")).seasonAt(LocalDate.of(2001, 6, 1));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_estimates_of_the_two_hemispheres_are_half_a_year_apart(long seed) {
        double latitude = 30 + 40 * new Random(seed).nextDouble();

        FrostDates north = FrostDates.typical(latitude).orElseThrow();
        FrostDates south = FrostDates.typical(-latitude).orElseThrow();

        assertThat(north.lastSpring().atYear(2001).plusDays(183).getDayOfYear())
                .as("seed %d: %s°", seed, latitude)
                .isEqualTo(south.lastSpring().atYear(2001).getDayOfYear());
        assertThat(Math.abs(north.seasonAt(LocalDate.of(2001, 6, 1)).frostFreeDays()
                        - south.seasonAt(LocalDate.of(2001, 12, 1)).frostFreeDays()))
                .as("seed %d: %s°", seed, latitude)
                .isLessThanOrEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 29.9, -20, 70.1, 90, -90})
    void no_estimate_is_given_where_frost_is_rare_or_the_season_is_a_polar_one(double latitude) {
        assertThat(FrostDates.typical(latitude)).isEmpty();
    }

    @Test
    void a_latitude_of_95_is_refused() {
        assertThatThrownBy(() -> FrostDates.typical(95)).hasMessage("latitude is 95 °; allowed is -90 to 90 °");
        assertThatThrownBy(() -> FrostDates.typical(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_leap_day_as_frost_date_falls_on_the_28th_in_common_years() {
        FrostDates mild = new FrostDates(MonthDay.of(2, 29), MonthDay.of(12, 1));

        assertThat(mild.seasonAt(LocalDate.of(2027, 1, 1)).lastFrost()).isEqualTo(LocalDate.of(2027, 2, 28));
        assertThat(mild.seasonAt(LocalDate.of(2028, 1, 1)).lastFrost()).isEqualTo(LocalDate.of(2028, 2, 29));
    }

    @Test
    void hardening_off_begins_with_two_hours_and_ends_with_two_nights_out() {
        List<HardeningOff.Day> days = HardeningOff.before(LocalDate.of(2027, 5, 20), 10);

        assertThat(days).hasSize(10);
        assertThat(days.get(0)).isEqualTo(new HardeningOff.Day(LocalDate.of(2027, 5, 10), 2, false));
        assertThat(days.get(7)).isEqualTo(new HardeningOff.Day(LocalDate.of(2027, 5, 17), 10, false));
        assertThat(days.get(9)).isEqualTo(new HardeningOff.Day(LocalDate.of(2027, 5, 19), 24, true));
        assertThat(days.stream().filter(HardeningOff.Day::nightOutside)).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 7, 10, 14, 28})
    void hours_outside_never_shrink(int length) {
        List<Integer> hours = HardeningOff.calendar(LocalDate.of(2027, 5, 1), length).stream()
                .map(HardeningOff.Day::hoursOutside)
                .toList();

        assertThat(hours).isSorted().hasSize(length);
    }

    @Test
    void weeks_the_wrong_way_round_are_refused() {
        Season season = NORTH.seasonAt(LocalDate.of(2027, 3, 1));

        assertThatThrownBy(() -> season.fromLastFrost(2, 1))
                .hasMessage("weeks runs from 2 to 1; the low end must come first");
    }
}
