package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * A windy day.
 *
 * @param windOn the day
 * @param windMs strongest wind without gusts, m/s
 * @param windKmh the same, km/h
 */
public record WindAhead(LocalDate windOn, double windMs, double windKmh) {}
