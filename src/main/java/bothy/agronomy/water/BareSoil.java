package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * Evaporation from the soil surface between the plants, the dual crop coefficient of FAO-56 chapter 7.
 *
 * @param readilyEvaporableMm REW, 0 to {@code totalEvaporableMm}
 * @param totalEvaporableMm TEW, 1 to 60 mm
 */
public record BareSoil(double readilyEvaporableMm, double totalEvaporableMm) {
    /** Kc of dry bare soil, FAO-56 p. 149. */
    public static final double LEAST_KC = 0.15;

    public BareSoil {
        within("totalEvaporableMm", totalEvaporableMm, 1, 60, "mm");
        within("readilyEvaporableMm", readilyEvaporableMm, 0, totalEvaporableMm, "mm");
    }

    /**
     * Total evaporable water, mm (FAO-56 Eq. 73).
     *
     * @param fieldCapacity m³ a m³, 0.01 to 0.6
     * @param wiltingPoint m³ a m³, 0 to the field capacity
     * @param depthM depth that dries by evaporation, 0.05 to 0.2 m; 0.1 as a rule
     */
    public static double totalEvaporableMm(double fieldCapacity, double wiltingPoint, double depthM) {
        within("fieldCapacity", fieldCapacity, 0.01, 0.6, "m³/m³");
        within("wiltingPoint", wiltingPoint, 0, fieldCapacity, "m³/m³");
        within("depthM", depthM, 0.05, 0.2, "m");
        return 1000 * (fieldCapacity - 0.5 * wiltingPoint) * depthM;
    }

    /** How far evaporation is checked by a dry surface, 1 to 0 (FAO-56 Eq. 74). */
    public double reduction(double depletionMm) {
        within("depletionMm", depletionMm, 0, totalEvaporableMm, "mm");
        if (depletionMm <= readilyEvaporableMm) {
            return 1;
        }
        return (totalEvaporableMm - depletionMm) / (totalEvaporableMm - readilyEvaporableMm);
    }

    /** The most that crop and soil can use together, as Kc (FAO-56 Eq. 72). */
    public static double mostKc(double basalKc, double windMs, double lowestHumidityPercent, double heightM) {
        within("basalKc", basalKc, 0, 1.5, "");
        return Math.max(1.2 + CropCoefficient.climate(windMs, lowestHumidityPercent, heightM), basalKc + 0.05);
    }

    /** Evaporation coefficient Ke (FAO-56 Eq. 71). */
    public static double evaporationKc(double reduction, double mostKc, double basalKc, double exposedWettedShare) {
        within("reduction", reduction, 0, 1, "");
        within("exposedWettedShare", exposedWettedShare, 0.01, 1, "");
        return Math.max(0, Math.min(reduction * (mostKc - basalKc), exposedWettedShare * mostKc));
    }

    /** Share of the ground that leaves cover (FAO-56 Eq. 76), 0 to 0.99. */
    public static double coveredShare(double basalKc, double leastKc, double mostKc, double heightM) {
        if (mostKc <= leastKc || basalKc <= leastKc) {
            return 0;
        }
        return Math.min(0.99, Math.pow((basalKc - leastKc) / (mostKc - leastKc), 1 + 0.5 * heightM));
    }

    /** Share of the ground that is both exposed and wetted (FAO-56 Eq. 75), 0.01 to 1. */
    public static double exposedWettedShare(double coveredShare, double wettedShare) {
        return Math.max(0.01, Math.min(1 - coveredShare, wettedShare));
    }

    /**
     * Depletion of the surface layer after a day (FAO-56 Eq. 77, 79), water given early in the day and what is too much draining at
     * once; transpiration out of the layer is left out.
     *
     * @param depletionMm before the day
     * @param wettingMm rain less run-off and irrigation on the wetted part, 0 to 500 mm
     * @param evaporationMm evaporation over the whole ground, 0 to 20 mm
     */
    public double after(double depletionMm, double wettingMm, double evaporationMm, double exposedWettedShare) {
        within("wettingMm", wettingMm, 0, 500, "mm");
        within("evaporationMm", evaporationMm, 0, 20, "mm");
        double wetted = Math.max(0, within("depletionMm", depletionMm, 0, totalEvaporableMm, "mm") - wettingMm);
        return Math.min(
                totalEvaporableMm,
                wetted + evaporationMm / within("exposedWettedShare", exposedWettedShare, 0.01, 1, ""));
    }
}
