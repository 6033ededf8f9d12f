package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Yields against the planting charts of Kansas State University (MF315) and the University of Maine, and against table 15 of the New England
 * Vegetable Management Guide, each row with its source in the table.
 */
class YieldTest {
    private static final double KG_PER_M2_FOR_POUND_PER_ACRE = 0.45359237 / 4046.8564;

    static List<Map<String, String>> printed() {
        return Printed.rows("sheets/yields.csv");
    }

    @ParameterizedTest
    @MethodSource("printed")
    void the_sheet_spans_what_is_printed(Map<String, String> row) {
        Sheet.Harvest harvest = Published.SHEETS.get(row.get("sheet")).harvest();
        boolean each = row.get("unit").equals("kg/plant");
        Range yield = each ? harvest.kgPerPlant() : harvest.kgPerMetre();
        double toKgPerMetre = row.get("unit").equals("lb/acre") ? KG_PER_M2_FOR_POUND_PER_ACRE * rowsM(row) : 1;
        double low = Double.parseDouble(row.get("low")) * toKgPerMetre;
        double high = Double.parseDouble(row.get("high")) * toKgPerMetre;

        // half of the last digit kept
        assertThat(yield.low()).as("%s", row).isLessThanOrEqualTo(low + 0.005);
        assertThat(yield.high()).as("%s", row).isGreaterThanOrEqualTo(high - 0.005);
    }

    private static double rowsM(Map<String, String> row) {
        return Double.parseDouble(row.get("printed").replaceAll("\\D", "")) / 100;
    }

    @Test
    void an_ear_of_corn_weighs_what_a_bag_of_five_dozen_does() {
        // MF315: 10 dozen to 100 feet; Maine: 24 to 10 feet; New England guide: 5 dozen in a bag of 50 lb
        double earKg = 50 * 0.45359237 / 60;
        Range yield = Published.SHEETS.get("sweetcorn").harvest().kgPerMetre();

        assertThat(yield.low()).isCloseTo(120 / 30.48 * earKg, within(0.005));
        assertThat(yield.high()).isCloseTo(24 / 3.048 * earKg, within(0.005));
    }

    @Test
    void every_sheet_has_a_yield() {
        assertThat(Published.SHEETS.values()).allSatisfy(sheet -> assertThat(
                        sheet.harvest().kgPerMetre() != null || sheet.harvest().kgPerPlant() != null)
                .as(sheet.crop())
                .isTrue());
    }
}
