package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes at harvest and minutes of blanching against published guides, each row with its source in the table. */
class PickingAndFreezingTest {
    /** Sizes are printed in quarters of an inch or whole centimetres. */
    private static final double HALF_A_STEP_CM = 0.5;

    static List<Map<String, String>> printed() {
        return Printed.rows("sheets/picking_and_freezing.csv");
    }

    @ParameterizedTest
    @MethodSource("printed")
    void the_sheet_meets_what_is_printed(Map<String, String> row) {
        Sheet sheet = Published.SHEETS.get(row.get("sheet"));
        boolean size = row.get("fact").equals("size");
        Range ours = size ? sheet.harvest().sizeCm() : sheet.storing().blanchMinutes();
        double low = Double.parseDouble(row.get("low"));
        double high = Double.parseDouble(row.get("high"));

        double tolerance = size ? HALF_A_STEP_CM : 0;
        assertThat(ours.low()).as("%s", row).isLessThanOrEqualTo(high + tolerance);
        assertThat(ours.high()).as("%s", row).isGreaterThanOrEqualTo(low - tolerance);
        if (!size) {
            // Too short a time keeps what spoils it alive: ours takes in all that is printed.
            assertThat(ours.high()).as("%s", row).isGreaterThanOrEqualTo(high);
        }
    }

    @Test
    void each_sheet_says_how_it_goes_into_the_freezer() {
        assertThat(Published.SHEETS.values()).allSatisfy(sheet -> {
            assertThat(sheet.storing().freezing()).as(sheet.crop()).isNotNull();
            assertThat(sheet.storing().blanchMinutes() != null)
                    .as(sheet.crop())
                    .isEqualTo(sheet.storing().freezing().equals("blanched"));
        });
    }

    @Test
    void a_size_says_what_is_measured() {
        assertThat(Published.SHEETS.values())
                .allSatisfy(sheet -> assertThat(sheet.harvest().sizeOf() == null)
                        .as(sheet.crop())
                        .isEqualTo(sheet.harvest().sizeCm() == null));
    }
}
