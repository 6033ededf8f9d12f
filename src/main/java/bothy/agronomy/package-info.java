/**
 * The formulas of growing: emergence, seasons and frost, seed numbers, degree days, feed, storage and weather risk; those of water
 * stand in {@code bothy.agronomy.water}. Numbers go in, a number comes out. Every parameter name carries its unit, every formula its
 * source and the range in which it holds; outside of that it refuses with a sentence instead of extrapolating. Nothing here
 * reads a clock, keeps state or imports another room. Where no source was found the comment says "own model" and why.
 */
package bothy.agronomy;
