package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * How a planting is watered on typical days, where neither weather nor water of the last fortnight is known.
 *
 * @param everyDays days from one watering to the next in dry weather
 * @param litresPerPlant L for a plant each time
 * @param allLitres L for all plants of it, {@code null} when nobody counted them
 * @param cans cans to carry for all, {@code null} when nobody counted the plants
 * @param canLitres size of the can, L
 * @param typicalMm what grass uses on such a day, mm
 */
public record WaterRhythm(
        String planting,
        int everyDays,
        double litresPerPlant,
        Double allLitres,
        Double cans,
        double canLitres,
        Range typicalMm) {}
