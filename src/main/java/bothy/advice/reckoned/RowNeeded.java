package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * The row that so many plants want.
 *
 * @param planting id of the planting or packet
 * @param plants how many are to stand in it
 * @param rowM its length, half a spacing left to either end, m
 * @param apartCm from plant to plant as the grower told it, else as the sheet says, cm
 */
public record RowNeeded(String planting, int plants, Range rowM, Range apartCm) {}
