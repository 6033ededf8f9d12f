package bothy.weather;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** Forecasts in the published format: hours first, then steps of six hours, made as told. */
public final class Forecasts {
    private final List<String> steps = new ArrayList<>();
    private Instant at;

    private Forecasts(Instant from) {
        this.at = from;
    }

    public static Forecasts from(String instant) {
        return new Forecasts(Instant.parse(instant));
    }

    /** So many hours with these values; the sums over six and twelve hours stand beside those of an hour, as the service sends them. */
    public Forecasts hours(int count, double tempC, double humidityPercent, double windMs, double rainMm) {
        for (int i = 0; i < count; i++) {
            steps.add(String.format(
                    Locale.ROOT,
                    "{\"time\":\"%s\",\"data\":{\"instant\":{\"details\":{\"air_pressure_at_sea_level\":1013.2,"
                            + "\"air_temperature\":%.1f,\"relative_humidity\":%.1f,\"wind_from_direction\":121.3,\"wind_speed\":%.1f}},"
                            + "\"next_1_hours\":{\"summary\":{\"symbol_code\":\"rain\"},\"details\":{\"precipitation_amount\":%.1f}},"
                            + "\"next_6_hours\":{\"summary\":{\"symbol_code\":\"rain\"},\"details\":{\"air_temperature_max\":99,"
                            + "\"air_temperature_min\":-99,\"precipitation_amount\":%.1f}},"
                            + "\"next_12_hours\":{\"summary\":{\"symbol_code\":\"rain\"}}}}",
                    at,
                    tempC,
                    humidityPercent,
                    windMs,
                    rainMm,
                    6 * rainMm));
            at = at.plusSeconds(3600);
        }
        return this;
    }

    /** A step of six hours with its own extremes. */
    Forecasts sixHours(double tempC, double lowC, double highC, double humidityPercent, double rainMm) {
        return sums(6, tempC, lowC, highC, humidityPercent, rainMm);
    }

    /** Sums over six hours, the next step following sooner. */
    Forecasts sums(int hours, double tempC, double lowC, double highC, double humidityPercent, double rainMm) {
        steps.add(String.format(
                Locale.ROOT,
                "{\"time\":\"%s\",\"data\":{\"instant\":{\"details\":{\"air_temperature\":%.1f,\"relative_humidity\":%.1f,"
                        + "\"wind_speed\":3.0}},\"next_6_hours\":{\"summary\":{\"symbol_code\":\"cloudy\"},\"details\":{"
                        + "\"air_temperature_max\":%.1f,\"air_temperature_min\":%.1f,\"precipitation_amount\":%.1f}}}}",
                at,
                tempC,
                humidityPercent,
                highC,
                lowC,
                rainMm));
        at = at.plusSeconds(hours * 3600L);
        return this;
    }

    /** The last step of a forecast has instant values only. */
    Forecasts end(double tempC) {
        steps.add(String.format(
                Locale.ROOT,
                "{\"time\":\"%s\",\"data\":{\"instant\":{\"details\":{\"air_temperature\":%.1f}}}}",
                at,
                tempC));
        return this;
    }

    public String json() {
        StringJoiner series = new StringJoiner(",", "[", "]");
        steps.forEach(series::add);
        return "{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[10.75,59.91,12]},\"properties\":{\"meta\":{"
                + "\"updated_at\":\"2027-05-01T04:10:00Z\",\"units\":{\"air_temperature\":\"celsius\","
                + "\"precipitation_amount\":\"mm\",\"relative_humidity\":\"%\",\"wind_speed\":\"m/s\"}},\"timeseries\":"
                + series
                + "}}";
    }
}
