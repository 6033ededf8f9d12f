package bothy.agronomy.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import bothy.agronomy.water.Ledger.Line;
import bothy.agronomy.water.Ledger.Told;
import bothy.agronomy.water.SoilWater.Finger;
import bothy.agronomy.water.TypicalEvapotranspiration.Climate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One planting's water from planting out on: what is known, what is not, and the next watering in litres. */
class LedgerOfAPlantingTest {
    private static final LocalDate OUT = LocalDate.of(2014, 5, 20);
    private static final Ledger.Crop TOMATO =
            new Ledger.Crop(new CropCoefficient(0.6, 1.15, 0.8), new Stages(30, 40, 45, 30), new Roots(0.2, 0.7), 0.40);
    private static final Demand SEATTLE = new Demand(47.4, Climate.TEMPERATE_HUMID, 17);
    /** Six tomatoes at 0.5 by 0.8 m. */
    private static final Ledger SIX_TOMATOES = new Ledger(OUT, TOMATO, new OpenGround(Soil.LOAM, 2.4), SEATTLE);

    private static Told dry(int day) {
        return new Told(OUT.plusDays(day), 12.0, 24.0, 0.0, 0, null);
    }

    private static List<Told> dryDays(int from, int to) {
        return IntStream.range(from, to).mapToObj(LedgerOfAPlantingTest::dry).toList();
    }

    private static List<Told> seattle(int year) {
        List<Told> days = new ArrayList<>();
        for (Map<String, String> row : Printed.rows("weather/seattle-daily-2012-2015.csv")) {
            LocalDate date = LocalDate.parse(row.get("date"));
            if (date.getYear() == year) {
                days.add(new Told(
                        date,
                        Double.valueOf(row.get("temp_min")),
                        Double.valueOf(row.get("temp_max")),
                        Double.valueOf(row.get("precipitation")),
                        0,
                        null));
            }
        }
        return days;
    }

    @Test
    void a_first_day_is_the_sum_of_its_parts() {
        Line line = SIX_TOMATOES.lines(List.of(dry(0))).get(0);

        double reference = ReferenceEvapotranspiration.hargreavesMm(47.4, OUT.getDayOfYear(), 12, 24);
        assertThat(line.referenceMm()).isEqualTo(reference);
        assertThat(line.day().cropUseMm()).isCloseTo(0.6 * reference, within(1e-12));
        assertThat(line.day().totalAvailableMm()).isCloseTo(155 * 0.2, within(1e-9));
        assertThat(line.done().after().depletionMm()).isCloseTo(0.6 * reference, within(1e-12));
        assertThat(line.guessed()).isFalse();
    }

    @Test
    void ten_litres_on_six_tomatoes_are_four_millimetres() {
        Told watered = new Told(OUT, 12.0, 24.0, 0.0, 9.6, null);

        assertThat(SIX_TOMATOES.lines(List.of(watered)).get(0).day().wateringMm())
                .isCloseTo(4, within(1e-12));
    }

    @Test
    void rain_counts_when_it_is_more_than_a_fifth_of_the_demand() {
        assertThat(rainOf(10).day().rainMm()).isEqualTo(10);
        assertThat(rainOf(0.5).day().rainMm()).isZero();
    }

    private static Line rainOf(double rainMm) {
        return SIX_TOMATOES
                .lines(List.of(new Told(OUT, 12.0, 24.0, rainMm, 0, null)))
                .get(0);
    }

    @Test
    void days_before_planting_out_do_not_count() {
        assertThat(SIX_TOMATOES.lines(dryDays(-10, 3)))
                .extracting(Line::date)
                .containsExactly(OUT, OUT.plusDays(1), OUT.plusDays(2));
    }

    @Test
    void without_weather_the_typical_table_stands_in_and_the_line_says_so() {
        Told unknown = new Told(OUT, null, null, null, 0, null);

        Line line = SIX_TOMATOES.lines(List.of(unknown)).get(0);

        // FAO-56 Table 2, temperate and humid at 17 °C: 1.7 to 3.4
        assertThat(line.referenceMm()).isCloseTo(2.55, within(1e-9));
        assertThat(line.guessed()).isTrue();
    }

    @Test
    void without_a_latitude_the_days_temperatures_choose_the_row_of_the_table() {
        Demand somewhere = new Demand(null, Climate.TEMPERATE_HUMID, 17);

        assertThat(somewhere.referenceMm(OUT, 15.0, 25.0)).isCloseTo(3, within(1e-9));
        assertThat(somewhere.referenceMm(OUT, 15.0, null)).isCloseTo(2.55, within(1e-9));
    }

