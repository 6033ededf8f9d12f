package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * The water of a planting as reckoned day by day.
 *
 * @param missingMm water missing from the rooted soil, mm
 * @param freeMm water that may be missing before the plants suffer, mm
 * @param nextOn next day to water, {@code null} when none of the days ahead needs it
 * @param litresPerPlant L that fill up what one plant's roots can reach, on that day
 * @param allLitres L for all plants of it, {@code null} when nobody counted them
 * @param cans cans to carry for all, {@code null} when nobody counted the plants
 * @param canLitres size of the can, L
 * @param basis what it rests on: "weather-known", "weather-in-part", "weather-ahead" (only the forecast) or "weather-typical"
 * @param told whether weather, soil and number of plants were all known
 */
public record WaterBalance(
        String planting,
        double missingMm,
        double freeMm,
        LocalDate nextOn,
        double litresPerPlant,
        Double allLitres,
        Double cans,
        double canLitres,
        String basis,
        boolean told) {}
