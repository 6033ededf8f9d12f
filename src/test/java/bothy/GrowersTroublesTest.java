package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/**
 * Growers' own descriptions with the verdicts of experts, round by round. First run of each round, accepted cause first and among the
 * first three, in per cent: 38 and 48, 39 and 50, 61 and 69, 53 and 58 (rounds 1 to 4, all before anything was mended), 47 and 56
 * (round 5, after mending for those), 33 and 61 (round 6, told on purpose in unusual words, after causes had portraits), 89 and 94
 * (round 7, told as most ask, after plainer words), 63 and 80 (round 8, as round 7), 23 and 31 (round 9) and 31 and 43 (round 10; both
 * from questions to garden columns, a third of them about what the books did not hold at all), 70 and 85 (round 11), 66 and 84 (round
 * 12; 76 and 94 once causes had more tellings, written without sight of it, and words weighed more), 92 and 97
 * (rounds 13 and 14), 61 and 80 (round 15, in voices of many countries), 66 and 92, 70 and 78, 78 and 90 (round 16, in three batches, each
 * told before anything was mended for it; everyday tellings came between the second and the third), 52 and 72 (round 17, hard on
 * purpose; 72 and 83 once words were weighed by a regression over the tellings, before any telling was added), 80 and 93 (round 18, what
 * is asked most, first run with it; 70 and 88 without), 90 and 93 (round 19, as round 18, after re-reading
 * and nothing else), 86 and 96 (round 20, as round 18). The floors are what the tables come to now, a
 * little rounded down: they are figures after mending, and say less of what is to come than the first runs.
 */
class GrowersTroublesTest {
    private static final int ROUNDS = 20;
    private static final Pattern PRODUCTS = Pattern.compile(
            "chlorothalonil|mancozeb|copper|neem|pyrethr|malathion|carbaryl|spinosad|glyphosate|metaldehyde|bordeaux",
            Pattern.CASE_INSENSITIVE);
    private static final Map<Integer, List<Told>> ROUND = new LinkedHashMap<>();

    private record Told(String text, List<String> accepted, List<String> signs, List<String> causes, String reply) {
        int rank() {
            for (int i = 0; i < causes.size(); i++) {
                if (accepted.contains(causes.get(i))) {
                    return i + 1;
                }
            }
            return Integer.MAX_VALUE;
        }
    }

    @BeforeAll
    static void diagnoses() throws IOException {
        JsonMapper json = JsonMapper.builder().build();
        for (int round = 1; round <= ROUNDS; round++) {
            JsonNode cases = new YAMLMapper()
                    .readTree(Path.of("src/test/resources/troubles/growers-" + round + ".yaml")
                            .toFile());
            StringBuilder lines = new StringBuilder();
            for (JsonNode one : cases) {
                lines.append(json.writeValueAsString(Map.of(
                                "text", one.get("text").asText(),
                                "today", one.get("today").asText(),
                                "plantings",
                                        json.convertValue(one.path("plantings"), Object.class) == null
                                                ? List.of()
                                                : one.path("plantings"))))
                        .append('\n');
            }
            String[] answers = diagnosed(lines.toString()).split("\n");
            List<Told> told = new ArrayList<>();
            for (int i = 0; i < answers.length; i++) {
                JsonNode answer = json.readTree(answers[i]);
                told.add(new Told(
                        cases.get(i).get("text").asText(),
                        texts(cases.get(i).get("accepted")),
                        texts(answer.get("signs")),
                        answer.get("causes").findValuesAsText("cause"),
                        answer.get("reply").asText()));
            }
            ROUND.put(round, told);
        }
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts;
    }

    static String diagnosed(String lines) {
        InputStream in = System.in;
        PrintStream out = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try {
            System.setIn(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            assertThat(new CommandLine(new DiagnoseVerb()).execute("--rules", "rules"))
                    .isZero();
        } finally {
            System.setIn(in);
            System.setOut(out);
        }
        return printed.toString(StandardCharsets.UTF_8);
    }

    private static double share(List<Told> told, int within) {
        return 100.0 * told.stream().filter(one -> one.rank() <= within).count() / told.size();
    }

    @ParameterizedTest
    @CsvSource({
        "1, 92, 97",
        "2, 94, 97",
        "3, 92, 97",
        "4, 94, 97",
        "5, 83, 91",
        "6, 94, 97",
        "7, 97, 97",
        "8, 96, 98",
        "9, 74, 88",
        "10, 82, 94",
        "11, 95, 95",
        "12, 98, 98",
        "13, 93, 98",
        "14, 95, 98",
        "15, 87, 90",
        "16, 86, 94",
        "17, 81, 89",
        "18, 85, 98",
        "19, 94, 98",
        "20, 87, 98"
    })
    void the_accepted_cause_comes_first_or_among_the_first_three(int round, double first, double three) {
        List<Told> told = ROUND.get(round);
        System.out.printf(
                Locale.ROOT,
                "Growers' troubles, round %d: %d told, accepted cause first %.0f %%, in three %.0f %%%n",
                round,
                told.size(),
                share(told, 1),
                share(told, 3));

        assertThat(share(told, 1)).isGreaterThanOrEqualTo(first);
        assertThat(share(told, 3)).isGreaterThanOrEqualTo(three);
    }

    @Test
    void over_all_rounds_the_figures_are_above_the_aim() {
        List<Told> all = ROUND.values().stream().flatMap(List::stream).toList();

        assertThat(share(all, 1)).isGreaterThanOrEqualTo(90);
        assertThat(share(all, 3)).isGreaterThanOrEqualTo(96);
    }

    @Test
    void few_descriptions_are_left_without_a_cause() {
        List<Told> all = ROUND.values().stream().flatMap(List::stream).toList();
        List<String> without = all.stream()
                .filter(one -> one.causes().isEmpty())
                .map(Told::text)
                .toList();

        assertThat(without.size() * 100.0 / all.size())
                .as("left without a cause: %s", without)
                .isLessThanOrEqualTo(2.5);
    }

    @Test
    void no_reply_names_a_product_and_what_must_not_be_eaten_is_said() {
        for (Told told : ROUND.values().stream().flatMap(List::stream).toList()) {
            assertThat(told.reply()).doesNotContainPattern(PRODUCTS);
            if (told.signs().contains("green-tubers")) {
                assertThat(told.reply()).as(told.text()).contains("do not eat green");
            }
            if (told.signs().contains("rot-in-storage") || told.signs().contains("fruit-rot")) {
                assertThat(told.reply()).as(told.text()).contains("not for eating");
            }
        }
    }
}
