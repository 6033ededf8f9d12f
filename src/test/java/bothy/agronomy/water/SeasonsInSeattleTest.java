package bothy.agronomy.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole seasons replayed on the observed days of Seattle, 2012 to 2015 (NOAA; see reference/weather/README.md): three crops on
 * three soils in four summers. Watering follows {@link Watering#next} with the weather of the days to come known, as a good forecast would have it.
 */
class SeasonsInSeattleTest {
    private static final double LATITUDE = 47.4;

    /** Kc of FAO-56 Table 12, stages of Table 11, roots and p of Table 22. */
    private record Crop(String name, CropCoefficient kc, Stages stages, Roots roots, double freeShare) {}

    private static final List<Crop> CROPS = List.of(
            new Crop(
                    "tomato",
                    new CropCoefficient(0.6, 1.15, 0.8),
                    new Stages(30, 40, 45, 30),
                    new Roots(0.2, 0.7),
                    0.40),
            new Crop(
                    "lettuce",
                    new CropCoefficient(0.7, 1.0, 0.95),
                    new Stages(20, 30, 15, 10),
                    new Roots(0.15, 0.3),
                    0.30),
            new Crop(
                    "climbing bean",
                    new CropCoefficient(0.5, 1.15, 0.9),
                    new Stages(20, 30, 30, 10),
                    new Roots(0.15, 0.5),
                    0.45));

    static Stream<Arguments> seasons() {
        return Stream.of(2012, 2013, 2014, 2015)
                .flatMap(year -> CROPS.stream().flatMap(crop -> Stream.of(Soil.SANDY_LOAM, Soil.LOAM, Soil.CLAY)
                        .map(soil -> Arguments.of(year, crop, soil))));
    }

    /** The days of a planting without watering. */
    private static List<SoilWater.Day> days(int year, Crop crop, Soil soil) {
        LocalDate out = LocalDate.of(year, 5, 20);
        List<SoilWater.Day> days = new ArrayList<>();
        for (Map<String, String> row : Printed.rows("weather/seattle-daily-2012-2015.csv")) {
            LocalDate date = LocalDate.parse(row.get("date"));
            long day = out.until(date, java.time.temporal.ChronoUnit.DAYS);
            if (day < 0 || day >= crop.stages().totalDays()) {
                continue;
            }
            double reference = ReferenceEvapotranspiration.hargreavesMm(
                    LATITUDE,
                    date.getDayOfYear(),
                    Double.parseDouble(row.get("temp_min")),
                    Double.parseDouble(row.get("temp_max")));
            double use = crop.kc().on(day, crop.stages()) * reference;
            double depth = crop.roots()
                    .depthM(day, crop.stages().initialDays() + crop.stages().developmentDays());
            days.add(new SoilWater.Day(
                    SoilWater.countingRainMm(Double.parseDouble(row.get("precipitation")), reference),
                    0,
                    use,
                    soil.totalAvailableMm(depth),
                    soil.freeShare(crop.freeShare(), use)));
        }
        return days;
    }

    private record Outcome(double wateredMm, double leastStressKs, SoilWater end, double rainMm, double wentMm) {}

    private interface Gardener {
        double waters(int day, SoilWater morning, List<SoilWater.Day> season);
    }

    private static Outcome grow(List<SoilWater.Day> season, Gardener gardener) {
        SoilWater soil = SoilWater.FULL;
        double watered = 0;
        double least = 1;
        double rain = 0;
        double went = 0;
        for (int day = 0; day < season.size(); day++) {
            double watering = gardener.waters(day, soil, season);
            SoilWater.DayDone done = soil.after(season.get(day).withWatering(watering));
            soil = done.after();
            assertThat(soil.depletionMm())
                    .as("day %d", day)
                    .isBetween(0.0, season.get(day).totalAvailableMm());
            watered += watering;
            rain += season.get(day).rainMm();
            went += done.usedMm() + done.drainedMm();
            least = Math.min(least, done.stress());
        }
        return new Outcome(watered, least, soil, rain, went);
    }

    private static double advised(int day, SoilWater morning, List<SoilWater.Day> season) {
        LocalDate any = LocalDate.of(2027, 1, 1);
        List<Watering.Ahead> ahead = new ArrayList<>();
        for (int next = day; next < Math.min(season.size(), day + 3); next++) {
            ahead.add(new Watering.Ahead(any.plusDays(next - day), season.get(next)));
        }
        return Watering.next(morning, ahead)
                .filter(next -> next.date().equals(any))
                .map(Watering.Next::depthMm)
                .orElse(0.0);
    }

    @ParameterizedTest(name = "{1} on {2} in {0}")
    @MethodSource("seasons")
    void the_plants_never_suffer_and_the_balance_closes(int year, Crop crop, Soil soil) {
        List<SoilWater.Day> season = days(year, crop, soil);

        Outcome outcome = grow(season, SeasonsInSeattleTest::advised);

        assertThat(season).hasSize((int) crop.stages().totalDays());
        assertThat(outcome.leastStressKs()).isEqualTo(1);
        assertThat(outcome.rainMm() + outcome.wateredMm() - outcome.wentMm())
                .isCloseTo(-outcome.end().depletionMm(), within(0.1));
        assertThat(outcome.wateredMm()).as("a Seattle summer needs water").isGreaterThan(50);
    }

    @ParameterizedTest(name = "{1} on {2} in {0}")
    @MethodSource("seasons")
    void it_takes_no_more_water_than_the_smallest_fixed_schedule_that_keeps_the_plants_from_suffering(
            int year, Crop crop, Soil soil) {
        List<SoilWater.Day> season = days(year, crop, soil);

        Outcome advised = grow(season, SeasonsInSeattleTest::advised);

        // every seven days a fixed depth; where no depth does, as on sand with small roots, oftener
        Outcome fixed = null;
        for (int every = 7; every >= 1 && fixed == null; every--) {
            for (double depthMm = 1; depthMm <= 60 && fixed == null; depthMm++) {
                int days = every;
                double depth = depthMm;
                Outcome tried = grow(season, (day, morning, all) -> day % days == 0 ? depth : 0);
                fixed = tried.leastStressKs() == 1 ? tried : null;
            }
        }
        assertThat(fixed).isNotNull();
        assertThat(advised.wateredMm()).isLessThanOrEqualTo(fixed.wateredMm());
    }

    @ParameterizedTest(name = "{1} on {2} in {0}")
    @MethodSource("seasons")
    void without_watering_the_plants_would_have_suffered(int year, Crop crop, Soil soil) {
        assertThat(grow(days(year, crop, soil), (day, morning, all) -> 0).leastStressKs())
                .isLessThan(1);
    }
}
