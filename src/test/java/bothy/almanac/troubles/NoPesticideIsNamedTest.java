package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.almanac.Wording;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** No sentence about troubles names a pesticide: neither an active substance nor a home mix. Names from memory. */
class NoPesticideIsNamedTest {
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    private static final List<String> NEVER = List.of(
            "metaldehyde",
            "ferric phosphate",
            "iron phosphate",
            "pyreth",
            "permethrin",
            "deltamethrin",
            "cypermethrin",
            "spinosad",
            "neem",
            "azadirachtin",
            "rotenone",
            "malathion",
            "carbaryl",
            "acetamiprid",
            "imidacloprid",
            "thiacloprid",
            "copper",
            "bordeaux",
            "mancozeb",
            "chlorothalonil",
            "captan",
            "myclobutanil",
            "tebuconazole",
            "bacillus",
            "insecticidal soap",
            "washing-up",
            "dish soap",
            "detergent",
            "bleach",
            "vinegar",
            "baking soda",
            "bicarbonate",
            "nicotine",
            "tobacco",
            "garlic spray",
            "diatomaceous",
            "boric",
            "borax",
            "glyphosate",
            "fungicide",
            "insecticide");

    @Test
    void no_sentence_about_troubles_names_one() {
        assertThat(sentences()).hasSizeGreaterThan(400).allSatisfy(sentence -> assertThat(NEVER)
                .as(sentence)
                .noneMatch(sentence.toLowerCase(Locale.ROOT)::contains));
    }

    @Test
    void whatever_is_bought_is_used_by_its_label() {
        Wording wording = Wording.in(RULES);

        assertThat(wording.advice().get("caution-spraying").say())
                .contains("label")
                .contains("law")
                .contains("licensed");
    }

    private static List<String> sentences() {
        TroubleWording words = TroubleWording.in(RULES);
        List<String> sentences = new ArrayList<>(words.talk().values());
        words.causes()
                .values()
                .forEach(cause -> sentences.addAll(List.of(cause.first(), cause.not(), cause.prevent())));
        words.signs().values().forEach(sign -> sentences.add(sign.meanwhile()));
        words.questions().values().stream()
                .filter(asked -> asked.ask() != null)
                .forEach(asked -> sentences.add(asked.ask()));
        return sentences;
    }
}
