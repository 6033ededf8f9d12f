package bothy.advice.facts;

import bothy.garden.What;
import java.time.LocalDate;

/**
 * The last time that something was done to a planting or seen on it.
 *
 * @param first the first time
 * @param on the last time
 * @param daysAgo days from the last time to today
 * @param times how many entries there are
 */
public record Latest(String planting, What what, LocalDate first, LocalDate on, int daysAgo, int times) {}
