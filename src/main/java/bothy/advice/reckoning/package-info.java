/**
 * Reckons the facts of {@code bothy.advice.reckoned} for one planting on one day: the formulas of agronomy fed from diary, sheet and
 * weather. What is told out of range is left out, so that the last good figure stands; nothing here decides.
 */
package bothy.advice.reckoning;
