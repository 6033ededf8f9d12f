package bothy.agronomy.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Examples 25 to 38 of FAO-56: crop coefficients, evaporation, available water, stress and the daily balance, link by link. */
class CropWaterExamplesTest {
    private static final String KC = "kc_worked_examples.csv";
    private static final String BALANCE = "water_balance_examples.csv";

    private static Stream<String> startingWith(String file, String start) {
        return Example.names(file).stream().filter(name -> name.startsWith(start));
    }

    static Stream<String> stageExamples() {
        return Stream.concat(startingWith(KC, "Ex28"), startingWith(KC, "Ex30"));
    }

    static Stream<String> placesOfExample27() {
        return Stream.concat(startingWith(KC, "Ex27"), startingWith(KC, "Box15"));
    }

    static Stream<String> decades() {
        return startingWith(KC, "Fig36");
    }

    static Stream<String> example36() {
        return startingWith(BALANCE, "Ex36");
    }

    @Test
    void example_25_wetting_of_bare_soil() {
        Example ex = Example.of(KC, "Ex25");

        double kc = ex.check(
                "Kc_ini", CropCoefficient.initialFromWetting(ex.in("Kc_ini_light"), ex.in("Kc_ini_heavy"), ex.in("I")));
        ex.check("ETc", kc * ex.in("ETo"));

        ex.done();
    }

    @Test
    void example_26_only_a_part_is_wetted() {
        Example ex = Example.of(KC, "Ex26");

        double depth = ex.check("Iw", ex.in("I") / ex.in("fw"));
        double figure = ex.check(
                "Kc_ini_fig", CropCoefficient.initialFromWetting(ex.in("Kc_ini_light"), ex.in("Kc_ini_heavy"), depth));
        double kc = ex.check("Kc_ini", CropCoefficient.initialPartlyWetted(figure, ex.in("fw")));
        ex.check("ETc", kc * ex.in("ETo"));

        ex.done();
    }

    @ParameterizedTest
    @MethodSource("placesOfExample27")
    void example_27_and_box_15_wind_and_dry_air(String place) {
        Example ex = Example.of(KC, place);
        CropCoefficient table = new CropCoefficient(0.3, ex.in("Kc_mid_tab"), 0.35);

        CropCoefficient here = table.adjusted(ex.in("u2"), ex.in("RHmin"), ex.in("h"));

        ex.check("Kc_mid", here.middle());
        assertThat(here.end()).as("an end below 0.45 stays").isEqualTo(0.35);
        ex.done();
    }

    @ParameterizedTest
    @MethodSource("stageExamples")
    void examples_28_and_30_a_day_in_the_season(String day) {
        Example ex = Example.of(KC, day);
        Stages stages = new Stages(ex.in("Lini"), ex.in("Ldev"), ex.in("Lmid"), ex.in("Llate"));

        ex.check("Kc", new CropCoefficient(ex.in("Kc_ini"), ex.in("Kc_mid"), ex.in("Kc_end")).on(ex.in("i"), stages));

        ex.done();
    }

    @ParameterizedTest
    @MethodSource("decades")
    void figure_36_use_of_dry_beans_by_ten_days(String decade) {
        Example ex = Example.of(KC, decade);

        ex.check("ETc", ex.in("Kc") * ex.in("ETo"));

        ex.done();
    }

    @Test
    void example_32_cotton_under_a_sprinkler() {
        Example ex = Example.of(KC, "Ex32");

        double most = ex.check("Kc_max", BareSoil.mostKc(ex.in("Kcb"), ex.in("u2"), ex.in("RHmin"), ex.in("h")));
        double covered = ex.check("fc", BareSoil.coveredShare(ex.in("Kcb"), ex.in("Kc_min"), most, ex.in("h")));
        double exposed = ex.check("few", BareSoil.exposedWettedShare(covered, 1));
        double evaporation = ex.check("Ke", BareSoil.evaporationKc(1, most, ex.in("Kcb"), exposed));
        ex.check("Kc", ex.in("Kcb") + evaporation);

        ex.done();
    }

    @Test
    void example_31_ten_days_of_bare_soil_drying() {
        Example ex = Example.of(BALANCE, "Ex31");
        BareSoil soil = new BareSoil(ex.in("REW"), ex.in("TEW"));
        double depletion = 0;

        for (int day = 1; day <= 10; day++) {
            String at = day + ":";
            ex.check(at + "De_start", depletion);
            double reduction = ex.check(at + "Kr", soil.reduction(depletion));
            double kc =
                    ex.check(at + "Ke", BareSoil.evaporationKc(reduction, ex.in("Kc_max"), ex.in("Kcb"), ex.in("few")));
            double evaporation = ex.check(at + "E", kc * ex.in("ETo"));
            depletion = ex.check(at + "De_end", soil.after(depletion, 0, evaporation, ex.in("few")));
            ex.check(at + "ETc", (kc + ex.in("Kcb")) * ex.in("ETo"));
        }

        ex.done();
    }

