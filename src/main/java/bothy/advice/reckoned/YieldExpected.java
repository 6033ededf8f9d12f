package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * What a planting may bear.
 *
 * @param plants plants that it was reckoned for, {@code null} for a length of row or a single plant
 * @param rowM length of row that was told, m, {@code null} for plants
 * @param each "a-plant" where neither was told, else {@code null}
 * @param yieldKg kg
 * @param told whether the number of plants or the length was told
 */
public record YieldExpected(String planting, Integer plants, Double rowM, String each, Range yieldKg, boolean told) {}
