package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.advice.RuleCheck;
import bothy.advice.TroubleRules;
import bothy.almanac.Problem;
import bothy.almanac.RulesFolder;
import bothy.almanac.troubles.TroubleCheck;
import bothy.almanac.troubles.Troubles;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TroublesCheckedTest {
    private static final String ONE_CAUSE =
            """
            signs:
              limp:
                - {cause: thirst, how: common, crops: [any], stages: [any], source: x, read: memory}
              spots:
                - {cause: thirst, how: common, crops: [tomato], stages: [any], source: x, read: memory}
                - {cause: gremlins, how: common, crops: [tomato], stages: [any], source: x, read: memory}
            causes:
              thirst: {check: 1}
              gremlins: {check: 1}
            """;
    private static final String WORDS =
            """
            signs:
              limp: {name: limp, meanwhile: Wait.}
              spots: {name: spots, meanwhile: Wait.}
            causes:
              thirst: {first: Water., "not": Wait., prevent: water}
              gremlins: {first: Put out bait., "not": Wait., prevent: pray}
            """;
    private static final RulesFolder ODD =
            RulesFolder.of(Map.of("troubles/odd.yaml", ONE_CAUSE, "wording/en-troubles.yaml", WORDS));

    private static List<String> found() {
        return TroubleCheck.problems(ODD, Set.of(), Set.of()).stream()
                .map(Problem::toString)
                .toList();
    }

    @Test
    void a_sign_with_one_cause_is_told() {
        assertThat(found()).anyMatch(problem -> problem.contains("the sign \"limp\" has fewer than two causes"));
    }

    @Test
    void causes_that_nothing_separates_are_told() {
        assertThat(found())
                .anyMatch(problem -> problem.contains("no evidence separates \"gremlins\" from \"thirst\" at spots"));
    }

    @Test
    void bait_without_a_caution_is_told() {
        assertThat(found()).anyMatch(problem -> problem.contains("\"gremlins\" speaks of bait"));
    }

    @Test
    void a_rule_that_names_an_unknown_cause_can_never_fire() {
        RuleCheck.Written rule = new RuleCheck.Written(
                "troubles/odd.drl",
                7,
                "Gnomes dig",
                "@source(\"x\")",
                "Case($case : id, signs contains \"humming\")",
                "insertLogical(new Evidence($case, \"gnomes\", \"hats\", 1.0));");

        assertThat(TroubleRules.problems(List.of(rule), Troubles.in(ODD)))
                .extracting(Problem::toString)
                .anyMatch(problem -> problem.contains("cause \"gnomes\"") && problem.contains("can never fire"))
                .anyMatch(problem -> problem.contains("sign \"humming\"") && problem.contains("odd.drl:7"));
    }

    @Test
    void a_rule_that_asks_for_an_answer_that_nobody_can_give_can_never_fire() {
        RuleCheck.Written rule = new RuleCheck.Written(
                "troubles/odd.drl",
                7,
                "Gnomes are ill",
                "@source(\"x\")",
                "Answered(of == \"message\", about == \"person-unwell\", answer == \"yep\") Verdict(chance >= 1.5)",
                "insertLogical(new Advice(\"x\", null, today));");

        assertThat(TroubleRules.problems(List.of(rule), Troubles.in(ODD)))
                .extracting(Problem::toString)
                .anyMatch(problem -> problem.contains("answer \"yep\"") && problem.contains("can never fire"))
                .anyMatch(problem -> problem.contains("chance of 1.5"));
    }

    @Test
    void a_sign_of_rot_without_a_caution_is_told() {
        RulesFolder rotten = RulesFolder.of(Map.of(
                "troubles/odd.yaml", ONE_CAUSE.replace("spots:", "pod-rot:"), "wording/en-troubles.yaml", WORDS));

        assertThat(TroubleRules.problems(List.of(), Troubles.in(rotten)))
                .extracting(Problem::toString)
                .anyMatch(problem -> problem.contains("\"pod-rot\" is of something not to be eaten"));
    }

    @Test
    void a_crop_that_nobody_can_name_is_told() {
        assertThat(TroubleCheck.unknownCrops(ODD, Set.of("potato")))
                .extracting(Problem::toString)
                .anyMatch(problem -> problem.contains("the crop \"tomato\" at spots"));
    }

    @Test
    void the_shipped_tables_are_in_order() {
        assertThat(CheckVerb.problems(RulesFolder.at(Path.of("rules")))).isEmpty();
    }
}
