package bothy.agronomy;

/** How many seeds to sow for a wanted number of plants; each seed comes up by itself with the same chance (binomial). */
public final class SeedNumbers {
    private static final int MOST_PLANTS = 5_000;

    private SeedNumbers() {}

    /**
     * The fewest seeds that give at least so many plants with the certainty asked for.
     *
     * @param plants plants wanted, 1 to 5000
     * @param chanceEach chance that one seed becomes a plant, 0.05 to 1: germination times what slugs and damping off leave
     * @param certainty 0.5 to 0.999; 0.95 as a rule
     */
    public static int toSow(int plants, double chanceEach, double certainty) {
        Stated.within("plants", plants, 1, MOST_PLANTS, "plants");
        Stated.within("chanceEach", chanceEach, 0.05, 1, "");
        Stated.within("certainty", certainty, 0.5, 0.999, "");
        int tooFew = plants - 1;
        int enough = plants;
        while (Binomial.atLeast(enough, plants, chanceEach) < certainty) {
            tooFew = enough;
            enough *= 2;
        }
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) / 2;
            if (Binomial.atLeast(middle, plants, chanceEach) < certainty) {
                tooFew = middle;
            } else {
                enough = middle;
            }
        }
        return enough;
    }

    /**
     * The chance of at least so many plants from the seeds sown, 0 to 1.
     *
     * @param sown 1 to 100 000
     * @param plants 0 to {@code sown}
     * @param chanceEach 0 to 1
     */
    public static double certainty(int sown, int plants, double chanceEach) {
        Stated.within("sown", sown, 1, 100_000, "seeds");
        Stated.within("plants", plants, 0, sown, "plants");
        return Binomial.atLeast(sown, plants, Stated.within("chanceEach", chanceEach, 0, 1, ""));
    }

    /**
     * The chance that at least one of a cell's seeds comes up, 0.05 to 1: 1 − (1 − chance)ⁿ.
     *
     * @param chanceEach 0.05 to 1
     * @param perCell seeds in the cell, 1 to 50
     */
    public static double cellFilled(double chanceEach, int perCell) {
        Stated.within("chanceEach", chanceEach, 0.05, 1, "");
        Stated.within("perCell", perCell, 1, 50, "seeds");
        return Binomial.atLeast(perCell, 1, chanceEach);
    }

    /**
     * Seeds a cell so that at least one comes up in a cell with the certainty asked for: the least n with 1 − (1 − chance)ⁿ ≥ certainty.
     *
     * @param chanceEach 0.05 to 1
     * @param certainty 0.5 to 0.999
     */
    public static int perCell(double chanceEach, double certainty) {
        return toSow(1, chanceEach, certainty);
    }
}
