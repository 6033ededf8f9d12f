package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Legal least germination of seed on sale, %: United States, 7 CFR 201.31 (1994). A copy was read. */
class LegalGerminationTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ':',
            value = {
                "winter-squash: squash",
                "pumpkin: pumpkin",
                "courgette: squash",
                "cucumber: cucumber",
                "tomato: tomato",
                "runner-bean: bean, runner",
                "climbing-french-bean: bean, snap",
                "french-bean: bean, snap",
                "broad-bean: broad bean",
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
                "pak-choi: pak-choi",
                "celery: celery",
                "celeriac: celeriac",
                "melon: muskmelon",
                "parsley: parsley",
                "okra: okra",
                "watermelon: watermelon",
                "spring-onion: onion"
            })
    void seed_on_sale_must_germinate_as_the_law_says(String crop, String printedAs) {
        List<Map<String, String>> printed = Printed.rows("emergence/seed_life.csv").stream()
                .filter(row -> row.get("crop").equals(printedAs))
                .filter(row -> row.get("source").contains("7 CFR 201.31"))
                .toList();

        assertThat(printed).hasSize(1);
        assertThat(Published.SHEETS.get(crop).germination().minGerminationPercent())
                .isEqualTo(Double.parseDouble(printed.get(0).get("min_germination_pct_us")));
    }
}
