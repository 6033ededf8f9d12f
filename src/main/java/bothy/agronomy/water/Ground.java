package bothy.agronomy.water;

/** What a planting stands in: open ground or a container. */
public sealed interface Ground permits OpenGround, Container {

    /**
     * A day of this ground for {@link SoilWater#after}.
     *
     * @param rainMm 0 to 1000 mm, as a rain gauge shows it
     * @param wateringLitres L for the planting or the container, 0 to 1000
     * @param cropUseMm ETc without stress, 0 to 25 mm
     * @param rootDepthM 0.01 to 3 m; of no account in a container
     * @param tabulatedFreeShare p of FAO-56 Table 22, 0.1 to 0.8; of no account in a container
     */
    SoilWater.Day day(
            double rainMm, double wateringLitres, double cropUseMm, double rootDepthM, double tabulatedFreeShare);

    /** Litres that bring a depletion back to nothing. */
    double litresMissing(SoilWater water);
}
