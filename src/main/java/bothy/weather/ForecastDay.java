package bothy.weather;

import bothy.garden.WeatherDay;

/**
 * A forecast day with more than the plain day tells. A component is {@code null} where the forecast does not tell it.
 *
 * @param day temperatures and rain
 * @param humidHours hours with a relative humidity of 90 % or more
 * @param lowestHumidityPercent lowest relative humidity, %
 * @param windMs strongest wind at 10 m, m/s, without gusts
 * @param hours hours of the day that the forecast covers, to 25
 */
public record ForecastDay(
        WeatherDay day, Double humidHours, Double lowestHumidityPercent, Double windMs, double hours) {

    /** The day with its humid hours and wind. */
    WeatherDay whole() {
        return new WeatherDay(day.date(), day.tmin(), day.tmax(), day.rain(), day.observed(), humidHours, windMs);
    }
}
