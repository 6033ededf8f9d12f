package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.climate.DegreeDays;
import bothy.agronomy.climate.FrostCurve;
import bothy.agronomy.climate.NightFrost;
import bothy.agronomy.water.Air;
import bothy.agronomy.water.CropCoefficient;
import bothy.agronomy.water.Demand;
import bothy.agronomy.water.ReferenceEvapotranspiration;
import bothy.agronomy.water.Roots;
import bothy.agronomy.water.Soil;
import bothy.agronomy.water.SoilWater;
import bothy.agronomy.water.Stages;
import bothy.agronomy.water.Sun;
import bothy.agronomy.water.TypicalEvapotranspiration;
import bothy.agronomy.water.Watering;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Every figure is finite over the whole range that its Javadoc allows: at the ends of the ranges, and drawn at random between. */
class NoFigureIsNanTest {

    private static void finite(String what, double value) {
        assertThat(Double.isFinite(value)).as("%s = %s", what, value).isTrue();
    }

    @Test
    void sun_and_demand_at_every_latitude_on_every_day() {
        for (double latitude = -90; latitude <= 90; latitude += 5) {
            for (int day = 1; day <= 366; day += 5) {
                finite("Ra", Sun.extraterrestrialMj(latitude, day));
                finite("N", Sun.daylightHours(latitude, day));
                for (double tmin = -60; tmin <= 60; tmin += 20) {
                    for (double tmax = tmin; tmax <= 60; tmax += 20) {
                        finite("ET0", ReferenceEvapotranspiration.hargreavesMm(latitude, day, tmin, tmax));
                        assertThat(ReferenceEvapotranspiration.hargreavesMm(latitude, day, tmin, tmax))
                                .isNotNegative();
                    }
                }
            }
        }
    }

    @Test
    void polar_day_and_polar_night_have_whole_and_no_daylight() {
        assertThat(Sun.daylightHours(80, 172)).isEqualTo(24);
        assertThat(Sun.daylightHours(80, 355)).isZero();
        assertThat(Sun.daylightHours(-80, 355)).isEqualTo(24);
        assertThat(new Demand(80.0, TypicalEvapotranspiration.Climate.TEMPERATE_HUMID, 5)
                        .referenceMm(LocalDate.of(2027, 6, 21), 1.0, 9.0))
                .isBetween(0.0, 10.0);
        assertThat(new Demand(80.0, TypicalEvapotranspiration.Climate.TEMPERATE_HUMID, -20)
                        .referenceMm(LocalDate.of(2027, 12, 21), -30.0, -20.0))
                .isZero();
    }

    @RepeatedTest(40)
    void water_of_a_day(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        CropCoefficient kc =
                new CropCoefficient(drawn(random, 0.1, 1.4), drawn(random, 0.1, 1.4), drawn(random, 0.1, 1.4));
        Stages stages =
                new Stages(drawn(random, 1, 100), drawn(random, 1, 100), drawn(random, 1, 200), drawn(random, 1, 100));
        double age = drawn(random, 0, 1000);
        double use = Math.min(25, kc.on(age, stages) * drawn(random, 0, 25));
        double depth = new Roots(0.15, drawn(random, 0.15, 2)).depthM(age, drawn(random, 1, 400));
        for (Soil soil : Soil.values()) {
            SoilWater.Day day = new SoilWater.Day(
                    drawn(random, 0, 1000),
                    drawn(random, 0, 1000),
                    use,
                    Math.max(0.1, soil.totalAvailableMm(depth)),
                    soil.freeShare(drawn(random, 0.1, 0.8), use));
            SoilWater.DayDone done = new SoilWater(drawn(random, 0, 1000)).after(day);
            finite("Dr", done.after().depletionMm());
            finite("Ks", done.stress());
            finite("used", done.usedMm());
            finite("drained", done.drainedMm());
            assertThat(done.after().depletionMm()).isBetween(0.0, day.totalAvailableMm());
            assertThat(done.stress()).isBetween(0.0, 1.0);
            finite("cans", Watering.cans(Watering.litres(done.after().depletionMm(), 2), drawn(random, 0.5, 50)));
        }
    }

    @RepeatedTest(40)
    void warmth_and_frost(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        double tmin = drawn(random, -60, 60);
        double tmax = drawn(random, tmin, 60);
        double base = drawn(random, -5, 30);
        double upper = drawn(random, base, 60);
        for (double sum : new double[] {
            DegreeDays.averaging(tmin, tmax, base),
            DegreeDays.capped(tmin, tmax, base, upper),
            DegreeDays.sine(tmin, tmax, base, upper),
            DegreeDays.triangle(tmin, tmax, base, upper)
        }) {
            finite("degree days of " + tmin + " to " + tmax + " above " + base, sum);
            assertThat(sum).isGreaterThanOrEqualTo(-1e-9);
        }
        FrostCurve curve = new FrostCurve(MonthDay.of(5, 10), random.nextInt(4) == 0 ? 0 : drawn(random, 0, 60));
        finite("chance", curve.chanceAfter(MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(28))));
        finite("es", Air.meanSaturationKPa(tmin, tmax));
        finite("slope", Air.slopeKPaPerC(tmin));
    }

    @RepeatedTest(40)
    void seed_and_spacing(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        int sown = 1 + random.nextInt(200);
        Emergence emergence =
                Emergence.table(java.util.Map.of(10.0, drawn(random, 0.5, 400), 25.0, drawn(random, 0.5, 400)));
        NothingUp.Chances chances = new NothingUp(emergence, drawn(random, 0.5, 6), drawn(random, 0.01, 0.5))
                .chances(
                        sown,
                        random.nextInt(sown + 1),
                        List.of(drawn(random, -10, 50), drawn(random, -10, 50)),
                        random.nextInt(3) / 2.0,
                        NothingUp.Moisture.values()[random.nextInt(NothingUp.Moisture.values().length)]);
        double sum = chances.slow() + chances.tooCold() + chances.tooHot() + chances.tooDry() + chances.dead();
        assertThat(sum).isBetween(1 - 1e-9, 1 + 1e-9);
        finite("viable", SeedAge.viableShare(drawn(random, 0, 50), drawn(random, 0.5, 20), drawn(random, 20, 98)));
        finite("harm", NightFrost.chanceOfHarm(drawn(random, -60, 40), drawn(random, -20, 12), random.nextInt(10)));
        finite("life", Keeping.lifeDaysAt(drawn(random, 1, 300), drawn(random, -2, 25), drawn(random, -5, 40)));
        finite("compost", Filling.potLitres(20, 14, 18));
        assertThat(SeedNumbers.toSow(1 + random.nextInt(500), drawn(random, 0.05, 1), drawn(random, 0.5, 0.999)))
                .isPositive();
    }

    private static double drawn(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
