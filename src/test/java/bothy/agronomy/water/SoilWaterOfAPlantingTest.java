package bothy.agronomy.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.water.SoilWater.Finger;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of any balance, and the daily work with it: fingers, cans, pots and the next watering day. */
class SoilWaterOfAPlantingTest {
    private static final SoilWater.Day DRY = new SoilWater.Day(0, 0, 5, 100, 0.4);
    private static final LocalDate MONDAY = LocalDate.of(2027, 7, 5);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_balance_stays_between_full_and_empty_and_closes_whatever_the_weather(long seed) {
        Random random = new Random(seed);
        double total = 5 + 200 * random.nextDouble();
        SoilWater soil = new SoilWater(total * random.nextDouble());
        double started = soil.depletionMm();
        double came = 0;
        double went = 0;
        for (int day = 0; day < 200; day++) {
            double rain = random.nextInt(4) == 0 ? 60 * random.nextDouble() : 0;
            double watering = random.nextInt(5) == 0 ? 40 * random.nextDouble() : 0;
            SoilWater.DayDone done = soil.after(new SoilWater.Day(
                    rain, watering, 12 * random.nextDouble(), total, 0.1 + 0.7 * random.nextDouble()));
            soil = done.after();
            came += rain + watering;
            went += done.usedMm() + done.drainedMm();
            assertThat(soil.depletionMm()).as("seed %d day %d", seed, day).isBetween(0.0, total);
            assertThat(done.stress()).as("seed %d day %d", seed, day).isBetween(0.0, 1.0);
            assertThat(done.usedMm()).isNotNegative();
            assertThat(done.drainedMm()).isNotNegative();
        }

        assertThat(came - went).as("seed %d", seed).isCloseTo(started - soil.depletionMm(), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void more_water_never_means_more_stress(long seed) {
        Random random = new Random(seed);
        SoilWater soil = new SoilWater(100 * random.nextDouble());
        double watering = 30 * random.nextDouble();

        double dry = soil.after(DRY).stress();
        double wet = soil.after(DRY.withWatering(watering)).stress();

        assertThat(wet).as("seed %d", seed).isGreaterThanOrEqualTo(dry);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void litres_and_millimetres_turn_back_into_each_other(long seed) {
        Random random = new Random(seed);
        double areaM2 = 0.01 + 20 * random.nextDouble();
        double litres = 200 * random.nextDouble();

        double depthMm = Watering.depthMm(litres, areaM2);

        // depths over 1000 mm are refused; a can on a small pot stays below
        if (depthMm <= 1000) {
            assertThat(Watering.litres(depthMm, areaM2)).as("seed %d", seed).isCloseTo(litres, within(1e-9));
        }
    }

    @Test
    void seven_litres_are_a_can_of_ten_to_the_next_half() {
        assertThat(Watering.cans(7, 10)).isEqualTo(1);
        assertThat(Watering.cans(5, 10)).isEqualTo(0.5);
        assertThat(Watering.cans(0, 10)).isZero();
        assertThat(Watering.litres(20, 0.4 * 0.6)).isCloseTo(4.8, within(1e-12));
    }

    @Test
    void the_next_watering_is_before_the_freely_taken_water_is_gone() {
        // 40 mm are taken freely; 20 are missing on Monday morning, 5 go each day: gone on Thursday evening, passed on
        // Friday
        Watering.Next next = Watering.next(new SoilWater(20), week(0)).orElseThrow();

        assertThat(next).isEqualTo(new Watering.Next(MONDAY.plusDays(4), 40));
    }

    @Test
    void rain_in_the_forecast_puts_the_watering_off() {
        assertThat(Watering.next(new SoilWater(20), week(15)).orElseThrow().date())
                .isEqualTo(MONDAY.plusDays(7));
    }

    @Test
    void no_watering_is_named_when_the_forecast_does_not_need_one() {
        assertThat(Watering.next(SoilWater.FULL, week(0).subList(0, 7))).isEmpty();
        assertThat(Watering.next(new SoilWater(39), List.of())).isEmpty();
    }

    /** Ten dry days from Monday on, with rain on Tuesday. */
    private static List<Watering.Ahead> week(double rainOnTuesdayMm) {
        return IntStream.range(0, 10)
                .mapToObj(day -> new Watering.Ahead(
                        MONDAY.plusDays(day), new SoilWater.Day(day == 1 ? rainOnTuesdayMm : 0, 0, 5, 100, 0.4)))
                .toList();
    }

    @Test
    void a_dry_finger_overrules_a_reckoning_that_was_too_wet() {
        assertThat(new SoilWater(10).felt(Finger.DRY, DRY).depletionMm()).isEqualTo(40);
        assertThat(new SoilWater(70).felt(Finger.DRY, DRY).depletionMm()).isEqualTo(70);
    }

    @Test
    void a_moist_or_wet_finger_overrules_a_reckoning_that_was_too_dry() {
        assertThat(new SoilWater(70).felt(Finger.MOIST, DRY).depletionMm()).isEqualTo(20);
        assertThat(new SoilWater(10).felt(Finger.MOIST, DRY).depletionMm()).isEqualTo(10);
        assertThat(new SoilWater(70).felt(Finger.WET, DRY)).isEqualTo(SoilWater.FULL);
    }

    @Test
    void a_growbag_tomato_in_july_needs_water_every_day_or_two_and_a_bed_does_not() {
        // a third of a 35 L bag for each plant, leaves over 0.3 m², 6 mm a day: 1.8 L a day out of 2.9 L available
        Container third = new Container(11.7, 0.1, 0.3);
        SoilWater.Day hot = third.day(0, 0, 6);

        SoilWater evening = SoilWater.FULL.after(hot).after();

        assertThat(third.availableLitres()).isCloseTo(2.925, within(1e-9));
        assertThat(third.litresMissing(evening)).isCloseTo(1.8, within(1e-9));
        assertThat(evening.depletionMm()).isGreaterThan(hot.freeMm());
    }

    @Test
    void rain_reaches_a_pot_only_through_its_opening() {
        Container pot = new Container(10, 0.06, 0.3);

        assertThat(pot.day(10, 0, 5).rainMm()).isCloseTo(2, within(1e-9));
        assertThat(new Container(10, 0, 0.3).day(10, 0, 5).rainMm()).isZero();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void no_pot_gives_nan_or_leaves_its_range(long seed) {
        Random random = new Random(seed);
        Container pot =
                new Container(0.05 + 100 * random.nextDouble(), 10 * random.nextDouble(), 20 * random.nextDouble());
        SoilWater water = SoilWater.FULL;
        for (int day = 0; day < 60; day++) {
            water = water.after(pot.day(50 * random.nextDouble(), 20 * random.nextDouble(), 12 * random.nextDouble()))
                    .after();
            assertThat(water.depletionMm()).as("seed %d", seed).isBetween(0.0, pot.totalAvailableMm());
            assertThat(pot.litresMissing(water)).isBetween(0.0, pot.availableLitres());
        }
    }

    @Test
    void stages_seen_replace_the_stages_of_the_table() {
        Stages table = new Stages(30, 40, 45, 30);
        LocalDate out = LocalDate.of(2027, 5, 20);

        assertThat(table.withDevelopmentFrom(out, out.plusDays(20))).isEqualTo(new Stages(20, 40, 45, 30));
        assertThat(table.withMiddleFrom(out, out.plusDays(35))).isEqualTo(new Stages(15, 20, 45, 30));
        assertThat(table.withLateFrom(out, out.plusDays(100))).isEqualTo(new Stages(30, 40, 30, 30));
        assertThat(table.withLateFrom(out, out.plusDays(35))).isEqualTo(new Stages(15, 20, 0, 30));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void kc_runs_without_a_jump_and_within_its_three_figures(long seed) {
        Random random = new Random(seed);
        CropCoefficient kc = new CropCoefficient(0.6, 1.15, 0.8);
        Stages stages = new Stages(
                5 + 40 * random.nextDouble(),
                5 + 40 * random.nextDouble(),
                5 + 40 * random.nextDouble(),
                5 + 40 * random.nextDouble());
        double last = 0.6;
        for (double day = 0; day < 250; day += 0.5) {
            double now = kc.on(day, stages);
            assertThat(now).as("seed %d day %s", seed, day).isBetween(0.6, 1.15).isCloseTo(last, within(0.06));
            last = now;
        }
    }

    @Test
    void stages_of_no_length_are_passed_at_once() {
        CropCoefficient kc = new CropCoefficient(0.6, 1.15, 0.8);

        assertThat(kc.on(1, new Stages(0, 0, 0, 0))).isEqualTo(0.8);
        assertThat(kc.on(5, new Stages(0, 0, 10, 0))).isEqualTo(1.15);
    }

    @Test
    void negative_rain_and_roots_out_of_range_are_refused() {
        assertThatThrownBy(() -> new SoilWater.Day(-1, 0, 5, 100, 0.4))
                .hasMessage("rainMm is -1 mm; allowed is 0 to 1000 mm");
        assertThatThrownBy(() -> Soil.LOAM.totalAvailableMm(5)).hasMessage("rootDepthM is 5 m; allowed is 0.01 to 3 m");
        assertThatThrownBy(() -> new Roots(0.5, 0.3)).hasMessage("deepestM is 0.3 m; allowed is 0.5 to 3 m");
        assertThatThrownBy(() -> new SoilWater(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
