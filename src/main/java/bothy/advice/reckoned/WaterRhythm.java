package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * How a planting is watered on typical days, where neither weather nor water of the last fortnight is known.
 *
 * @param everyDays days from one watering to the next in dry weather
 * @param litresPerPlant L for a plant each time
 * @param allLitres L for all plants of it
 * @param cans cans to carry for all
 * @param canLitres size of the can, L
 * @param typicalMm what grass uses on such a day, mm
 */
public record WaterRhythm(
        String planting,
        int everyDays,
        double litresPerPlant,
        double allLitres,
        double cans,
        double canLitres,
        Range typicalMm) {}
