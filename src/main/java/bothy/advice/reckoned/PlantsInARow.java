package bothy.advice.reckoned;

/**
 * Plants at the grower's own spacing.
 *
 * @param planting id of the planting or packet
 * @param plants how many go in, half a spacing left to either end
 * @param rowM length of the row, m; {@code null} where a whole bed is filled
 * @param bedM2 the bed, m²; {@code null} for one row
 * @param apartCm from plant to plant as the grower told it, cm
 * @param spare pieces more that are worth having, of what is set whole; {@code null} for a crop from seed
 */
public record PlantsInARow(String planting, int plants, Double rowM, Double bedM2, double apartCm, Integer spare) {}
