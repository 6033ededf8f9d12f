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
 * @param humidHours hours with a relative humidity of 90 % or more, {@code null} when unknown
 * @param windMs strongest wind without gusts, m/s, {@code null} when unknown
 */
public record WeatherDay(
        LocalDate date, Double tmin, Double tmax, Double rain, boolean observed, Double humidHours, Double windMs) {

    /** A day of which neither humidity nor wind is known. */
    public WeatherDay(LocalDate date, Double tmin, Double tmax, Double rain, boolean observed) {
        this(date, tmin, tmax, rain, observed, null, null);
    }
}
