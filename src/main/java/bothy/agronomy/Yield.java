package bothy.agronomy;

/**
 * What a planting may bear.
 *
 * @param lowKg in a poor year, kg
 * @param highKg in a good one, kg
 */
public record Yield(double lowKg, double highKg) {
    public Yield {
        Stated.ordered("yield", lowKg, highKg, 0, 1_000_000, "kg");
    }

    /**
     * @param plants plants that bear, 0 to 100 000
     * @param lowKgPerPlant published low end for one plant, 0 to 10 kg
     * @param highKgPerPlant high end, 0 to 10 kg
     */
    public static Yield ofPlants(int plants, double lowKgPerPlant, double highKgPerPlant) {
        Stated.within("plants", plants, 0, 100_000, "plants");
        Stated.ordered("kgPerPlant", lowKgPerPlant, highKgPerPlant, 0, 10, "kg");
        return new Yield(plants * lowKgPerPlant, plants * highKgPerPlant);
    }

    /**
     * @param areaM2 area or row length that bears, 0 to 10 000 m² (or m)
     * @param lowKgEach published low end for each m² (or m of row), 0 to 100 kg
     * @param highKgEach high end, 0 to 100 kg
     */
    public static Yield ofArea(double areaM2, double lowKgEach, double highKgEach) {
        Stated.within("areaM2", areaM2, 0, 10_000, "m²");
        Stated.ordered("kgEach", lowKgEach, highKgEach, 0, 100, "kg");
        return new Yield(areaM2 * lowKgEach, areaM2 * highKgEach);
    }
}