    @Test
    void a_finger_overrules_the_reckoning_of_that_day_and_all_later_ones() {
        List<Told> days = new ArrayList<>(dryDays(0, 20));
        double reckoned = last(SIX_TOMATOES.lines(days)).done().after().depletionMm();
        days.set(19, new Told(OUT.plusDays(19), 12.0, 24.0, 0.0, 0, Finger.WET));

        Line felt = last(SIX_TOMATOES.lines(days));

        assertThat(felt.done().after().depletionMm())
                .isLessThan(reckoned)
                .isCloseTo(felt.day().cropUseMm(), within(1e-12));
    }

    @Test
    void the_next_watering_is_told_in_litres_for_the_planting() {
        Ledger.Next next = SIX_TOMATOES.next(dryDays(0, 2), dryDays(2, 12)).orElseThrow();

        List<Line> without = SIX_TOMATOES.lines(dryDays(0, 12));
        int day = (int) OUT.until(next.date(), java.time.temporal.ChronoUnit.DAYS);
        double morningMm = without.get(day - 1).done().after().depletionMm();
        assertThat(next.litres()).isCloseTo(morningMm * 2.4, within(1e-9));
        assertThat(without.get(day - 1).done().after().depletionMm())
                .isLessThanOrEqualTo(without.get(day - 1).day().freeMm());
        assertThat(without.get(day).done().after().depletionMm())
                .isGreaterThan(without.get(day).day().freeMm());
    }

    @Test
    void a_watering_given_puts_the_next_one_off() {
        List<Told> past = new ArrayList<>(dryDays(0, 5));
        LocalDate before = SIX_TOMATOES.next(past, dryDays(5, 25)).orElseThrow().date();
        past.set(4, new Told(OUT.plusDays(4), 12.0, 24.0, 0.0, 40, null));

        assertThat(SIX_TOMATOES.next(past, dryDays(5, 25)).orElseThrow().date()).isAfter(before);
    }

    @Test
    void a_growbag_needs_water_sooner_than_a_bed() {
        Ledger bag = new Ledger(OUT, TOMATO, new Container(11.7, 0.1, 0.3), SEATTLE);

        LocalDate inBag = bag.next(List.of(), dryDays(0, 15)).orElseThrow().date();
        LocalDate inBed =
                SIX_TOMATOES.next(List.of(), dryDays(0, 15)).orElseThrow().date();

        assertThat(inBag).isBefore(inBed);
        assertThat(bag.next(List.of(), dryDays(0, 15)).orElseThrow().litres())
                .isLessThan(11.7 * Container.AVAILABLE_SHARE);
    }

    @ParameterizedTest
    @ValueSource(ints = {2012, 2013, 2014, 2015})
    void followed_through_a_summer_its_advice_keeps_the_plants_from_suffering(int year) {
        LocalDate out = LocalDate.of(year, 5, 20);
        Ledger ledger = new Ledger(out, TOMATO, new OpenGround(Soil.LOAM, 2.4), SEATTLE);
        List<Told> weather = seattle(year).stream()
                .filter(day -> !day.date().isBefore(out) && day.date().isBefore(out.plusDays(145)))
                .toList();
        List<Told> diary = new ArrayList<>();
        double litres = 0;
        for (Told today : weather) {
            double given =
                    ledger.next(diary, List.of(today)).map(Ledger.Next::litres).orElse(0.0);
            diary.add(new Told(today.date(), today.tminC(), today.tmaxC(), today.rainMm(), given, null));
            litres += given;
        }

        assertThat(ledger.lines(diary)).hasSize(145).allSatisfy(line -> {
            assertThat(line.done().stress()).isEqualTo(1);
            assertThat(line.done().after().depletionMm())
                    .isBetween(0.0, line.day().totalAvailableMm());
        });
        // six plants over 145 days; common practice is 10 to 20 litres a plant and week in a dry summer at the most
        assertThat(litres / 6 / (145 / 7.0)).isBetween(3.0, 20.0);
    }

    @Test
    void a_gap_or_a_day_told_twice_is_refused() {
        assertThatThrownBy(() -> SIX_TOMATOES.lines(List.of(dry(0), dry(2))))
                .hasMessage("the ledger needs 2014-05-21 next, not 2014-05-22");
        assertThatThrownBy(() -> SIX_TOMATOES.lines(List.of(dry(0), dry(0))))
                .hasMessage("the ledger needs 2014-05-21 next, not 2014-05-20");
    }

    private static Line last(List<Line> lines) {
        return lines.get(lines.size() - 1);
    }
}
