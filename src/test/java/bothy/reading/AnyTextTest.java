package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Heard;
import bothy.garden.Situation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed, pasted or sat upon is read without a failure. */
class AnyTextTest {
    private static final String[] PIECES = {
        "sowed",
        "6",
        "tomatoes",
        "not",
        "yesterday",
        "the",
        "31",
        "April",
        "/",
        "-",
        "\"",
        "(",
        ")",
        "?",
        "!",
        ",",
        "and",
        "watered",
        "no",
        "undo",
        "3/4",
        "99/99",
        "2027-99-99",
        "½",
        "°",
        "C",
        "kg",
        "in",
        "bed",
        "2",
        "beans",
        "they",
        "up",
        "if",
        "will",
        "\n",
        "🍅",
        "😀",
        "0",
        "-5",
        "1e9",
        "999999999999999999",
        "week",
        "next",
        "last",
        "ago",
        "x",
        "by",
        "'s",
        "''",
        "what",
        "same for",
        "same",
        "for",
        "of",
        "{crop}",
        "..",
        "(a|b)",
        "@leaf"
    };

    private static Heard read(String text) {
        return Grown.READING.understood(
                text, new Situation(Grown.TODAY, Grown.GROWER, List.of(), null, List.of(), List.of()));
    }

    @Test
    void random_words_and_signs_never_fail() {
        long seed = 20270519;
        Random random = new Random(seed);
        for (int i = 0; i < 4000; i++) {
            StringBuilder text = new StringBuilder();
            for (int words = random.nextInt(14); words >= 0; words--) {
                text.append(PIECES[random.nextInt(PIECES.length)]).append(random.nextInt(5) == 0 ? "" : " ");
            }
            assertThat(read(text.toString())).as("seed " + seed + ": " + text).isNotNull();
        }
    }

    /** Growers' own words reach further into the phrases than those above. */
    @Test
    void growers_words_thrown_together_never_fail() throws IOException {
        String[] words = Files.readString(Path.of("src/test/resources/reading/tuned.yaml"))
                .lines()
                .filter(line -> line.contains("say: "))
                .map(line -> line.replaceFirst(".*say: \"((?:[^\"\\\\]|\\\\.)*)\".*", "$1"))
                .flatMap(said -> Stream.of(said.split(" ")))
                .toArray(String[]::new);
        long seed = 20270601;
        Random random = new Random(seed);
        for (int i = 0; i < 4000; i++) {
            StringBuilder text = new StringBuilder();
            for (int more = random.nextInt(14); more >= 0; more--) {
                String word = words[random.nextInt(words.length)];
                text.append(random.nextInt(12) == 0 && word.length() > 1 ? word.substring(1) : word)
                        .append(random.nextInt(15) == 0 ? "" : " ");
            }
            assertThat(read(text.toString())).as("seed " + seed + ": " + text).isNotNull();
        }
    }

    @Test
    void random_characters_never_fail_nor_become_entries() {
        long seed = 42;
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(60); length >= 0; length--) {
                text.append((char) random.nextInt(random.nextBoolean() ? 128 : 0x10000));
            }
            assertThat(read(text.toString()))
                    .as("seed " + seed + ", number " + i)
                    .isNotNull();
        }
    }

    @Test
    void random_talk_with_a_question_waiting_never_fails() {
        long seed = 7;
        Random random = new Random(seed);
        Grown grower = Grown.usual();
        for (int i = 0; i < 3000; i++) {
            StringBuilder text = new StringBuilder();
            for (int words = random.nextInt(8); words >= 0; words--) {
                text.append(PIECES[random.nextInt(PIECES.length)]).append(' ');
            }
            assertThat(grower.says(text.toString()))
                    .as("seed " + seed + ": " + text)
                    .isNotNull();
        }
    }

    @Test
    void a_hundred_kilobytes_are_read() {
        assertThat(read("sowed 6 tomatoes and 4 peppers, ".repeat(3300))).isNotNull();
        assertThat(read("(".repeat(100_000))).isNotNull();
        assertThat(read("no ".repeat(33_000))).isNotNull();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "\u0000\u0001\u0002",
                "😀😀😀",
                "<script>alert('sowed')</script>",
                "'; DROP TABLE diary; --",
                "\uD800",
                "........",
                "????",
                "ﬀ ﬁ İ ß",
                "sowed",
                "6",
                "???",
                "\"",
                "((((",
                "3/4",
                "°C",
                "null",
                "https://example.org/peas?x=1",
                "Je voudrais des tomates s'il vous plaît",
                "Ich habe gestern gegossen",
                "今天天气很好",
                "up by slowly, leaves a one floweringL as with the died grow"
            })
    void odd_messages_write_nothing_as_sure(String text) {
        assertThat(read(text).statements()).as(text).noneMatch(statement -> statement.sure());
    }

    @Test
    void a_tag_around_a_word_is_passed_over() {
        assertThat(read("<b>sowed</b> 6 <i>peas</i>").statements())
                .singleElement()
                .satisfies(statement -> assertThat(statement.event().count()).isEqualTo(6));
    }
}
