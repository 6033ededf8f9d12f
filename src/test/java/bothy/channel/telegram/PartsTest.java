package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Long replies cut into messages of at most 4,000 characters. */
class PartsTest {
    @Test
    void a_short_text_is_one_part() {
        assertThat(Parts.of(" Water in the evening.\n\nLook again on 4 May. "))
                .containsExactly("Water in the evening.\n\nLook again on 4 May.");
    }

    @Test
    void a_text_of_just_the_longest_length_is_one_part_and_one_more_makes_two() {
        assertThat(Parts.of("x".repeat(4000))).hasSize(1);
        assertThat(Parts.of("x".repeat(4001))).extracting(String::length).containsExactly(4000, 1);
    }

    @Test
    void the_cut_is_between_paragraphs_before_lines_before_sentences_before_words() {
        String words = "word ".repeat(700).strip();

        assertThat(Parts.of(words + "\n\n" + words)).containsExactly(words, words);
        assertThat(Parts.of(words + "\n" + words)).containsExactly(words, words);
        assertThat(Parts.of(words + ". " + words)).containsExactly(words + ".", words);
        assertThat(Parts.of(words + " " + words)).allMatch(part -> part.matches("(word ?)+"));
    }

    @Test
    void a_heading_is_not_cut_off_from_a_paragraph_that_is_too_long_anyway() {
        String text = "This week\n\n" + "word ".repeat(1200).strip();

        assertThat(Parts.of(text).get(0)).startsWith("This week\n\nword");
        assertThat(Parts.of(text)).hasSize(2);
    }

    @Test
    void an_emoji_is_not_cut_in_two() {
        List<String> parts = Parts.of("x".repeat(3999) + "🌱".repeat(10));

        assertThat(parts).containsExactly("x".repeat(3999), "🌱".repeat(10));
    }

    @Test
    void nothing_is_lost_of_a_hundred_thousand_letters() {
        String text = "🍅ab".repeat(25_000);

        List<String> parts = Parts.of(text);

        assertThat(String.join("", parts)).isEqualTo(text);
        assertThat(parts).allMatch(part -> part.length() <= Parts.LONGEST);
    }
}
