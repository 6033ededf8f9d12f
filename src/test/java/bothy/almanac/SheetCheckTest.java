package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the thorough check says of a sound sheet of a marrow into which one mistake is put. */
class SheetCheckTest {
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    private static final String SOUND = read(Path.of("src/test/resources/sheets/marrow.yaml"));

    @Test
    void nothing_is_wrong_in_the_sheets_that_are_shipped() {
        assertThat(SheetCheck.check(RULES)).isEmpty();
    }

    @Test
    void nothing_is_wrong_in_the_sound_marrow() {
        assertThat(check(SOUND)).isEmpty();
    }

    static Stream<Arguments> mistakes() {
        return Stream.of(
                change(
                        "an unknown key",
                        "  onEdge:",
                        "  onedge:",
                        "17: sowing has no onEdge, which it needs. Add it with its source.",
                        "20: \"onedge\" is not known here; allowed are againEveryDays, depthMm, multisown, onEdge, seedDepthMm, seedsPerCell, "
                                + "weeksBeforeLastFrostIndoors, weeksFromFirstFrostAutumn, weeksFromLastFrostOutdoors, "
                                + "weeksToPlantingOut, where. Correct or remove it."),
                change(
                        "an unknown group",
                        "curing:",
                        "drying:",
                        "49: \"drying\" is not known here; allowed are botanical, crop, curing, family, feeding, flowering, "
                                + "germination, growth, harvest, plantingOut, sowing, storing, waterUse, watering. "
                                + "Correct or remove it."),
                change(
                        "no source",
                        "value: 25, source: common practice,",
                        "value: 25,",
                        "32: mmPerWeek has no source; every figure is written with source (who says so) and read "
                                + "(copy or memory). Add it."),
                change(
                        "no read",
                        "{value: 25, source: common practice, read: memory}",
                        "{value: 25, source: common practice}",
                        "32: mmPerWeek has no read; every figure is written with source (who says so) and read "
                                + "(copy or memory). Add it."),
                change(
                        "another way of reading",
                        "{value: 25, source: common practice, read: memory}",
                        "{value: 25, source: common practice, read: hearsay}",
                        "32: read of mmPerWeek cannot be \"hearsay\"; it takes one of copy, memory. Correct it."),
                change(
                        "an empty source",
                        "{value: 25, source: common practice,",
                        "{value: 25, source: \"\",",
                        "32: source of mmPerWeek cannot be \"\"; it takes at least 4 letters. Correct it."),
                change(
                        "a word for a number",
                        "value: 25,",
                        "value: plenty,",
                        "32: mmPerWeek cannot be \"plenty\"; it takes a number above 0 and at most 150. Correct it."),
                change(
                        "one value for a span",
                        "depthMm: {low: 25, high: 30,",
                        "depthMm: {value: 25,",
                        "19: depthMm is written with low, high, source, read; found value, source, read. Correct it."),
                change(
                        "a bare number",
                        "mmPerWeek: {value: 25, source: common practice, read: memory}",
                        "mmPerWeek: 25",
                        "32: mmPerWeek is written with value, source, read; found 25. Correct it."),
                change(
                        "a number for yes or no",
                        "onEdge: {value: true",
                        "onEdge: {value: 1",
                        "20: onEdge cannot be 1; it takes true or false. Correct it."),
                change(
                        "a word outside the list",
                        "value: tender",
                        "value: delicate",
                        "5: hardiness cannot be \"delicate\"; it takes one of hardy, half-hardy, tender. Correct it."),
                change(
                        "an id with a capital",
                        "value: cut-with-stalk",
                        "value: Cut it",
                        "47: cut cannot be \"Cut it\"; it takes lower-case words joined by hyphens. Correct it."),
                change(
                        "fruit without cues",
                        "value: [colour-turned]",
                        "value: []",
                        "46: cues cannot be []; it takes at least 1 word. Correct it."),
                change(
                        "a table over words",
                        "at: {20: 15",
                        "at: {warm: 15",
                        "15: emergenceDays cannot be {\"warm\":15,\"25\":6}; it takes temperatures in °C. Correct it."),
                change(
                        "hardening for six weeks",
                        "hardeningDays: {low: 7, high: 14",
                        "hardeningDays: {low: 7, high: 42",
                        "25: hardeningDays cannot be 42; it takes a number from 1 to 30. Correct it."),
                change(
                        "moister than moist",
                        "humidityPercent: {low: 80, high: 85",
                        "humidityPercent: {low: 80, high: 185",
                        "50: humidityPercent cannot be 185; it takes a number from 0 to 100. Correct it."),
                change(
                        "a harvest before sowing",
                        "daysFromSowing: {low: 85",
                        "daysFromSowing: {low: -85",
                        "44: daysFromSowing cannot be -85; it takes a number above 0 and at most 730. Correct it."),
                change(
                        "nothing keeps",
                        "lifeDays: {low: 60",
                        "lifeDays: {low: 0",
                        "53: lifeDays cannot be 0; it takes a number above 0 and at most 730. Correct it."),
                change(
                        "curing without days",
                        "  days: {low: 10, high: 14, source: common practice, read: memory}\n",
                        "",
                        "49: curing has no days, which it needs. Add it with its source."),
                change(
                        "low above high",
                        "depthMm: {low: 25, high: 30",
                        "depthMm: {low: 35, high: 30",
                        "19: depthMm cannot be {\"low\":35,\"high\":30}; low 35.0 is above high 30.0. Correct it."),
                change(
                        "a least above the best",
                        "minSoilTempC: {value: 15.6",
                        "minSoilTempC: {value: 22",
                        "12: minSoilTempC 22 is above the low end of optimumSoilTempC 21.1; the least cannot be warmer than "
                                + "the best. Correct one of them."),
                change(
                        "a most below the best",
                        "maxSoilTempC: {value: 37.8",
                        "maxSoilTempC: {value: 30",
                        "14: maxSoilTempC 30 is below the high end of optimumSoilTempC 35; the most cannot be colder than "
                                + "the best. Correct one of them."),
                change(
                        "seed up in the cold",
                        "at: {20: 15",
                        "at: {10: 15",
                        "15: emergenceDays has a figure at 10 °C, but nothing comes up outside minSoilTempC 15.6 to "
                                + "maxSoilTempC 37.8. Remove that figure or correct the limits."),
                change(
                        "seed without its temperatures",
                        "  maxSoilTempC: {value: 37.8, source: common practice, read: memory}\n",
                        "",
                        "11: a crop started from seed needs germination with minSoilTempC, optimumSoilTempC and "
                                + "maxSoilTempC. Add them."),
                change(
                        "sown indoors at no time",
                        "  weeksBeforeLastFrostIndoors: {low: 2, high: 4, source: common practice, read: memory}\n",
                        "",
                        "17: where is either, so weeksBeforeLastFrostIndoors is needed. Add it."),
                change(
                        "sown outdoors at no time",
                        "  weeksFromLastFrostOutdoors: {low: 1, high: 2, source: common practice, read: memory}\n",
                        "",
                        "17: where is either, so weeksFromLastFrostOutdoors or weeksFromFirstFrostAutumn is needed. "
                                + "Add one."),
                change(
                        "raised indoors and not hardened off",
                        "  hardeningDays: {low: 7, high: 14, source: common practice, read: memory}\n",
                        "",
                        "24: where is either, so hardeningDays is needed. Add it."),
                change(
                        "seedlings older than their dates",
                        "weeksBeforeLastFrostIndoors: {low: 2, high: 4",
                        "weeksBeforeLastFrostIndoors: {low: 8, high: 10",
                        "21: sown 8 to 10 weeks before the last frost and planted out 1 to 2 weeks from it makes seedlings "
                                + "9 to 12 weeks old, but weeksToPlantingOut is 3 to 4. Correct one of them."),
                change(
                        "a tender crop out in the frost",
                        "weeksFromLastFrost: {low: 1",
                        "weeksFromLastFrost: {low: -2",
                        "26: a tender crop cannot be planted out 2 weeks before the last frost; the least is 0. "
                                + "Correct weeksFromLastFrost or hardiness."),
                change(
                        "a tender crop that nothing harms",
                        "  harmedBelowC: {value: 0, source: common practice, read: memory}\n",
                        "",
                        "4: a tender crop needs harmedBelowC, the temperature below which its leaves are harmed. Add it."),
                change(
                        "fed with nothing",
                        "value: high-potash",
                        "value: none",
                        "34: feeding is from \"first-flower\" with \"none\"; either both are none or neither is. "
                                + "Correct one of them."),
                change(
                        "fed at no interval",
                        "  everyDays: {value: 7, source: common practice, read: memory}\n",
                        "",
                        "34: a crop that is fed needs everyDays, the days between feeds. Add it."),
                change(
                        "ripe before it flowers",
                        "daysFromSowing: {low: 85, high: 120",
                        "daysFromSowing: {low: 85, high: 100",
                        "44: the harvest is over 100 days from sowing, but flowering and ripening take at least 105. "
                                + "Correct one of them."),
                change(
                        "later from planting out than from sowing",
                        "daysFromPlantingOut: {low: 64, high: 92",
                        "daysFromPlantingOut: {low: 64, high: 130",
                        "45: the harvest is 64 to 130 days from planting out but 85 to 120 from sowing, which comes first. "
                                + "Correct one of them."),
                change(
                        "checked when all is gone",
                        "checkEveryDays: {value: 14",
                        "checkEveryDays: {value: 200",
                        "54: the store is checked every 200 days, but nothing keeps beyond 180 days. "
                                + "Correct one of them."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakes")
    void a_mistake_is_told_with_its_line_and_what_to_do(String mistake, String sheet, List<String> told) {
        assertThat(check(sheet))
                .extracting(Problem::toString)
                .containsExactlyElementsOf(
                        told.stream().map(line -> "crops/marrow.yaml:" + line).toList());
    }

    @Test
    void fruit_comes_from_flowers() {
        String without =
                SOUND.substring(0, SOUND.indexOf("flowering:\n")) + SOUND.substring(SOUND.indexOf("harvest:\n"));

        assertThat(check(without))
                .extracting(Problem::toString)
                .containsExactly(
                        "crops/marrow.yaml:10: fruit come from flowers, so the group flowering is needed. Add it.");
    }

    @Test
    void a_missing_group_is_told() {
        String without = SOUND.substring(0, SOUND.indexOf("storing:\n"));

        assertThat(check(without))
                .extracting(Problem::toString)
                .containsExactly(
                        "crops/marrow.yaml:1: there is no storing; a sheet needs crop, botanical, family, growth, "
                                + "sowing, plantingOut, watering, feeding, harvest, storing. Add it.");
    }

    @Test
    void several_mistakes_are_told_in_the_order_of_their_lines() {
        String sheet = SOUND.replace("value: 25,", "value: plenty,").replace("value: tender", "value: delicate");

        assertThat(check(sheet)).extracting(Problem::line).containsExactly(5, 32);
    }

    @Test
    void text_that_is_no_yaml_is_told_once() {
        assertThat(check("crop: [marrow\nfamily: {")).hasSize(1).first().satisfies(problem -> assertThat(problem.file())
                .isEqualTo("crops/marrow.yaml"));
    }

    @Test
    void a_figure_written_twice_is_told() {
        String line = "  usualDays: {low: 6, high: 15, source: common practice, read: memory}\n";

        assertThat(check(SOUND.replace(line, line + line)))
                .extracting(Problem::toString)
                .containsExactly("crops/marrow.yaml:17: Duplicate field 'usualDays'");
    }

    @Test
    void a_missing_schema_is_told() {
        assertThatThrownBy(() -> SheetCheck.check(RulesFolder.of(Map.of("crops/marrow.yaml", SOUND))))
                .isInstanceOf(RulesBroken.class)
                .hasMessage("crops/sheet.schema.json: this file is missing from the rules folder given; put it back.");
    }

    private static Arguments change(String mistake, String from, String to, String... told) {
        assertThat(SOUND).contains(from);
        return Arguments.of(mistake, SOUND.replace(from, to), List.of(told));
    }

    private static List<Problem> check(String sheet) {
        return SheetCheck.check(
                RulesFolder.of(Map.of("crops/marrow.yaml", sheet, SheetSchema.PATH, RULES.text(SheetSchema.PATH))));
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
