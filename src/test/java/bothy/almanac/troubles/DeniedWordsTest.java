package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DeniedWordsTest {
    private static final Set<String> LITTLE = Set.of("a", "in", "the", "of");

    @Test
    void what_is_denied_is_marked_and_nothing_behind_it() {
        assertThat(denied("no slime on them")).containsExactly("no", "!slime", "on", "them");
        assertThat(denied("they never wilted today")).containsExactly("they", "never", "!wilted", "today");
    }

    @Test
    void little_words_may_stand_between() {
        assertThat(denied("not a stone in the soil")).containsExactly("not", "a", "!stone", "in", "the", "soil");
    }

    @Test
    void a_denied_word_loses_its_ending_and_keeps_its_mark() {
        assertThat(Stems.stem("!holes")).isEqualTo("!" + Stems.stem("holes"));
    }

    private static List<String> denied(String text) {
        return Stems.denied(Stems.words(text), LITTLE);
    }
}
