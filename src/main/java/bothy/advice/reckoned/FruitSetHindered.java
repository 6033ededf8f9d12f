package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * Temperatures at which flowers do not set.
 *
 * @param hindrance "cold-night", "warm-night" or "hot-day"
 * @param hinderedOn first day of it, from yesterday on
 * @param tempC the temperature, °C
 * @param limitC the limit that it passes, °C
 */
public record FruitSetHindered(String planting, String hindrance, LocalDate hinderedOn, double tempC, double limitC) {}
