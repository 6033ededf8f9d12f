package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * What a planting may bear.
 *
 * @param plants plants that it was reckoned for
 * @param rowM length of their row, m; {@code null} where the yield is published by the plant
 * @param yieldKg kg
 * @param told whether the number of plants was told
 */
public record YieldExpected(String planting, int plants, Double rowM, Range yieldKg, boolean told) {}
