package bothy.advice.reckoned;

/**
 * A label told in grams that no powder for watering has.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param labelG powder that was told, g
 * @param labelLitres in so much water, L
 */
public record PowderTooStrong(String planting, double labelG, double labelLitres) {}
