package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.Problem;
import bothy.almanac.RulesFolder;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** A gardener edits the rules folder and asks whether it is in order. */
class CheckTest {
    private static final RulesFolder SHIPPED = RulesFolder.at(Path.of("rules"));

    private static List<Problem> after(String file, UnaryOperator<String> edit) {
        return CheckVerb.asWritten(edited(file, edit));
    }

    private static RulesFolder edited(String file, UnaryOperator<String> edit) {
        Map<String, String> files = new HashMap<>();
        SHIPPED.paths("", "").forEach(path -> files.put(path, SHIPPED.text(path)));
        String before = files.get(file);
        files.put(file, edit.apply(before));
        assertThat(files.get(file)).as("the edit changed something").isNotEqualTo(before);
        return RulesFolder.of(files);
    }

    private static UnaryOperator<String> swap(String from, String to) {
        return text -> text.replace(from, to);
    }

    @Test
    void the_shipped_rules_are_in_order() {
        assertThat(CheckVerb.problems(SHIPPED)).isEmpty();
    }

    @Test
    void a_rule_that_does_not_compile_is_told_with_file_line_and_words() {
        RulesFolder misspelt = edited(
                "feeding.drl",
                swap(
                        "FeedingSeason($p : planting, $since : since)\n    not Happened",
                        "FedingSeason($p : planting, $since : since)\n    not Happened"));

        assertThat(CheckVerb.problems(misspelt)).singleElement().satisfies(problem -> {
            assertThat(problem.file()).isEqualTo("feeding.drl");
            assertThat(problem.line()).isPositive();
            assertThat(problem.text()).contains("FedingSeason").contains("No fact has this name");
        });
    }

    @Test
    void advice_without_wording_is_told_at_its_rule() {
        assertThat(after("feeding.drl", swap("new Advice(\"feed-dose\"", "new Advice(\"feed-doses\"")))
                .extracting(Problem::toString)
                .anyMatch(text -> text.startsWith("feeding.drl:")
                        && text.contains(
                                "the advice \"feed-doses\" has no wording: add it under advice: in wording/en.yaml."))
                .anyMatch(text -> text.contains("no rule gives the advice \"feed-dose\""));
    }

    @Test
    void a_rule_without_a_source_is_told() {
        assertThat(after("feeding.drl", text -> text.replaceFirst("    @source\\([^\\n]*\\n", "")))
                .extracting(Problem::text)
                .anyMatch(text -> text.contains("has no source: add @source"));
    }

    @Test
    void a_stage_with_no_way_on_is_told() {
        assertThat(after(
                        "stages.drl", swap("new Reached($p, Stage.STORED, $on)", "new Reached($p, Stage.CURING, $on)")))
                .extracting(Problem::text)
                .contains("no rule reaches the stage stored: add one.");
    }

    @Test
    void a_name_that_nothing_fills_in_is_told_with_its_line() {
        assertThat(after("wording/en.yaml", swap("{minSoilTempC} and like", "{leastSoilTempC} and like")))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.file()).isEqualTo("wording/en.yaml");
                    assertThat(problem.line()).isGreaterThan(1);
                    assertThat(problem.text()).startsWith("nothing fills in {leastSoilTempC}");
                });
    }

    @Test
    void an_impossible_figure_is_told_with_its_line() {
        assertThat(after(
                        "crops/tomato.yaml",
                        text -> text.replaceFirst("minSoilTempC: \\{value: [0-9.]+", "minSoilTempC: {value: 90")))
                .extracting(Problem::file)
                .contains("crops/tomato.yaml");
    }

    @Test
    void two_rules_with_the_same_condition_are_told() {
        String twice =
                """

                rule "A crop asked about is in its packet, said again"
                    @source("common practice")
                when
                    Planting($p : id, start == Planting.Start.PACKET)
                    Today($on : day)
                then
                    insertLogical(new Reached($p, Stage.PACKET, $on));
                end
                """;

        assertThat(after("stages.drl", text -> text + twice))
                .extracting(Problem::text)
                .anyMatch(text -> text.contains("has the same condition as"));
    }
}
