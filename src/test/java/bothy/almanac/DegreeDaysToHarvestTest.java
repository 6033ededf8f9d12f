package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import bothy.agronomy.climate.RipeningWarmth;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bases of degree days: Knott's Handbook (from memory) for most crops, Oregon State University's Croptime for sweet corn; degree days to
 * harvest: Croptime (sweet corn) and the University of Delaware (peas), each row with its source in the table.
 */
class DegreeDaysToHarvestTest {

    static List<Map<String, String>> bases() {
        return Printed.rows("degree-days/bases.csv");
    }

    static List<Map<String, String>> sums() {
        return bases().stream()
                .filter(row -> !row.get("degree_days_f").isBlank())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("bases")
    void the_sheet_has_the_printed_base(Map<String, String> row) {
        assertThat(Published.SHEETS.get(row.get("sheet")).harvest().degreeDayBaseC())
                .as("%s", row)
                .isEqualTo(Double.valueOf(row.get("base_c")));
    }

    @ParameterizedTest
    @MethodSource("sums")
    void days_turned_into_degree_days_meet_the_printed_ones_within_a_tenth(Map<String, String> row) {
        Sheet sheet = Published.SHEETS.get(row.get("sheet"));
        Range days = sheet.harvest().daysFromSowing();
        double ofThatKind = row.get("printed_crop").contains("earliest") ? days.low() : days.middle();

        double reckoned = RipeningWarmth.needed(
                ofThatKind, sheet.harvest().degreeDayBaseC(), sheet.growth().hardiness() == Sheet.Hardiness.TENDER);

        // a tenth: the printed sum is that of one kind, the sheet's days are those of many
        assertThat(reckoned / (Double.parseDouble(row.get("degree_days_f")) * 5 / 9))
                .as("%s", row)
                .isBetween(0.9, 1.1);
    }

    @Test
    void sweet_corn_has_the_printed_sum() {
        assertThat(Published.SHEETS.get("sweetcorn").harvest().degreeDays()).isCloseTo(1539 * 5 / 9.0, within(0.5));
    }

    @Test
    void every_sheet_that_is_not_set_in_autumn_has_a_base() {
        assertThat(Published.SHEETS.values())
                .filteredOn(sheet -> sheet.growth().start() != Sheet.Start.CLOVE)
                .allSatisfy(sheet -> assertThat(sheet.harvest().degreeDayBaseC())
                        .as(sheet.crop())
                        .isBetween(0.0, 16.0));
    }
}
