package bothy.agronomy;

/** The standard normal distribution. */
public final class Normal {
    private static final double FAR = 38;
    private static final double CLOSE = 1e-14;
    private static final int MOST_STEPS = 100;

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
     * The z at which {@link #cumulative} reaches a chance, found by Newton's steps, and by halving where one would leave the span that
     * holds it.
     *
     * @param chance above 0 and below 1
     */
    public static double quantile(double chance) {
        double low = -FAR;
        double high = FAR;
        double z = 0;
        for (int step = 0; step < MOST_STEPS && high - low > CLOSE; step++) {
            double over = cumulative(z) - chance;
            if (over < 0) {
                low = z;
            } else {
                high = z;
            }
            double next = z - over / density(z);
            double inside = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(inside - z) < CLOSE) {
                return inside;
            }
            z = inside;
        }
        return z;
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
