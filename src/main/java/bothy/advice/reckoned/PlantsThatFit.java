package bothy.advice.reckoned;

/**
 * How many plants a bed of a told shape holds.
 *
 * @param plants in rows at the sheet's spacing
 * @param squarePlants on a square that gives each the same ground; {@code null} in a single row
 * @param offsetPlants when each stands in the gap of the row before, all neighbours as far as on that square; {@code null} in a single row
 * @param areaM2 area of the bed, m²
 * @param alongCm between plants in the row, cm
 * @param acrossCm between rows, cm
 * @param evenCm side of the square, cm: the geometric mean of both spacings
 */
public record PlantsThatFit(
        String planting,
        int plants,
        Integer squarePlants,
        Integer offsetPlants,
        double areaM2,
        double alongCm,
        double acrossCm,
        double evenCm) {}