    @Test
    void example_35_two_days_of_a_crop_on_wetted_sandy_loam() {
        Example ex = Example.of(BALANCE, "Ex35");
        double total = ex.check("TEW", BareSoil.totalEvaporableMm(ex.in("theta_FC"), ex.in("theta_WP"), ex.in("Ze")));
        BareSoil soil = new BareSoil(ex.in("REW"), total);
        // computed 1.207 for a height of 0.30 m
        double most = ex.check("Kc_max", BareSoil.mostKc(ex.in("1:Kcb"), ex.in("u2"), ex.in("RHmin"), ex.in("h")));
        double depletion = ex.in("De_0");

        for (int day = 1; day <= 2; day++) {
            String at = day + ":";
            double wetting = ex.in(at + "I/fw");
            double morning = Math.max(0, depletion - wetting);
            // the example prints whole millimetres and counts on with tenths of its own
            ex.check(at + "De_start", morning, 0.6);
            ex.check(at + "DPe", Math.max(0, wetting - depletion));
            double exposed =
                    ex.check(at + "few", BareSoil.exposedWettedShare(1 - ex.in(at + "1-fc"), ex.in(at + "fw")));
            double reduction = ex.check(at + "Kr", soil.reduction(morning));
            double kc = ex.check(at + "Ke", BareSoil.evaporationKc(reduction, most, ex.in(at + "Kcb"), exposed));
            double evaporation = ex.check(at + "E", kc * ex.in(at + "ETo"));
            ex.check(at + "E/few", evaporation / exposed);
            depletion = ex.check(at + "De_end", soil.after(depletion, wetting, evaporation, exposed));
            double both = ex.check(at + "Kc", ex.in(at + "Kcb") + kc);
            // printed from the rounded 1.21; 5.4 comes out of unrounded figures on day 1
            ex.check(at + "ETc", both * ex.in(at + "ETo"), 0.07);
        }

        ex.done();
    }

    @ParameterizedTest
    @MethodSource("example36")
    void example_36_water_that_three_soils_hold_for_three_crops(String cropAndSoil) {
        Example ex = Example.of(BALANCE, cropAndSoil);

        ex.check("AW", Soil.totalAvailableMm(ex.in("theta_FC"), ex.in("theta_WP"), 1));
        double total = ex.check("TAW", Soil.totalAvailableMm(ex.in("theta_FC"), ex.in("theta_WP"), ex.in("Zr")));
        ex.check("RAW", new SoilWater.Day(0, 0, 5, total, ex.in("p")).freeMm());

        ex.done();
    }

    @Test
    void example_37_ten_days_without_water() {
        Example ex = Example.of(BALANCE, "Ex37");
        double total = ex.check("TAW", Soil.totalAvailableMm(ex.in("theta_FC"), ex.in("theta_WP"), ex.in("Zr")));
        double use = ex.check("ETc", ex.in("Kc") * ex.in("ETo"));
        SoilWater.Day dry = new SoilWater.Day(0, 0, use, total, ex.in("p"));
        ex.check("RAW", dry.freeMm());
        SoilWater soil = new SoilWater(ex.in("Dr_start"));

        for (int day = 1; day <= 10; day++) {
            String at = day + ":";
            ex.check(at + "Dr_start", soil.depletionMm());
            SoilWater.DayDone done = soil.after(dry);
            ex.check(at + "Ks", done.stress());
            ex.check(at + "ETc_adj", done.usedMm());
            ex.check(at + "Dr_end", done.after().depletionMm());
            soil = done.after();
        }

        ex.done();
    }

