package bothy.agronomy;

/**
 * Weighs causes against each other. Each cause has a weight in log-odds (natural logarithm): the sum of how common it is and of all
 * evidence for it (above 0) and against it (below 0). Chances follow from the weights by the softmax, which is Bayes' theorem with
 * evidence taken as independent given the cause. The last weight is that of "something else", so that no verdict is ever certain
 * only because nothing better was thought of.
 *
 * <p>Source of the method: I. J. Good 1950, Probability and the Weighing of Evidence (weights of evidence add in log-odds); D. V.
 * Lindley 1956, On a measure of the information provided by an experiment (worth of a question as expected fall in entropy); both
 * from memory.
 */
public final class Weighing {
    private Weighing() {}

    /**
     * Chances of the causes.
     *
     * @param weights log-odds, one for each cause, that of "something else" last; at least one
     * @return between 0 and 1, in the same order, their sum 1
     */
    public static double[] chances(double[] weights) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double weight : weights) {
            greatest = Math.max(greatest, weight);
        }
        double[] chances = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            // Taking off the greatest keeps the exponential in range and changes no chance.
            chances[i] = Math.exp(weights[i] - greatest);
        }
        return shares(chances);
    }

    /**
     * How likely each answer is under one cause.
     *
     * @param scores what the answer tells, for each answer; 0 is neither here nor there
     * @return between 0 and 1, their sum 1
     */
    public static double[] answers(double[] scores) {
        return chances(scores);
    }

    /**
     * The weight of an answer for a cause: the logarithm of how much likelier it is under that cause than if all answers were equally
     * likely.
     *
     * @param likelihood chance of the answer under the cause, above 0
     * @param answers number of answers that there are, at least 2
     */
    public static double weight(double likelihood, int answers) {
        return Math.log(likelihood * answers);
    }

    /**
     * Chances after an answer (Bayes' theorem).
     *
     * @param chances before
     * @param likelihood chance of the answer under each cause
     */
    public static double[] after(double[] chances, double[] likelihood) {
        double[] after = new double[chances.length];
        for (int i = 0; i < chances.length; i++) {
            after[i] = chances[i] * likelihood[i];
        }
        return shares(after);
    }

    /** Uncertainty in nats: 0 when one cause is certain, the logarithm of their number when all are alike. */
    public static double entropy(double[] chances) {
        double entropy = 0;
        for (double chance : chances) {
            entropy -= chance > 0 ? chance * Math.log(chance) : 0;
        }
        return entropy;
    }

    /**
     * How much uncertainty a question can be expected to take away, in nats; never below 0.
     *
     * @param chances of the causes
     * @param likelihood for each answer, its chance under each cause
     */
    public static double worth(double[] chances, double[][] likelihood) {
        double left = 0;
        for (double[] answer : likelihood) {
            double given = 0;
            for (int i = 0; i < chances.length; i++) {
                given += chances[i] * answer[i];
            }
            left += given > 0 ? given * entropy(after(chances, answer)) : 0;
        }
        return Math.max(0, entropy(chances) - left);
    }

    private static double[] shares(double[] parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part;
        }
        double[] shares = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            shares[i] = parts[i] / sum;
        }
        return shares;
    }
}
