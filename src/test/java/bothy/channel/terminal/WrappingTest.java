package bothy.channel.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrappingTest {
    @Test
    void lines_break_between_words() {
        assertThat(Wrapping.at(20, "Keep the compost just moist, never sodden."))
                .isEqualTo("Keep the compost\njust moist, never\nsodden.");
    }

    @Test
    void paragraphs_stay_apart_and_short_lines_stay_as_they_are() {
        assertThat(Wrapping.at(40, "Noted.\n\nNext look: Wed 26 May.")).isEqualTo("Noted.\n\nNext look: Wed 26 May.");
    }

    @Test
    void a_word_longer_than_the_line_is_left_whole() {
        assertThat(Wrapping.at(20, "a " + "x".repeat(30) + " b")).isEqualTo("a\n" + "x".repeat(30) + "\nb");
    }

    @Test
    void an_unknown_width_changes_nothing() {
        assertThat(Wrapping.at(0, "a b c")).isEqualTo("a b c");
    }
}
