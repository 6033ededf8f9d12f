package bothy.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A gardener edits a rule and slips. */
class BrokenRulesTest {
    private static final String SOUND =
            """
            package bothy.rules

            import bothy.advice.facts.*
            import bothy.garden.*

            rule "Water daily for the week after planting out"
                @source("common practice")
            when
                Latest($p : planting, what == What.PLANTED_OUT, daysAgo <= 7)
                Today($today : day)
            then
                insertLogical(new Advice("water-daily", $p, $today.plusDays(1)));
            end
            """;

    private static String told(String drl) {
        RulesFolder folder = RulesFolder.of(Map.of("watering.drl", drl));
        RulesBroken broken = catchThrowableOfType(RulesBroken.class, () -> RuleBook.of(folder, null));
        return broken.getMessage();
    }

    @Test
    void a_sound_rule_compiles() {
        RuleBook.of(RulesFolder.of(Map.of("watering.drl", SOUND)), null).close();
    }

    @Test
    void a_fact_that_does_not_exist_is_named_with_its_rule_and_line() {
        assertThat(told(SOUND.replace("Latest(", "Latst(")))
                .isEqualTo(
                        "watering.drl:6: rule \"Water daily for the week after planting out\": Unable to find class: Latst. "
                                + "No fact has this name: see the facts listed in DEVELOPERS.md, or declare it.");
    }

    @Test
    void a_part_that_a_fact_does_not_have_is_named_with_its_rule_and_line() {
        assertThat(told(SOUND.replace("daysAgo <=", "daysAgone <=")))
                .startsWith("watering.drl:6: rule \"Water daily for the week after planting out\": ")
                .contains("daysAgone");
    }

    @Test
    void a_missing_end_is_told_with_its_line() {
        assertThat(told(SOUND.replace("end\n", ""))).startsWith("watering.drl:");
    }

    @Test
    void a_missing_semicolon_is_told_with_its_rule() {
        assertThat(told(SOUND.replace("plusDays(1)));", "plusDays(1)))")))
                .startsWith("watering.drl:6: rule \"Water daily for the week after planting out\": ");
    }

    @Test
    void a_call_that_does_not_exist_is_told_with_its_rule() {
        assertThat(told(SOUND.replace("plusDays", "plusDayz")))
                .startsWith("watering.drl:6: rule \"Water daily for the week after planting out\": ")
                .contains("plusDayz");
    }

    @Test
    void a_misspelt_doing_is_told_without_the_compilers_own_names() {
        assertThat(told(SOUND.replace("insertLogical(", "insertLogicly(")))
                .isEqualTo(
                        "watering.drl:6: rule \"Water daily for the week after planting out\": “insertLogicly” is nothing that a "
                                + "rule can do: check the spelling. A rule ends in insertLogical(new Advice(…));");
    }

    @Test
    void a_misspelt_when_is_told_with_its_line_and_what_a_rule_looks_like() {
        assertThat(told(SOUND.replace("when\n", "whenn\n")))
                .startsWith("watering.drl:8: “whenn” was not expected here. A rule stands as: rule")
                .doesNotContain("mismatched");
    }

    @Test
    void a_name_that_nothing_binds_is_named() {
        assertThat(told(SOUND.replace("$p, $today", "$p, $day")))
                .startsWith("watering.drl:6: ")
                .contains("“$day” is not known here");
    }

    @Test
    void two_rules_of_one_name_are_told_with_both_places() {
        String twice = SOUND + SOUND.substring(SOUND.indexOf("rule "));

        assertThat(told(twice))
                .isEqualTo(
                        "watering.drl:14: a rule named \"Water daily for the week after planting out\" stands already at "
                                + "watering.drl:6; give one of them another name.");
    }

    @Test
    void another_package_is_refused() {
        assertThat(told(SOUND.replace("package bothy.rules", "package garden.rules")))
                .contains("watering.drl:1: the file must begin with: package bothy.rules");
    }
}
