package bothy.advice.facts;

/**
 * The size that the message at hand tells of what may be picked.
 *
 * @param toldCm cm
 */
public record SizeTold(String planting, double toldCm) {}
