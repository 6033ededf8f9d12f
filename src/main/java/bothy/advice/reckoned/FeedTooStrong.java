package bothy.advice.reckoned;

/**
 * A label told that no liquid feed for watering has: stronger than one part in ten, or out of reach.
 *
 * @param planting id of the planting asked about, {@code null} for none
 */
public record FeedTooStrong(String planting, double labelMl, double labelLitres) {}
