package bothy.agronomy;

/** So many successes in so many independent trials. */
final class Binomial {
    private Binomial() {}

    /**
     * Chance of exactly so many successes.
     *
     * @param trials 0 to 100 000
     * @param successes 0 to {@code trials}
     * @param chance of each, 0 to 1
     */
    static double exactly(int trials, int successes, double chance) {
        if (chance <= 0 || chance >= 1) {
            return (chance <= 0 ? 0 : trials) == successes ? 1 : 0;
        }
        double log = successes * Math.log(chance) + (trials - successes) * Math.log1p(-chance);
        int fewer = Math.min(successes, trials - successes);
        for (int i = 1; i <= fewer; i++) {
            log += Math.log((double) (trials - fewer + i) / i);
        }
        return Math.exp(log);
    }

    /** Chance of at least so many successes; parameters as for {@link #exactly}. */
    static double atLeast(int trials, int successes, double chance) {
        double below = 0;
        for (int i = 0; i < successes; i++) {
            below += exactly(trials, i, chance);
        }
        return Math.max(0, 1 - below);
    }
}
