package bothy.agronomy;

/**
 * How much of a packet still comes up as it ages. The loss of viability follows a straight line in probits against time (Ellis and Roberts
 * 1980, from memory). The line's two points are an own model: fresh seed stands halfway between the legal least germination
 * (for instance 7 CFR 201.31) and all, and at the end of its published life the seed just still reaches the legal least.
 */
public final class SeedAge {
    private SeedAge() {}

    /**
     * Share of seeds that can still grow, 0 to 1.
     *
     * @param ageYears age of the seed, 0 to 50 years
     * @param lifeYears published life in good storage, 0.5 to 20 years
     * @param leastGerminationPercent legal least germination of seed on sale, 20 to 98 %
     */
    public static double viableShare(double ageYears, double lifeYears, double leastGerminationPercent) {
        Stated.within("ageYears", ageYears, 0, 50, "years");
        Stated.within("lifeYears", lifeYears, 0.5, 20, "years");
        double least = Stated.within("leastGerminationPercent", leastGerminationPercent, 20, 98, "%") / 100;
        double fresh = Normal.quantile((least + 1) / 2);
        double atEnd = Normal.quantile(least);
        return Normal.cumulative(fresh + (atEnd - fresh) * ageYears / lifeYears);
    }
}
