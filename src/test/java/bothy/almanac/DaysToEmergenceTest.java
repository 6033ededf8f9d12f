package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Days to emergence, each printed cell: Harrington and Minges 1954, as reprinted in Knott's Handbook for Vegetable Growers. A copy
 * was read; where a temperature has no days nothing came up or it was not tested.
 */
class DaysToEmergenceTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ':',
            value = {
                "cucumber: cucumber",
                "tomato: tomato",
                "pea: pea",
                "lettuce: lettuce",
                "carrot: carrot",
                "onion: onion",
                "climbing-french-bean: bean, snap",
                "french-bean: bean, snap",
                "beetroot: beet",
                "cabbage: cabbage",
                "kale: cabbage",
                "sweetcorn: corn, sweet",
                "chilli: pepper",
                "sweet-pepper: pepper",
                "radish: radish",
                "spinach: spinach",
                "parsnip: parsnip",
                "aubergine: eggplant",
                "mangetout: pea",
                "cauliflower: cauliflower",
                "brussels-sprouts: cabbage",
                "turnip: turnip",
                "kohlrabi: cabbage",
                "celery: celery",
                "celeriac: celery",
                "melon: muskmelon",
                "parsley: parsley",
                "okra: okra",
                "watermelon: watermelon",
                "spring-onion: onion"
            })
    void every_printed_cell_stands_in_the_sheet_and_no_other(String crop, String printedAs) {
        Sheet sheet = Published.SHEETS.get(crop);

        Map<Double, Double> printed = printed(printedAs, "Harrington & Minges");
        assertThat(printed).hasSizeGreaterThanOrEqualTo(3); // eggplant and muskmelon came up in three cells only
        assertThat(new TreeMap<>(sheet.germination().emergenceDays())).isEqualTo(printed);
        assertThat(sheet.sources().get("germination.emergenceDays").source()).startsWith("Harrington and Minges 1954");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ':',
            value = {
                "winter-squash: squash",
                "courgette: squash",
                "pumpkin: pumpkin",
                "chard: chard, Swiss",
                "broccoli: broccoli"
            })
    void a_row_that_is_not_in_the_paper_is_no_more_than_common_practice(String crop, String printedAs) {
        Sheet sheet = Published.SHEETS.get(crop);

        assertThat(new TreeMap<>(sheet.germination().emergenceDays()))
                .isEqualTo(printed(printedAs, "Table of the same layout whose origin is not stated"));
        assertThat(sheet.sources().get("germination.emergenceDays").source())
                .isEqualTo("common practice, after a table whose origin is not stated");
    }

    @ParameterizedTest
    @ValueSource(strings = {"runner-bean", "broad-bean", "leek", "garlic", "potato"})
    void a_crop_without_a_printed_row_has_no_table(String crop) {
        assertThat(Published.SHEETS.get(crop).germination().emergenceDays()).isNull();
    }

    private static Map<Double, Double> printed(String crop, String source) {
        Map<Double, Double> days = new TreeMap<>();
        Printed.rows("emergence/emergence_days.csv").stream()
                .filter(row -> row.get("crop").equals(crop))
                .filter(row -> row.get("source").startsWith(source))
                .filter(row -> row.get("status").equals("emerged"))
                .forEach(row -> days.put(Double.valueOf(row.get("soil_c")), Double.valueOf(row.get("days"))));
        return days;
    }
}
