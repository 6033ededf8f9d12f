package bothy.weather;

import java.time.Duration;
import java.time.Instant;

/**
 * One step of a forecast. A component is {@code null} where the forecast does not tell it.
 *
 * @param from beginning of the step
 * @param to its end, which is the next step's beginning
 * @param tempC air temperature at the beginning, °C
 * @param lowC lowest air temperature in a step of several hours, °C
 * @param highC highest, °C
 * @param humidityPercent relative humidity at the beginning, %
 * @param windMs wind at 10 m at the beginning, m/s
 * @param rainMm rain or melted snow in the step, mm
 */
record ForecastStep(
        Instant from,
        Instant to,
        Double tempC,
        Double lowC,
        Double highC,
        Double humidityPercent,
        Double windMs,
        Double rainMm) {

    double hours() {
        return Duration.between(from, to).toMinutes() / 60.0;
    }
}
