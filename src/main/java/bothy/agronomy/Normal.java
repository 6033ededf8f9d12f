package bothy.agronomy;

/** The standard normal distribution. */
public final class Normal {
    private static final double FAR = 38;

    private Normal() {}

    /**
     * Chance of a value at or below z, to about 1e-14. Near the middle by the power series of Abramowitz and Stegun 1964, 26.2.11,
     * in the tails by the continued fraction 26.2.14.
     *
     * @param z any number, the infinities included
     */
    public static double cumulative(double z) {
        return z < 0 ? tail(-z) : 1 - tail(z);
    }

    /**
     * The z at which {@link #cumulative} reaches a chance, found by halving.
     *
     * @param chance above 0 and below 1
     */
    public static double quantile(double chance) {
        double low = -FAR;
        double high = FAR;
        for (int step = 0; step < 100; step++) {
            double middle = (low + high) / 2;
            if (cumulative(middle) < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double density(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    private static double series(double z) {
        double term = z;
        double sum = z;
        for (int odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum) && odd < 400; odd += 2) {
            term *= z * z / odd;
            sum += term;
        }
        return sum;
    }

    private static double tail(double z) {
        if (z < 3) {
            return 0.5 - density(z) * series(z);
        }
        if (z > FAR) {
            return 0;
        }
        double fraction = z;
        for (int step = 120; step >= 1; step--) {
            fraction = z + step / fraction;
        }
        return density(z) / fraction;
    }
}
