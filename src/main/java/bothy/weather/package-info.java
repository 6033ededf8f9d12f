/** Observed and forecast days at the grower's place. */
package bothy.weather;
