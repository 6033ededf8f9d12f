package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Weighing of causes against values worked out by hand (natural logarithms, four decimals). */
class WeighingCausesTest {
    private static final double FOUR_DECIMALS = 0.00005;

    @Test
    void equal_weights_give_equal_chances() {
        assertThat(Weighing.chances(new double[] {1.8, 1.8})).containsExactly(0.5, 0.5);
    }

    @Test
    void log_odds_of_three_to_one_give_three_quarters() {
        // e^ln3 = 3, e^0 = 1: 3/4 and 1/4.
        double[] chances = Weighing.chances(new double[] {Math.log(3), 0});

        assertThat(chances[0]).isCloseTo(0.75, within(FOUR_DECIMALS));
        assertThat(chances[1]).isCloseTo(0.25, within(FOUR_DECIMALS));
    }

    @Test
    void great_weights_do_not_overflow() {
        assertThat(Weighing.chances(new double[] {2000, 0})).containsExactly(1, 0);
    }

    @Test
    void an_answer_weighs_by_how_much_likelier_it_is_than_chance() {
        // Scores ln4 and 0: 4/5 and 1/5. ln(0.8 * 2) = 0.4700, ln(0.2 * 2) = -0.9163.
        double[] likelihood = Weighing.answers(new double[] {Math.log(4), 0});

        assertThat(likelihood[0]).isCloseTo(0.8, within(FOUR_DECIMALS));
        assertThat(Weighing.weight(likelihood[0], 2)).isCloseTo(0.4700, within(FOUR_DECIMALS));
        assertThat(Weighing.weight(likelihood[1], 2)).isCloseTo(-0.9163, within(FOUR_DECIMALS));
    }

    @Test
    void adding_the_weight_is_the_theorem_of_bayes() {
        // Before 0.5 and 0.5; the answer has 0.8 and 0.2: after it 0.8 and 0.2.
        double[] before = {0.5, 0.5};
        double[] likelihood = {0.8, 0.2};

        double[] after = Weighing.after(before, likelihood);
        double[] summed = Weighing.chances(new double[] {Weighing.weight(0.8, 2), Weighing.weight(0.2, 2)});

        assertThat(after[0]).isCloseTo(0.8, within(FOUR_DECIMALS));
        assertThat(summed[0]).isCloseTo(after[0], within(FOUR_DECIMALS));
    }

    @Test
    void uncertainty_is_greatest_when_all_are_alike() {
        assertThat(Weighing.entropy(new double[] {0.5, 0.5})).isCloseTo(0.6931, within(FOUR_DECIMALS));
        assertThat(Weighing.entropy(new double[] {0.75, 0.25})).isCloseTo(0.5623, within(FOUR_DECIMALS));
        assertThat(Weighing.entropy(new double[] {1, 0})).isZero();
    }

    @Test
    void a_question_that_settles_it_is_worth_all_uncertainty() {
        double[][] settles = {{1, 0}, {0, 1}};

        assertThat(Weighing.worth(new double[] {0.5, 0.5}, settles)).isCloseTo(0.6931, within(FOUR_DECIMALS));
    }

    @Test
    void a_question_answered_alike_under_all_causes_is_worth_nothing() {
        double[][] same = {{0.3, 0.3}, {0.7, 0.7}};

        assertThat(Weighing.worth(new double[] {0.6, 0.4}, same)).isCloseTo(0, within(FOUR_DECIMALS));
    }

    @Test
    void a_question_of_eight_in_ten_is_worth_a_fifth_of_a_nat() {
        // After either answer 0.8 and 0.2, entropy 0.5004; 0.6931 - 0.5004 = 0.1927.
        double[][] mostly = {{0.8, 0.2}, {0.2, 0.8}};

        assertThat(Weighing.worth(new double[] {0.5, 0.5}, mostly)).isCloseTo(0.1927, within(FOUR_DECIMALS));
    }

    @Test
    void the_question_that_parts_the_leading_causes_is_worth_more_than_one_about_a_rare_cause() {
        double[] chances = {0.45, 0.45, 0.1};
        double[][] partsTheLeading = {{0.9, 0.1, 0.5}, {0.1, 0.9, 0.5}};
        double[][] aboutTheRare = {{0.1, 0.1, 0.9}, {0.9, 0.9, 0.1}};

        assertThat(Weighing.worth(chances, partsTheLeading)).isGreaterThan(Weighing.worth(chances, aboutTheRare));
    }
}
