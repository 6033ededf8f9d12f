package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * Weather in which late blight spreads.
 *
 * @param blightOn the day on which the criterion is met
 * @param criterion "hutton", or "hyre" where humid hours are not known
 * @param rainMm rain of the ten days up to it, mm
 * @param told whether humid hours were known
 */
public record BlightSpell(String planting, LocalDate blightOn, String criterion, double rainMm, boolean told) {}
