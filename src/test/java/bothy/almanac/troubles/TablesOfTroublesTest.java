package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TablesOfTroublesTest {
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    private static final Troubles TROUBLES = Troubles.in(RULES);
    private static final TroubleWording WORDING = TroubleWording.in(RULES);

    @Test
    void at_least_forty_five_signs_have_two_causes_or_more() {
        assertThat(TROUBLES.signs()).hasSizeGreaterThanOrEqualTo(45);
        assertThat(TROUBLES.signs()).allSatisfy((sign, rows) -> assertThat(rows)
                .as(sign)
                .extracting(Troubles.Row::cause)
                .hasSizeGreaterThanOrEqualTo(2));
    }

    @Test
    void at_least_a_hundred_and_eighty_rows_carry_a_source() {
        assertThat(TROUBLES.signs().values().stream().flatMap(List::stream).filter(row -> !row.source()
                        .isBlank()))
                .hasSizeGreaterThanOrEqualTo(180);
    }

    @Test
    void every_cause_says_what_to_do_first_what_not_and_how_to_prevent_it() {
        assertThat(TROUBLES.causes().keySet()).allSatisfy(cause -> {
            TroubleWording.Cause words = WORDING.causes().get(cause);
            assertThat(words).as(cause).isNotNull();
            assertThat(words.first()).as(cause).isNotBlank();
            assertThat(words.not()).as(cause).isNotBlank();
            assertThat(words.prevent()).as(cause).isNotBlank();
        });
    }

    @Test
    void every_sign_has_a_name_and_something_that_does_no_harm_meanwhile() {
        assertThat(TROUBLES.signs().keySet()).allSatisfy(sign -> {
            assertThat(WORDING.signs()).as(sign).containsKey(sign);
            assertThat(WORDING.signs().get(sign).meanwhile()).as(sign).isNotBlank();
        });
    }

    @Test
    void every_answer_has_words_for_why() {
        TROUBLES.questions().forEach((id, question) -> question.ids()
                .forEach(answer -> assertThat(WORDING.questions().get(id).shows(answer))
                        .as(id + "=" + answer)
                        .isNotBlank()));
    }

    @Test
    void a_cause_that_is_not_settled_is_named_with_file_and_line() {
        String text =
                "signs:\n  spots:\n    - {cause: gremlins, how: common, crops: [any], stages: [any], source: x, read: memory}\n";

        assertThatThrownBy(() -> Troubles.in(RulesFolder.of(Map.of("troubles/odd.yaml", text))))
                .isInstanceOf(RulesBroken.class)
                .satisfies(thrown -> assertThat(((RulesBroken) thrown)
                                .problems().stream().map(Object::toString).collect(Collectors.joining()))
                        .contains("troubles/odd.yaml")
                        .contains("the cause \"gremlins\" is not known"));
    }

    @Test
    void a_sign_may_stand_in_one_file_only() {
        String text =
                "causes:\n  thirst: {check: 1}\nsigns:\n  limp:\n    - {cause: thirst, how: common, crops: [any], stages: [any], source: x, read: memory}\n";

        assertThatThrownBy(() -> Troubles.in(RulesFolder.of(
                        Map.of("troubles/a.yaml", text, "troubles/b.yaml", text.substring(text.indexOf("signs"))))))
                .isInstanceOf(RulesBroken.class)
                .hasMessageContaining("limp");
    }
}
