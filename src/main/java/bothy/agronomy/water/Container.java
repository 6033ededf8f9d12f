package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * A pot, trough or growbag as a small reservoir. Own model: its water is spread over the leaves' area, so that the same daily balance
 * as in open ground holds.
 *
 * @param compostLitres compost, 0.05 to 1000 L
 * @param openingM2 area that rain falls in by, 0.0005 to 10 m²; 0 under a roof
 * @param leafAreaM2 ground that the leaves shade, at least a quarter of the opening counts, to 20 m²
 */
public record Container(double compostLitres, double openingM2, double leafAreaM2) implements Ground {
    /** Water that plants can take from a litre of wet compost, L: common practice, 20 to 30 % of the volume. */
    public static final double AVAILABLE_SHARE = 0.25;

    /** Share of it that is taken freely: common practice, water when half is gone. */
    public static final double FREE_SHARE = 0.5;

    private static final double LEAST_AREA_M2 = 0.0005;

    public Container {
        within("compostLitres", compostLitres, 0.05, 1000, "L");
        within("openingM2", openingM2, 0, 10, "m²");
        within("leafAreaM2", leafAreaM2, 0, 20, "m²");
        leafAreaM2 = Math.max(leafAreaM2, Math.max(LEAST_AREA_M2, openingM2 / 4));
    }

    /** Water that plants can take from the full container, L. */
    public double availableLitres() {
        return AVAILABLE_SHARE * compostLitres;
    }

    /**
     * A day of the container, for {@link SoilWater#after}; depths are mm over the leaves' area.
     *
     * @param rainMm 0 to 100 mm
     * @param wateringLitres 0 to 100 L, what the compost holds or lets run through
     * @param cropUseMm ETc without stress over the leaves' area, 0 to 25 mm
     */
    public SoilWater.Day day(double rainMm, double wateringLitres, double cropUseMm) {
        within("rainMm", rainMm, 0, 1000, "mm");
        within("wateringLitres", wateringLitres, 0, 1000, "L");
        double rain = Math.min(1000, rainMm * openingM2 / leafAreaM2);
        double watering = Math.min(1000, wateringLitres / leafAreaM2);
        return new SoilWater.Day(rain, watering, cropUseMm, totalAvailableMm(), FREE_SHARE);
    }

    /** Water that plants can take from the full container, mm over the leaves' area, held to 1000. */
    public double totalAvailableMm() {
        return Math.max(0.1, Math.min(1000, availableLitres() / leafAreaM2));
    }

    @Override
    public SoilWater.Day day(
            double rainMm, double wateringLitres, double cropUseMm, double rootDepthM, double tabulatedFreeShare) {
        return day(rainMm, wateringLitres, cropUseMm);
    }

    /** Litres that fill the container up. */
    @Override
    public double litresMissing(SoilWater water) {
        return Math.min(availableLitres(), water.depletionMm() * leafAreaM2);
    }
}
