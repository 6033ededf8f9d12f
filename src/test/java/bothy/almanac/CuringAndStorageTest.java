package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * Conditions and days of curing, conditions and life in store: USDA Agriculture Handbook 66, UC Davis, New England Vegetable
 * Management Guide and extension services, as each row says. Sources disagree; a sheet stays between the lowest and highest of
 * them. Tolerance 0.05 °C, for figures printed in °F.
 */
class CuringAndStorageTest {
    private static final double ROUNDING = 0.05;

    @Test
    void a_crop_is_cured_as_published() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            Sheet.Curing curing = sheet.curing();
            if (curing != null) {
                check(softly, sheet, "curing", "curing.tempC", curing.tempC(), "temp_c_low", "temp_c_high");
                check(
                        softly,
                        sheet,
                        "curing",
                        "curing.humidityPercent",
                        curing.humidityPercent(),
                        "rh_low_pct",
                        "rh_high_pct");
                check(softly, sheet, "curing", "curing.days", curing.days(), "days_low", "days_high");
            }
        }
        softly.assertAll();
    }

    @Test
    void a_crop_is_stored_as_published() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            Sheet.Storing store = sheet.storing();
            check(softly, sheet, "storage", "storing.tempC", store.tempC(), "temp_c_low", "temp_c_high");
            check(
                    softly,
                    sheet,
                    "storage",
                    "storing.humidityPercent",
                    store.humidityPercent(),
                    "rh_low_pct",
                    "rh_high_pct");
            check(softly, sheet, "storage", "storing.lifeDays", store.lifeDays(), "days_low", "days_high");
        }
        softly.assertAll();
    }

    @Test
    void a_crop_that_is_cured_anywhere_is_cured_here() {
        List<String> cured = Printed.rows("sheets/curing_storage.csv").stream()
                .filter(row -> row.get("stage").equals("curing"))
                .map(row -> row.get("sheet"))
                .distinct()
                .toList();

        assertThat(cured).containsExactlyInAnyOrder("winter-squash", "pumpkin", "onion", "potato", "sweet-potato");
        cured.forEach(
                crop -> assertThat(Published.SHEETS.get(crop).curing()).as(crop).isNotNull());
    }

    private static void check(
            SoftAssertions softly, Sheet sheet, String stage, String path, Range figure, String low, String high) {
        List<Map<String, String>> rows = Published.rows("curing_storage.csv", sheet.crop()).stream()
                .filter(row -> row.get("stage").equals(stage))
                .toList();
        if (figure != null) {
            Published.span(rows, low, high)
                    .ifPresent(published -> Published.within(softly, sheet, path, figure, published, ROUNDING));
        }
    }
}
