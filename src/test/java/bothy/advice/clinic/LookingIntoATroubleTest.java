package bothy.advice.clinic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.garden.Diagnosis;
import bothy.garden.Entry;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LookingIntoATroubleTest {

    @Test
    void chances_leave_something_for_what_nobody_thought_of() {
        Diagnosis diagnosis = Ward.only(Ward.seen("courgette", "white-on-leaves"));

        double sum = diagnosis.causes().stream()
                .mapToDouble(Diagnosis.Likely::chance)
                .sum();
        assertThat(sum).isLessThan(1).isGreaterThan(0.8);
    }

    @Test
    void reasons_add_up_to_the_odds_between_two_causes() {
        Diagnosis diagnosis = Ward.only(Ward.advised(
                List.of(),
                List.of(Ward.sign("tomato", "leaf-spots"), Ward.found("tomato", "rings", "yes")),
                List.of()));
        Diagnosis.Likely first = diagnosis.causes().get(0);
        Diagnosis.Likely second = diagnosis.causes().get(1);

        double weights = sum(first) - sum(second);

        assertThat(Math.log(first.chance() / second.chance())).isCloseTo(weights, within(1e-9));
    }

    private static double sum(Diagnosis.Likely likely) {
        return likely.reasons().stream().mapToDouble(Diagnosis.Reason::weight).sum();
    }

    @Test
    void an_answer_moves_the_chances_its_way() {
        Diagnosis before = Ward.only(Ward.seen("tomato", "wilting-all-day"));
        Diagnosis after = Ward.only(Ward.advised(
                List.of(),
                List.of(Ward.sign("tomato", "wilting-all-day"), Ward.found("tomato", "stem-ring", "yes")),
                List.of()));

        assertThat(Ward.chance(after, "fusarium or verticillium wilt"))
                .isGreaterThan(Ward.chance(before, "fusarium or verticillium wilt"))
                .isGreaterThan(0.6);
    }

    @Test
    void a_question_is_asked_while_no_cause_is_clear_and_none_after_three_answers() {
        List<Entry> told = new ArrayList<>(List.of(Ward.sign("cabbage", "holes-in-leaves")));
        assertThat(Ward.only(Ward.advised(List.of(), told, List.of())).question())
                .isNotNull();

        told.add(Ward.found("cabbage", "holes-look", "unknown"));
        told.add(Ward.found("cabbage", "caterpillars-seen", "unknown"));
        told.add(Ward.found("cabbage", "slime", "unknown"));

        Diagnosis after = Ward.only(Ward.advised(List.of(), told, List.of()));
        assertThat(after.question()).isNull();
        assertThat(after.decided()).isTrue();
    }

    @Test
    void no_question_is_asked_once_a_cause_is_clear() {
        Diagnosis clear = Ward.only(Ward.advised(
                List.of(),
                List.of(Ward.sign("squash", "wilting-all-day"), Ward.found("courgette", "stem-hole", "yes")),
                List.of()));

        assertThat(clear.decided()).isEqualTo(clear.question() == null);
    }

    @Test
    void do_not_know_changes_no_chance_and_is_not_asked_again() {
        Diagnosis before = Ward.only(Ward.seen("cabbage", "holes-in-leaves"));
        Diagnosis after = Ward.only(Ward.advised(
                List.of(),
                List.of(Ward.sign("cabbage", "holes-in-leaves"), Ward.found("cabbage", before.question(), "unknown")),
                List.of()));

        assertThat(Ward.chance(after, "cabbage caterpillars"))
                .isCloseTo(Ward.chance(before, "cabbage caterpillars"), within(1e-12));
        assertThat(after.question()).isNotEqualTo(before.question());
    }

    @Test
    void a_cause_of_another_crop_is_never_named() {
        assertThat(Ward.only(Ward.seen("carrot", "leaf-spots")).causes())
                .extracting(Diagnosis.Likely::cause)
                .doesNotContain("early blight", "chocolate spot", "late blight");
    }

    @Test
    void an_unknown_sign_gets_no_invented_cause() {
        assertThat(Ward.seen("tomato", "glowing-in-the-dark").diagnoses()).isEmpty();
    }
}
