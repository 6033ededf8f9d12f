package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * A night that may harm a planting.
 *
 * @param coldOn morning before which it is cold
 * @param tminC lowest temperature forecast, °C
 * @param harmedBelowC temperature that harms the crop, °C
 * @param chancePercent chance of harm, %
 */
public record NightRisk(String planting, LocalDate coldOn, double tminC, double harmedBelowC, int chancePercent) {}
