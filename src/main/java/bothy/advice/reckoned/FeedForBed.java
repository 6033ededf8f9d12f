package bothy.advice.reckoned;

/**
 * What a solid feed's rate comes to on a bed.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param allKg feed for the whole bed, kg
 * @param rateKg feed that the label gives to a square metre, kg
 * @param areaM2 the bed, m²
 */
public record FeedForBed(String planting, double allKg, double rateKg, double areaM2) {}
