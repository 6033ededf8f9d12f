package bothy.advice.reckoned;

/**
 * What a powder's label says for another can.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param feedG powder for the can, g, never more than the label says
 * @param canLitres the can, L
 * @param labelG powder that the label says, g
 * @param labelLitres in so much water, L
 */
public record FeedWeighed(String planting, double feedG, double canLitres, double labelG, double labelLitres) {}
