package bothy.advice.reckoned;

/**
 * A label told in caps or scoops for another can, in parts of them: how much one holds need not be known.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param capParts caps for the can, down to the next tenth, never more than the label says
 * @param share the same in a few words, by its phrase; {@code null} where it is a cap or more
 * @param canLitres the can, L
 * @param labelCaps caps that the label says
 * @param labelLitres in so much water, L
 */
public record CapsForCan(
        String planting, double capParts, String share, double canLitres, double labelCaps, double labelLitres) {}
