package bothy.garden;

/**
 * The strength that a feed's label says.
 *
 * @param feedMl feed, ml, above 0
 * @param waterLitres in so much water, L, above 0
 */
public record FeedLabel(double feedMl, double waterLitres) {}
