package bothy.agronomy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Held against the distributions of Apache Commons Statistics 1.1. */
class NormalAndBinomialTest {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    @Test
    void the_normal_distribution_agrees_from_minus_39_to_39() {
        for (double z = -39; z <= 39; z += 0.01) {
            double expected = NORMAL.cumulativeProbability(z);
            assertThat(Normal.cumulative(z)).as("z = %s", z).isCloseTo(expected, within(1e-13));
        }
    }

    @Test
    void its_quantiles_agree() {
        for (double chance = 0.001; chance < 1; chance += 0.001) {
            assertThat(Normal.quantile(chance))
                    .as("chance %s", chance)
                    .isCloseTo(NORMAL.inverseCumulativeProbability(chance), within(1e-9));
        }
    }

    @Test
    void the_binomial_distribution_agrees_for_1_to_400_trials() {
        for (int trials = 1; trials <= 400; trials += 7) {
            for (double chance : new double[] {0, 0.01, 0.3, 0.5, 0.87, 0.99, 1}) {
                BinomialDistribution expected = BinomialDistribution.of(trials, chance);
                for (int successes = 0; successes <= trials; successes += 1 + trials / 20) {
                    assertThat(Binomial.exactly(trials, successes, chance))
                            .as("%d of %d at %s", successes, trials, chance)
                            .isCloseTo(expected.probability(successes), within(1e-10));
                    assertThat(Binomial.atLeast(trials, successes, chance))
                            .isCloseTo(expected.survivalProbability(successes - 1), within(1e-9));
                }
            }
        }
    }
}
