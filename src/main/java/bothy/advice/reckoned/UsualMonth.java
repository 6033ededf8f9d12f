package bothy.advice.reckoned;

/**
 * A month at the grower's place in the mean of a station's record.
 *
 * @param month its name
 * @param rainMm rain of the month, mm
 * @param yearRainMm rain of the year, mm
 * @param nightC mean of the lowest temperatures, °C
 * @param dayC mean of the highest, °C
 * @param degreeDays degree days above 10 °C of the month, °C·d
 * @param years whole months of that name in the record
 */
public record UsualMonth(
        String month, double rainMm, double yearRainMm, double nightC, double dayC, double degreeDays, int years) {}
