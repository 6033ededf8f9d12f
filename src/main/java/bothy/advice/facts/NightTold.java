package bothy.advice.facts;

/**
 * How cold the message at hand tells a coming night to be, beside a question when something goes out.
 *
 * @param nightC °C
 */
public record NightTold(String planting, double nightC) {}
