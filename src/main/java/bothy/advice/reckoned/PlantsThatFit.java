package bothy.advice.reckoned;

/**
 * How many plants a bed of a told shape holds.
 *
 * @param plants in rows at the sheet's spacing
 * @param offsetPlants when each stands in the gap of the row before, all neighbours equally far
 * @param areaM2 area of the bed, m²
 * @param alongCm between plants in the row, cm
 * @param acrossCm between rows, cm
 */
public record PlantsThatFit(
        String planting, int plants, int offsetPlants, double areaM2, double alongCm, double acrossCm) {}
