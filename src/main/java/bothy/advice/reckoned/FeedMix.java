package bothy.advice.reckoned;

/**
 * What a feed's label says for another can.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param feedMl feed for the can, ml, never more than the label says
 * @param canLitres the can, L
 * @param labelMl feed that the label says, ml
 * @param labelLitres in so much water, L
 */
public record FeedMix(String planting, double feedMl, double canLitres, double labelMl, double labelLitres) {}
