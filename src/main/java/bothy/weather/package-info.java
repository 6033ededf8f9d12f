/**
 * Observed and forecast days at the grower's place: a forecast fetched over HTTP from the Norwegian Meteorological Institute and
 * summed up into days of the grower's time zone, and a weather station's record read from CSV. A source that is down knows
 * nothing new and says why; it never throws. The clock, the address and the name to call with are handed in.
 */
package bothy.weather;
