package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * The water missing from the rooted soil of a planting, carried from day to day (FAO-56 chapter 8). Water counts as given early in the
 * day; what is more than the soil holds drains on that day, before the plants take theirs, as in FAO-56 Example 38. Deeper soil that
 * roots grow into counts as moist. The water of a day always adds up: rain and watering = use + drainage − change of depletion.
 *
 * @param depletionMm water missing against field capacity, 0 to 1000 mm
 */
public record SoilWater(double depletionMm) {
    /** Soil that holds all the water it can. */
    public static final SoilWater FULL = new SoilWater(0);

    public SoilWater {
        within("depletionMm", depletionMm, 0, 1000, "mm");
    }

    /**
     * What reaches the planting and what it could use on a day.
     *
     * @param rainMm 0 to 1000 mm
     * @param wateringMm net of what misses the roots, 0 to 1000 mm
     * @param cropUseMm ETc without stress, 0 to 25 mm
     * @param totalAvailableMm TAW of the day, 0.1 to 1000 mm
     * @param freeShare p of the day, 0.1 to 0.8
     */
    public record Day(double rainMm, double wateringMm, double cropUseMm, double totalAvailableMm, double freeShare) {
        public Day {
            within("rainMm", rainMm, 0, 1000, "mm");
            within("wateringMm", wateringMm, 0, 1000, "mm");
            within("cropUseMm", cropUseMm, 0, 25, "mm");
            within("totalAvailableMm", totalAvailableMm, 0.1, 1000, "mm");
            within("freeShare", freeShare, 0.1, 0.8, "");
        }

        /** Readily available water, mm (FAO-56 Eq. 83). */
        public double freeMm() {
            return freeShare * totalAvailableMm;
        }

        public Day withWatering(double wateringMm) {
            return new Day(rainMm, wateringMm, cropUseMm, totalAvailableMm, freeShare);
        }
    }

    /**
     * What a day did.
     *
     * @param after the soil at the end of the day
     * @param stress Ks, 1 without stress, 0 at the wilting point
     * @param usedMm what the plants used
     * @param drainedMm what drained below the roots
     */
    public record DayDone(SoilWater after, double stress, double usedMm, double drainedMm) {}

    /** The soil after a day (FAO-56 Eq. 81, 84 to 88). Soil missing more than the day's roots can reach counts as empty. */
    public DayDone after(Day day) {
        double missing = Math.min(depletionMm, day.totalAvailableMm()) - day.rainMm() - day.wateringMm();
        double drained = Math.max(0, -missing);
        double wetted = Math.max(0, missing);
        double stress = stress(wetted, day.totalAvailableMm(), day.freeShare());
        double used = Math.min(stress * day.cropUseMm(), day.totalAvailableMm() - wetted);
        SoilWater evening = new SoilWater(Math.min(day.totalAvailableMm(), wetted + used));
        return new DayDone(evening, stress, used, drained);
    }

    /**
     * Water stress coefficient Ks (FAO-56 Eq. 84), 1 as long as the freely taken water lasts.
     *
     * @param depletionMm 0 to {@code totalAvailableMm}
     * @param totalAvailableMm 0.1 to 1000 mm
     * @param freeShare 0.1 to 0.8
     */
    public static double stress(double depletionMm, double totalAvailableMm, double freeShare) {
        within("totalAvailableMm", totalAvailableMm, 0.1, 1000, "mm");
        within("depletionMm", depletionMm, 0, totalAvailableMm, "mm");
        within("freeShare", freeShare, 0.1, 0.8, "");
        double free = freeShare * totalAvailableMm;
        return depletionMm <= free ? 1 : (totalAvailableMm - depletionMm) / (totalAvailableMm - free);
    }

    /**
     * Rain that counts: rain below a fifth of the day's reference evapotranspiration is gone before it reaches the roots (FAO-56 p. 170).
     *
     * @param rainMm 0 to 1000 mm
     * @param referenceMm ET₀ of the day, 0 to 25 mm
     */
    public static double countingRainMm(double rainMm, double referenceMm) {
        within("rainMm", rainMm, 0, 1000, "mm");
        within("referenceMm", referenceMm, 0, 25, "mm");
        return rainMm < 0.2 * referenceMm ? 0 : rainMm;
    }

    /**
     * The soil as a finger finds it, which overrules the reckoning. Own model, no source: a finger reaches 5 to 7 cm; where it is dry
     * at least the freely taken water is gone, where it is moist at most half of it, where it is wet nothing is missing.
     *
     * @param told what the finger found
     * @param day for the available water and free share of the day
     */
    public SoilWater felt(Finger told, Day day) {
        return switch (told) {
            case DRY -> new SoilWater(Math.min(day.totalAvailableMm(), Math.max(depletionMm, day.freeMm())));
            case MOIST -> new SoilWater(Math.min(depletionMm, day.freeMm() / 2));
            case WET -> FULL;
        };
    }

    /** What a finger finds at finger depth. */
    public enum Finger {
        DRY,
        MOIST,
        WET
    }
}