    @Test
    void example_38_ten_days_with_two_irrigations() {
        Example ex = Example.of(BALANCE, "Ex38");
        double perMetre = ex.check("TAW/Zr", Soil.totalAvailableMm(ex.in("theta_FC"), ex.in("theta_WP"), 1));
        ex.check("RAW/Zr", ex.in("p") * perMetre);
        Roots roots = new Roots(ex.in("Zr_1"), ex.in("Zr_10"));
        SoilWater soil = new SoilWater(ex.in("Dr_0"));

        for (int day = 1; day <= 10; day++) {
            String at = day + ":";
            double depth = roots.depthM(day - 1, 9);
            assertThat(depth).isCloseTo(ex.in(at + "Zr"), within(0.005 + 1e-9));
            double kc = ex.in(at + "Kcb") + ex.in(at + "Ke");
            ex.check(at + "Kc", kc);
            // rounded coefficients times ET0 are up to 0.06 mm off the printed use, which the paper has from unrounded
            // ones
            ex.check(at + "ETc", kc * ex.in(at + "ETo"), 0.07);
            // day 1 is given; later the soil is filled up on the morning after the freely taken water was used up
            double before = ex.in("p") * perMetre * roots.depthM(Math.max(0, day - 2), 9);
            double filled = soil.depletionMm() >= before ? soil.depletionMm() : 0;
            double irrigation = day == 1 ? ex.in("1:I") : ex.check(at + "I", filled);
            SoilWater.Day today =
                    new SoilWater.Day(ex.in(at + "P-RO"), irrigation, ex.in(at + "ETc"), perMetre * depth, ex.in("p"));
            ex.check(at + "RAW", today.freeMm());
            double morning = Math.max(0, soil.depletionMm() - today.rainMm() - today.wateringMm());
            // whole millimetres are printed and the paper counts on with unrounded ones: the 18.5 of day 4 is printed
            // as 18
            ex.check(at + "Dr_start", morning, 0.51);
            SoilWater.DayDone done = soil.after(today);
            ex.check(at + "Ks", done.stress());
            ex.check(at + "DP", done.drainedMm());
            ex.check(at + "Dr_end", done.after().depletionMm(), 0.51);
            soil = done.after();
        }

        ex.done();
    }

    @Test
    void the_free_share_is_adjusted_for_demand_and_texture() {
        Example ex = Example.of(BALANCE, "p-adjustment");

        assertThat(Soil.freeShareByDemand(0.4, ex.in("ETc_ref"))).isEqualTo(0.4);
        assertThat(Soil.freeShareByDemand(0.4, 3)).isCloseTo(0.4 + 2 * ex.in("a"), within(1e-12));
        assertThat(Soil.freeShareByDemand(0.1, 20)).isEqualTo(ex.in("p_min"));
        assertThat(Soil.freeShareByDemand(0.8, 0)).isEqualTo(ex.in("p_max"));
        assertThat(Soil.CLAY.freeShare(0.4, 5)).isCloseTo(0.38, within(1e-12));
        assertThat(Soil.SAND.freeShare(0.4, 5)).isCloseTo(0.42, within(1e-12));
        assertThat(Soil.LOAM.freeShare(0.4, 5)).isCloseTo(0.40, within(1e-12));
    }

    @Test
    void rain_below_a_fifth_of_the_demand_does_not_count() {
        Example ex = Example.of(BALANCE, "limits");

        assertThat(SoilWater.countingRainMm(0.9, 5)).isZero();
        assertThat(SoilWater.countingRainMm(ex.in("rain_min") * 5, 5)).isEqualTo(1);
    }

    @Test
    void soils_hold_what_table_19_prints() {
        assertThat(Printed.rows("water/soil_table19.csv")).hasSize(9).allSatisfy(row -> {
            Soil soil = Soil.named(row.get("texture")).orElseThrow();
            assertThat(soil.availableSpanMmPerM()[0] / 1000)
                    .isCloseTo(Double.parseDouble(row.get("available_low")), within(1e-9));
            assertThat(soil.availableSpanMmPerM()[1] / 1000)
                    .isCloseTo(Double.parseDouble(row.get("available_high")), within(1e-9));
            assertThat(soil.wiltingPoint())
                    .isBetween(
                            Double.parseDouble(row.get("theta_wp_low")), Double.parseDouble(row.get("theta_wp_high")));
            assertThat(soil.fieldCapacity())
                    .isBetween(
                            Double.parseDouble(row.get("theta_fc_low")), Double.parseDouble(row.get("theta_fc_high")));
        });
        assertThat(Soil.named("potting compost")).isEmpty();
    }

    @Test
    void every_example_of_both_files_is_walked() {
        assertThat(Example.names(KC))
                .allMatch(name -> List.of("Ex25", "Ex26", "Ex27", "Box15", "Ex28", "Ex30", "Fig36", "Ex32").stream()
                        .anyMatch(name::startsWith));
        assertThat(Example.names(BALANCE))
                .allMatch(name -> List.of("p-adjustment", "limits", "Ex36", "Ex37", "Ex38", "Ex31", "Ex35").stream()
                        .anyMatch(name::startsWith));
    }
}
