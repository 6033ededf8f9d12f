package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * How deep roots reach. FAO-56 (p. 279, Annex 8) lets them grow in a straight line from their first depth to the greatest at the start of
 * the middle stage; the greatest depths are those of FAO-56 Table 22.
 *
 * @param firstM depth at sowing or planting out, 0.02 to 1 m; 0.15 to 0.2 m is usual
 * @param deepestM greatest depth, not below the first, to 3 m
 */
public record Roots(double firstM, double deepestM) {
    public Roots {
        within("firstM", firstM, 0.02, 1, "m");
        within("deepestM", deepestM, firstM, 3, "m");
    }

    /**
     * Depth on a day, m.
     *
     * @param day days since sowing or planting out, 0 to 1000
     * @param daysToDeepest days to the greatest depth, 1 to 400: initial and development stage
     */
    public double depthM(double day, double daysToDeepest) {
        within("day", day, 0, 1000, "days");
        within("daysToDeepest", daysToDeepest, 1, 400, "days");
        return firstM + Math.min(1, day / daysToDeepest) * (deepestM - firstM);
    }
}
