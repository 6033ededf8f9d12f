package bothy.almanac;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * Depth, spacing in the row and between rows: planting charts of extension services, society guides and Knott's Handbook for
 * Vegetable Growers, as each row says, some of them recalled. Sheets round inches to whole millimetres and centimetres, hence the
 * tolerance of half of one.
 */
class SpacingAndDepthTest {
    private static final double ROUNDING = 0.5;
    private static final double MM_IN_CM = 10;

    @Test
    void seed_sets_and_tubers_lie_as_deep_as_published() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            List<Map<String, String>> rows = Published.planting(sheet.crop(), "sow_depth").stream()
                    .filter(row -> !row.get("crop").equals("onion from seed"))
                    .toList();
            Published.span(rows, "value_low", "value_high")
                    .ifPresent(cm -> Published.within(
                            softly, sheet, "sowing.depthMm", sheet.sowing().depthMm(), millimetres(cm), ROUNDING));
        }
        softly.assertAll();
    }

    @Test
    void onion_seed_lies_as_shallow_as_published() {
        Sheet onion = Published.SHEETS.get("onion");
        List<Map<String, String>> rows = Published.planting("onion", "sow_depth").stream()
                .filter(row -> row.get("crop").equals("onion from seed"))
                .toList();
        Range cm = Published.span(rows, "value_low", "value_high").orElseThrow();

        SoftAssertions.assertSoftly(softly -> Published.within(
                softly, onion, "sowing.seedDepthMm", onion.sowing().seedDepthMm(), millimetres(cm), ROUNDING));
    }

    @Test
    void plants_stand_as_far_apart_as_published() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            Sheet.PlantingOut out = sheet.plantingOut();
            Published.span(Published.planting(sheet.crop(), "spacing_in_row"), "value_low", "value_high")
                    .ifPresent(cm ->
                            Published.within(softly, sheet, "plantingOut.spacingCm", out.spacingCm(), cm, ROUNDING));
            Published.span(Published.planting(sheet.crop(), "row_spacing"), "value_low", "value_high")
                    .ifPresent(cm -> Published.within(
                            softly, sheet, "plantingOut.rowSpacingCm", out.rowSpacingCm(), cm, ROUNDING));
        }
        softly.assertAll();
    }

    private static Range millimetres(Range cm) {
        return new Range(cm.low() * MM_IN_CM, cm.high() * MM_IN_CM);
    }
}
