package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * Plants of a crop that share a pot or bag of told size.
 *
 * @param planting id of the planting or packet
 * @param plants how many it feeds, from roomy to close; {@code null} where it is too small for one
 * @param bagLitres the pot or bag told, L
 * @param eachLitres compost that one plant wants, L
 */
public record PlantsToAPot(String planting, Range plants, double bagLitres, Range eachLitres) {}
