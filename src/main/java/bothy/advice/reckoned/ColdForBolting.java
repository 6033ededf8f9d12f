package bothy.advice.reckoned;

/**
 * Cold days that bring young biennials to flower.
 *
 * @param coldDays days with a mean of 5 to 10 °C since it came up
 */
public record ColdForBolting(String planting, int coldDays) {}
