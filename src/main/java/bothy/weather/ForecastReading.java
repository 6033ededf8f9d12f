package bothy.weather;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the forecast JSON of Locationforecast 2.0 ("compact" and "complete") as the Norwegian Meteorological Institute documents it: a
 * GeoJSON feature whose properties hold a series of times, each with instant values and with sums over the next 1, 6 and 12 hours.
 */
final class ForecastReading {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Duration LONGEST = Duration.ofHours(6);

    private ForecastReading() {}

    /**
     * The steps in order.
     *
     * @throws ForecastUnreadable saying what is missing or impossible
     */
    static List<ForecastStep> read(byte[] json) throws ForecastUnreadable {
        JsonNode series = tree(json).path("properties").path("timeseries");
        if (!series.isArray() || series.isEmpty()) {
            throw new ForecastUnreadable("it has no properties.timeseries with a step");
        }
        List<ForecastStep> steps = new ArrayList<>();
        for (int i = 0; i < series.size(); i++) {
            Instant from = time(series.get(i));
            Instant next = i + 1 < series.size() ? time(series.get(i + 1)) : null;
            if (next != null && !next.isAfter(from)) {
                throw new ForecastUnreadable("step " + (i + 1) + " is not later than step " + i);
            }
            steps.add(step(from, next, series.get(i).path("data")));
        }
        return steps;
    }

    private static JsonNode tree(byte[] json) throws ForecastUnreadable {
        try {
            return MAPPER.readTree(json);
        } catch (IOException broken) {
            throw new ForecastUnreadable("it is no JSON");
        }
    }

    private static Instant time(JsonNode step) throws ForecastUnreadable {
        try {
            return Instant.parse(step.path("time").asText());
        } catch (DateTimeException broken) {
            throw new ForecastUnreadable("\"" + step.path("time").asText() + "\" is no time");
        }
    }

    private static ForecastStep step(Instant from, Instant next, JsonNode data) throws ForecastUnreadable {
        JsonNode now = data.path("instant").path("details");
        JsonNode hour = data.path("next_1_hours").path("details");
        JsonNode six = data.path("next_6_hours").path("details");
        Duration span = hour.isMissingNode() ? (six.isMissingNode() ? Duration.ZERO : LONGEST) : Duration.ofHours(1);
        Duration untilNext = next == null ? span : Duration.between(from, next);
        Duration length = untilNext.compareTo(LONGEST) > 0 ? LONGEST : untilNext;
        boolean hourly = length.compareTo(Duration.ofHours(1)) <= 0;
        return new ForecastStep(
                from,
                from.plus(length),
                value(now, "air_temperature", -90, 60),
                hourly ? null : value(six, "air_temperature_min", -90, 60),
                hourly ? null : value(six, "air_temperature_max", -90, 60),
                value(now, "relative_humidity", 0, 110),
                value(now, "wind_speed", 0, 120),
                rain(hour, six, length, hourly));
    }

    /** Rain of the step: that of the next hour, or the step's part of the next six. */
    private static Double rain(JsonNode hour, JsonNode six, Duration length, boolean hourly) throws ForecastUnreadable {
        Double inHour = value(hour, "precipitation_amount", 0, 500);
        Double inSix = value(six, "precipitation_amount", 0, 1500);
        if (hourly && inHour != null) {
            return inHour * length.toMinutes() / 60;
        }
        return inSix == null ? null : inSix * length.toMinutes() / LONGEST.toMinutes();
    }

    private static Double value(JsonNode details, String name, double low, double high) throws ForecastUnreadable {
        JsonNode node = details.path(name);
        if (node.isMissingNode() || node.isNull()) {
            return null;
        }
        if (!node.isNumber() || !(node.asDouble() >= low && node.asDouble() <= high)) {
            throw new ForecastUnreadable(name + " is " + node + ", which cannot be");
        }
        return node.asDouble();
    }
}
