package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Planting;
import bothy.garden.Planting.Start;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The exchange vocabulary: plantings told in plain English, and what was heard as an object of plain words. */
class PlainEnglishPlantingsTest {

    private static Planting planting(String line) {
        return new PlantingLines(Grown.READING)
                .read(List.of(line), Grown.TODAY, Grown.GROWER)
                .get(0);
    }

    @Test
    void a_line_tells_count_day_container_and_place() {
        Planting planting = planting("6 tomatoes sown 2027-03-10, in pots, windowsill");

        assertThat(planting)
                .isEqualTo(new Planting(
                        "tomato-1",
                        "tomato",
                        null,
                        "windowsill",
                        "pots",
                        Start.SEED,
                        LocalDate.of(2027, 3, 10),
                        6,
                        6,
                        null));
    }

    @Test
    void varieties_sets_cloves_and_bought_plants_are_told_apart() {
        assertThat(planting("4 Crown Prince squash sown 2027-04-20").variety()).isEqualTo("Crown Prince");
        assertThat(planting("80 onion sets planted 2027-03-28, bed 3").start()).isEqualTo(Start.SET);
        assertThat(planting("80 onion sets planted 2027-03-28, bed 3").place()).isEqualTo("bed 3");
        assertThat(planting("40 garlic cloves planted 2026-10-12").start()).isEqualTo(Start.CLOVE);
        assertThat(planting("3 pepper plants bought 2027-05-01, greenhouse").start())
                .isEqualTo(Start.PLANT);
    }

    @Test
    void plantings_of_one_crop_are_numbered_and_a_line_without_a_crop_is_none() {
        List<Planting> plantings = new PlantingLines(Grown.READING)
                .read(List.of("6 cherry tomatoes", "8 plum tomatoes", "something in a pot"), Grown.TODAY, Grown.GROWER);

        assertThat(plantings).extracting(Planting::id).containsExactly("tomato-1", "tomato-2");
        assertThat(plantings).extracting(Planting::variety).containsExactly("cherry", "plum");
    }

    @Test
    void what_was_heard_is_told_in_the_words_of_the_vocabulary() {
        Map<String, Object> object = new Vocabulary(Grown.READING)
                .object(
                        7,
                        Grown.usual()
                                .says(
                                        "planted out 4 squash yesterday, bottom leaves are yellow. when do I feed them?"));

        assertThat(object.get("id")).isEqualTo(7);
        assertThat(object.get("entries").toString())
                .isEqualTo(
                        "[{what=planted-out, crop=winter-squash, date=2027-05-18, count=4, amount=null, unit=null, sure=true}]");
        assertThat(object.get("questions")).isEqualTo(List.of("feed-when"));
        assertThat(object.get("signs")).isEqualTo(List.of("yellow-leaves-lower", "yellow-leaves"));
        assertThat(object.get("corrects")).isEqualTo(false);
        assertThat(object.get("asks_back")).isEqualTo(false);
        assertThat(object.get("kind")).isEqualTo("mixed");
    }
}
