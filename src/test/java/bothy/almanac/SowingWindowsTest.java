package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * Weeks from the last frost, weeks indoors and days of hardening off: Purdue Extension HO-203, Colorado State University Extension
 * GardenNotes 720, Iowa State, Penn State and Cornell extension services and others, as each row says.
 */
class SowingWindowsTest {
    private static final double WHOLE_WEEKS = 0.01;

    @Test
    void seed_is_sown_outdoors_within_the_published_weeks() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            Range weeks = sheet.sowing().weeksFromLastFrostOutdoors();
            if (weeks != null) {
                outdoors(sheet.crop())
                        .ifPresent(published -> Published.within(
                                softly, sheet, "sowing.weeksFromLastFrostOutdoors", weeks, published, WHOLE_WEEKS));
            }
        }
        softly.assertAll();
    }

    @Test
    void tender_plants_go_out_no_earlier_than_published() {
        for (Sheet sheet : Published.SHEETS.values()) {
            if (sheet.growth().hardiness() == Sheet.Hardiness.TENDER) {
                Range published = Published.span(
                                Published.planting(sheet.crop(), "plant_out_weeks_vs_last_frost"),
                                "value_low",
                                "value_high")
                        .orElseThrow();

                assertThat(sheet.plantingOut().weeksFromLastFrost().low())
                        .as(sheet.crop())
                        .isGreaterThanOrEqualTo(published.low());
            }
        }
    }

    @Test
    void seedlings_are_as_old_at_planting_out_as_published() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            Range weeks = sheet.sowing().weeksToPlantingOut();
            if (weeks != null) {
                seedlingAge(sheet.crop())
                        .ifPresent(published -> Published.within(
                                softly, sheet, "sowing.weeksToPlantingOut", weeks, published, WHOLE_WEEKS));
            }
        }
        softly.assertAll();
    }

    @Test
    void plants_are_hardened_off_as_long_as_some_source_says() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            Range days = sheet.plantingOut().hardeningDays();
            if (days != null) {
                Published.span(Published.planting(sheet.crop(), "hardening_days"), "value_low", "value_high")
                        .ifPresent(published -> Published.within(
                                softly, sheet, "plantingOut.hardeningDays", days, published, WHOLE_WEEKS));
            }
        }
        softly.assertAll();
    }

    @Test
    void the_least_soil_temperature_is_the_published_one_or_names_common_practice() {
        for (Sheet sheet : Published.SHEETS.values()) {
            Source source = sheet.sources().get("plantingOut.minSoilTempC");
            if (source != null && !source.source().contains("common practice")) {
                Range published = Published.span(
                                Published.planting(
                                        sheet.crop(), "min_soil_temp_to_plant_out", "min_germination_soil_temp"),
                                "value_low",
                                "value_high")
                        .orElseThrow();

                assertThat(published.contains(sheet.plantingOut().minSoilTempC()))
                        .as("%s %s", sheet.crop(), published)
                        .isTrue();
            }
        }
    }

    private static Optional<Range> outdoors(String crop) {
        Optional<Range> classes = Published.span(
                Published.rows("frost_classes.csv", crop),
                "outdoor_weeks_from_last_frost_low",
                "outdoor_weeks_from_last_frost_high");
        Optional<Range> charts =
                Published.span(Published.planting(crop, "sow_outdoors_weeks_vs_last_frost"), "value_low", "value_high");
        return both(classes, charts);
    }

    private static Optional<Range> seedlingAge(String crop) {
        List<Map<String, String>> rows = Published.rows("frost_classes.csv", crop).stream()
                .filter(row -> row.get("kind").equals("weeks_indoors"))
                .toList();
        return both(
                Published.span(rows, "indoor_weeks_low", "indoor_weeks_high"),
                Published.span(Published.planting(crop, "seedling_weeks_to_plant_out"), "value_low", "value_high"));
    }

    private static Optional<Range> both(Optional<Range> one, Optional<Range> other) {
        return Stream.of(one, other)
                .flatMap(Optional::stream)
                .reduce((a, b) -> new Range(Math.min(a.low(), b.low()), Math.max(a.high(), b.high())));
    }
}
