package bothy.advice.facts;

/**
 * How warm it is where a planting stands.
 *
 * @param tempC °C
 * @param told whether the grower told it (false: assumed from the place or taken from the weather)
 */
public record Warmth(String planting, double tempC, boolean told) implements Assumable {}
