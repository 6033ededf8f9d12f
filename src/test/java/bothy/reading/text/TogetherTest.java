package bothy.reading.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TogetherTest {
    private static final Map<String, List<String>> GROUPS = Map.of("stem", List.of("stem", "stems", "vine"));

    private static boolean in(String pattern, String text) {
        List<Token> tokens = Scanner.scan(text);
        return new Together(pattern, GROUPS).in(tokens, 0, tokens.size(), Together.IN_A_SENTENCE) != null;
    }

    @Test
    void words_may_stand_in_any_order_with_others_between() {
        assertThat(in("@stem & split~", "the stems near the ground have split")).isTrue();
        assertThat(in("@stem & split~", "splitting all along the vine")).isTrue();
        assertThat(in("@stem & split~", "the tomatoes have split")).isFalse();
    }

    @Test
    void words_too_far_apart_do_not_belong_together() {
        assertThat(in("@stem & split~", "stem " + "and ".repeat(Together.IN_A_SENTENCE) + "split"))
                .isFalse();
    }

    @Test
    void a_word_that_must_not_be_there_undoes_it() {
        assertThat(in("@stem & split~ & !fruit", "stems fine but the fruit split"))
                .isFalse();
    }

    @Test
    void joined_words_follow_each_other() {
        assertThat(in("soil_level & cut", "cut at soil level")).isTrue();
        assertThat(in("soil_level & cut", "cut at the level of the soil")).isFalse();
    }

    @Test
    void a_pattern_of_one_part_or_of_an_unknown_group_is_refused() {
        assertThatThrownBy(() -> new Together("stem & !fruit", GROUPS)).hasMessageContaining("two parts");
        assertThatThrownBy(() -> new Together("@leaf & split", GROUPS)).hasMessageContaining("no group \"leaf\"");
    }
}
