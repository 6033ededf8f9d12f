package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * Days without freely taken water, and then plenty.
 *
 * @param dryDays days running on which the freely taken water was used up
 * @param waterMm rain and watering after them, or forecast, mm
 * @param wetOn day on which it came or is to come
 * @param told whether the weather was known
 */
public record DryThenWet(String planting, int dryDays, double waterMm, LocalDate wetOn, boolean told) {}
