package bothy.garden;

import java.time.LocalDate;

/**
 * The weather of one day at the grower's place.
 *
 * @param date the day
 * @param tmin lowest air temperature, °C, {@code null} when unknown
 * @param tmax highest air temperature, °C, {@code null} when unknown
 * @param rain mm of rain, {@code null} when unknown
 * @param observed true for what was measured or told, false for a forecast
 */
public record WeatherDay(LocalDate date, Double tmin, Double tmax, Double rain, boolean observed) {}
