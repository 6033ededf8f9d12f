package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Least, best and most soil temperature for germination: Harrington, Oregon State University Extension, table 1, printed in °F. A
 * copy was read. The tolerance is half of the last digit of the Celsius figures.
 */
class GerminationTemperaturesTest {
    private static final List<Map<String, String>> TABLE = Printed.rows("sheets/germination_temps.csv");

    @Test
    void every_row_of_the_table_stands_in_its_sheet() {
        assertThat(TABLE).hasSize(32);
        for (Map<String, String> row : TABLE) {
            Sheet.Germination seed = Published.SHEETS.get(row.get("sheet")).germination();

            assertThat(seed.minSoilTempC()).as("%s", row).isCloseTo(celsius(row, "min_c"), within(0.05));
            assertThat(seed.optimumSoilTempC().low()).as("%s", row).isCloseTo(celsius(row, "opt_low_c"), within(0.05));
            assertThat(seed.optimumSoilTempC().high())
                    .as("%s", row)
                    .isCloseTo(celsius(row, "opt_high_c"), within(0.05));
            assertThat(seed.maxSoilTempC()).as("%s", row).isCloseTo(celsius(row, "max_c"), within(0.05));
        }
    }

    @Test
    void a_sheet_names_the_table_just_where_the_table_has_a_row() {
        Set<String> inTable = TABLE.stream().map(row -> row.get("sheet")).collect(Collectors.toSet());

        for (Sheet sheet : Published.SHEETS.values()) {
            Source source = sheet.sources().get("germination.minSoilTempC");
            boolean named = source != null && source.source().startsWith("Harrington, Oregon State");
            assertThat(named).as(sheet.crop()).isEqualTo(inTable.contains(sheet.crop()));
        }
    }

    private static double celsius(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
