package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Crop coefficients, stage lengths, root depths and free shares of the sheets: FAO Irrigation and Drainage Paper 56, tables 12, 11 and
 * 22. The source of each figure ends in the name of the table's row; where the table prints a span for Kc end the middle is taken.
 */
class WaterUseTest {
    @Test
    void every_crop_has_its_coefficients_as_table_12_prints_them() {
        for (Sheet sheet : Published.SHEETS.values()) {
            Map<String, String> row = rows("kc_table12.csv", sheet, "kcInitial").get(0);
            Sheet.WaterUse use = sheet.waterUse();

            assertThat(use.kcInitial()).as(sheet.crop()).isEqualTo(middle(row.get("kc_ini")));
            assertThat(use.kcMiddle()).as(sheet.crop()).isEqualTo(middle(row.get("kc_mid")));
            assertThat(use.kcEnd()).as(sheet.crop()).isEqualTo(middle(row.get("kc_end")));
        }
    }

    @Test
    void every_crop_has_stage_lengths_that_one_row_of_table_11_prints() {
        for (Sheet sheet : Published.SHEETS.values()) {
            Sheet.WaterUse use = sheet.waterUse();
            List<Double> lengths = List.of(use.initialDays(), use.developmentDays(), use.middleDays(), use.lateDays());

            assertThat(rows("stage_lengths_table11.csv", sheet, "initialDays"))
                    .as(sheet.crop())
                    .filteredOn(row -> row.get("l_ini_d").matches("\\d+")
                            && row.get("l_mid_d").matches("\\d+"))
                    .extracting(row -> List.of(
                            Double.valueOf(row.get("l_ini_d")),
                            Double.valueOf(row.get("l_dev_d")),
                            Double.valueOf(row.get("l_mid_d")),
                            Double.valueOf(row.get("l_late_d"))))
                    .contains(lengths);
        }
    }

    @Test
    void every_crop_roots_as_deep_and_drinks_as_freely_as_table_22_prints() {
        for (Sheet sheet : Published.SHEETS.values()) {
            Map<String, String> row =
                    rows("root_depth_p_table22.csv", sheet, "rootDepthM").get(0);
            Sheet.WaterUse use = sheet.waterUse();

            assertThat(use.rootDepthM())
                    .as(sheet.crop())
                    .isEqualTo(new Range(
                            Double.parseDouble(row.get("root_depth_low_m")),
                            Double.parseDouble(row.get("root_depth_high_m"))));
            assertThat(use.freeShare()).as(sheet.crop()).isEqualTo(Double.parseDouble(row.get("p_at_5_mm_d")));
        }
    }

    private static List<Map<String, String>> rows(String file, Sheet sheet, String figure) {
        String source = sheet.sources().get("waterUse." + figure).source();
        String crop = source.substring(source.indexOf(", ", source.indexOf("table")) + 2);
        List<Map<String, String>> rows = Printed.rows("water/" + file).stream()
                .filter(row -> row.get("crop").equals(crop))
                .toList();
        assertThat(rows).as("%s: %s in %s", sheet.crop(), crop, file).isNotEmpty();
        return rows;
    }

    private static double middle(String printed) {
        String[] ends = printed.split("-");
        double sum = 0;
        for (String end : ends) {
            sum += Double.parseDouble(end);
        }
        return Math.round(sum / ends.length * 1000) / 1000.0;
    }
}
