package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * A bed or a part of it.
 *
 * @param soil its texture
 * @param areaM2 ground of the planting, 0.01 to 100 000 m²
 */
public record OpenGround(Soil soil, double areaM2) implements Ground {
    private static final double MOST_MM = 1000;

    public OpenGround {
        within("areaM2", areaM2, 0.01, 100_000, "m²");
    }

    @Override
    public SoilWater.Day day(
            double rainMm, double wateringLitres, double cropUseMm, double rootDepthM, double tabulatedFreeShare) {
        double depthMm = Math.min(MOST_MM, Watering.depthMm(wateringLitres, areaM2));
        double free = soil.freeShare(tabulatedFreeShare, cropUseMm);
        return new SoilWater.Day(rainMm, depthMm, cropUseMm, soil.totalAvailableMm(rootDepthM), free);
    }

    @Override
    public double litresMissing(SoilWater water) {
        return Watering.litres(water.depletionMm(), areaM2);
    }
}
