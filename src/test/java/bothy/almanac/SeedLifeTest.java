package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Years that seed keeps: Knott's Handbook for Vegetable Growers, as modified by Iowa State University Extension. A copy was read. */
class SeedLifeTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ':',
            value = {
                "winter-squash: squash",
                "pumpkin: pumpkin",
                "courgette: squash",
                "cucumber: cucumber",
                "tomato: tomato",
                "runner-bean: bean",
                "climbing-french-bean: bean",
                "french-bean: bean",
                "broad-bean: bean",
                "pea: pea",
                "lettuce: lettuce",
                "carrot: carrot",
                "onion: onion",
                "chard: chard, Swiss",
                "beetroot: beet",
                "leek: leek",
                "kale: kale",
                "cabbage: cabbage",
                "sweetcorn: corn, sweet",
                "chilli: pepper",
                "sweet-pepper: pepper",
                "radish: radish",
                "spinach: spinach",
                "parsnip: parsnip",
                "aubergine: eggplant",
                "mangetout: pea",
                "broccoli: broccoli",
                "cauliflower: cauliflower",
                "brussels-sprouts: Brussels sprouts",
                "turnip: turnip",
                "swede: rutabaga",
                "kohlrabi: kohlrabi",
                "pak-choi: Chinese cabbage",
                "celery: celery",
                "celeriac: celeriac",
                "melon: muskmelon",
                "parsley: parsley",
                "florence-fennel: fennel",
                "okra: okra",
                "watermelon: watermelon",
                "spring-onion: onion"
            })
    void seed_keeps_as_many_years_as_printed(String crop, String printedAs) {
        List<Map<String, String>> printed = Printed.rows("emergence/seed_life.csv").stream()
                .filter(row -> row.get("crop").equals(printedAs))
                .filter(row -> row.get("source").startsWith("Knott's Handbook"))
                .toList();

        assertThat(printed).hasSize(1);
        assertThat(Published.SHEETS.get(crop).germination().seedLifeYears())
                .isEqualTo(Double.parseDouble(printed.get(0).get("years")));
    }
}
