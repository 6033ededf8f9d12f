package bothy.advice.reckoned;

import bothy.almanac.Range;

/**
 * How long drippers run to give a plant what it wants at a time.
 *
 * @param dripMinutes minutes, to the next five
 * @param wantedLitres L for a plant at a time
 * @param hourlyLitres L that the drippers at one plant give in an hour
 */
public record DripTime(String planting, Range dripMinutes, Range wantedLitres, double hourlyLitres) {}
