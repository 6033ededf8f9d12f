package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WordOddsTest {
    private static final List<WordOdds.Example> EXAMPLES = List.of(
            example("slugs", "slime", "holes", "night"),
            example("slugs", "slime", "stumps", "rain"),
            example("birds", "peck", "torn", "net"),
            example("birds", "splats", "ribs", "@brassica"),
            example("rust", "orange", "dust", "@onion"),
            example("rust", "orange", "pustules", "!slime"));

    private final WordOdds odds = new WordOdds(EXAMPLES);

    @Test
    void the_words_of_a_cause_speak_for_it() {
        assertThat(likeliest(Set.of("slime", "night"))).isEqualTo("slugs");
        assertThat(likeliest(Set.of("orange", "dust"))).isEqualTo("rust");
        assertThat(likeliest(Set.of("splats", "torn"))).isEqualTo("birds");
    }

    @Test
    void all_chances_come_to_one_and_none_is_negative() {
        Map<String, Double> chances = odds.chances(Set.of("slime", "ribs", "orange"));

        assertThat(chances.values().stream().mapToDouble(chance -> chance).sum())
                .isEqualTo(1, within(1e-5));
        assertThat(chances.values()).allSatisfy(chance -> assertThat(chance).isNotNegative());
    }

    @Test
    void of_unknown_words_each_cause_is_as_likely_as_the_other() {
        assertThat(odds.chances(Set.of("zebra")).values())
                .allSatisfy(chance -> assertThat(chance).isEqualTo(1 / 3.0, within(1e-6)));
    }

    @Test
    void more_words_of_a_cause_tell_more() {
        double one = odds.chances(Set.of("slime")).get("slugs");
        double three = odds.chances(Set.of("slime", "holes", "stumps")).get("slugs");

        assertThat(three).isGreaterThan(one);
    }

    @Test
    void a_crop_speaks_for_what_is_told_of_it() {
        assertThat(odds.chances(Set.of("torn", "@onion")).get("rust"))
                .isGreaterThan(odds.chances(Set.of("torn")).get("rust"));
    }

    @Test
    void a_word_that_is_denied_is_another_word() {
        assertThat(odds.chances(Set.of("!slime")).get("slugs"))
                .isLessThan(odds.chances(Set.of("slime")).get("slugs"));
    }

    @Test
    void what_is_learnt_is_the_same_every_time() {
        assertThat(new WordOdds(EXAMPLES).chances(Set.of("slime", "torn")))
                .isEqualTo(odds.chances(Set.of("slime", "torn")));
    }

    @Test
    void nothing_to_learn_from_gives_no_chances() {
        assertThat(new WordOdds(List.of()).chances(Set.of("slime"))).isEmpty();
    }

    private String likeliest(Set<String> told) {
        return odds.chances(told).entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    private static WordOdds.Example example(String cause, String... stems) {
        return new WordOdds.Example(cause, Set.of(stems));
    }
}
