package bothy.replying;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No fixed text tells a grower figures in the units of another. */
class FixedFiguresTest {
    private static final Path WORDING = Path.of("rules/wording");

    private static final Pattern UNIT = Pattern.compile(
            "(?<!\\{)(?<![\\d–{.])\\d[\\d.–]*(?: to \\d+)?[ -]?"
                    + "(cm|mm|m|km|°C|°F|C|F|kg|g|ml|L|litres?|inch|inches|feet|foot|ft|yards?|lb|lbs|oz|fl oz|pounds?|gal|gallons?|pints?|quarts?)\\b");
    private static final Pattern NAMED =
            Pattern.compile("\\b(?:centi|milli|kilo)?(?:metres?|grams?)\\b|\\b(?:two|three|five|ten) degrees\\b");

    /** What may stand in fixed text, by a part of its line, and why. */
    private static final Map<String, String> ALLOWED = Map.of(
            "Tell me like “how much compost for 24 9 cm pots”",
            "examples of what may be typed; reading takes inches and gallons as well",
            "cap-holds:",
            "it asks for ml, which stand on caps, and tells of the metric spoon that they are counted with",
            "  help:",
            "examples of what may be typed",
            "  metric: \"°C, centimetres and kilograms\"",
            "the name of the metric units themselves");

    @Test
    void figures_in_fixed_text_stand_in_braces_with_their_unit() throws IOException {
        List<String> fixed = new ArrayList<>();
        try (Stream<Path> files = Files.list(WORDING)) {
            for (Path file : files.sorted().toList()) {
                for (String line : Files.readAllLines(file)) {
                    boolean told =
                            UNIT.matcher(line).find() || NAMED.matcher(line).find();
                    if (told
                            && !line.strip().startsWith("#")
                            && ALLOWED.keySet().stream().noneMatch(line::contains)) {
                        fixed.add(file.getFileName() + ": " + line.strip());
                    }
                }
            }
        }

        assertThat(fixed).isEmpty();
    }

    @Test
    void what_is_found_is_a_figure_with_a_unit() {
        assertThat(Stream.of("Push a finger 5 cm in", "18 to 21 °C", "some 3-litre pots", "an inch or 2 inches"))
                .allMatch(text -> UNIT.matcher(text).find());
        assertThat(Stream.of("Push a finger {5 cm} in", "at {18–21 °C}", "12 to 14 hours", "{feedMl} ml"))
                .noneMatch(text -> UNIT.matcher(text).find());
    }

    @Test
    void a_grower_reads_them_in_their_own_units() {
        FixedFigures us = new FixedFigures(Units.US);
        FixedFigures metric = new FixedFigures(Units.METRIC);

        assertThat(metric.in("{5–8 cm}, {18–21 °C}, {1 m}")).isEqualTo("5–8 cm, 18–21 °C, 1 m");
        assertThat(us.in("{5–8 cm}")).isEqualTo("2–3 inches");
        assertThat(us.in("{2–3 cm}")).isEqualTo("1 inch");
        assertThat(us.in("{20 cm}")).isEqualTo("8 inches");
        assertThat(us.in("{2 m}")).isEqualTo("7 feet");
        assertThat(us.in("{18–21 °C}")).isEqualTo("64–70 °F");
        assertThat(us.in("{10 °C}")).isEqualTo("50 °F");
        assertThat(us.in("{2–3 degrees}")).isEqualTo("4–5 degrees");
        assertThat(us.in("{5 ml}")).isEqualTo("1 teaspoon");
        assertThat(us.in("[{crops}] {name}")).isEqualTo("[{crops}] {name}");
    }
}
