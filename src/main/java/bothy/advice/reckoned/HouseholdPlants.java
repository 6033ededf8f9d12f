package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * How many plants of a crop feed a household.
 *
 * @param plantsPerPerson for each person
 * @param people how many people were told; {@code null} when none were
 * @param plants for all of them, whole plants; {@code null} when no number of people was told
 */
public record HouseholdPlants(String planting, Range plantsPerPerson, Integer people, Range plants) {}
