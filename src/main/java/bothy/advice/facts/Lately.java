package bothy.advice.facts;

/**
 * The weather of the last ten days, as observed.
 *
 * @param coldestNightC least minimum, °C
 * @param hottestDayC greatest maximum, °C
 * @param meanC mean of minima and maxima, °C
 * @param rainMm rain of all days, mm
 * @param lastRainMm rain of the last three days, mm
 * @param days how many of the days are known
 */
public record Lately(
        double coldestNightC, double hottestDayC, double meanC, double rainMm, double lastRainMm, int days) {}
