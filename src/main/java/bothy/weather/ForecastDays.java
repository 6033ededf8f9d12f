package bothy.weather;

import bothy.garden.WeatherDay;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Sums up a forecast's steps into days of the grower's zone. Of a day that the forecast covers in part only that is told which the
 * part decides: the lowest temperature when the hours before sunrise are in it (3 to 7 o'clock), the highest when the afternoon is (noon
 * to 5), rain and humid hours when at least 18 hours are.
 */
final class ForecastDays {
    private static final double HUMID_PERCENT = 90;
    private static final double MOST_OF_THE_DAY = 18;

    private ForecastDays() {}

    static List<ForecastDay> in(ZoneId zone, List<ForecastStep> steps) {
        List<ForecastDay> days = new ArrayList<>();
        LocalDate last = steps.get(steps.size() - 1).to().atZone(zone).toLocalDate();
        for (LocalDate date = steps.get(0).from().atZone(zone).toLocalDate();
                !date.isAfter(last);
                date = date.plusDays(1)) {
            ForecastDay day = day(date, zone, steps);
            if (day.hours() > 0) {
                days.add(day);
            }
        }
        return days;
    }

    private static ForecastDay day(LocalDate date, ZoneId zone, List<ForecastStep> steps) {
        Instant start = date.atStartOfDay(zone).toInstant();
        Instant end = date.plusDays(1).atStartOfDay(zone).toInstant();
        List<ForecastStep> within =
                steps.stream().filter(step -> hours(step, start, end) > 0).toList();
        double covered =
                within.stream().mapToDouble(step -> hours(step, start, end)).sum();
        boolean most = covered >= MOST_OF_THE_DAY;
        Double low = covers(date, zone, 3, 7, within) ? extreme(within, start, -1) : null;
        Double high = covers(date, zone, 12, 17, within) ? extreme(within, start, 1) : null;
        return new ForecastDay(
                new WeatherDay(date, low, high, most ? rain(within, start, end) : null, false),
                most ? humidHours(within, start, end) : null,
                within.stream()
                        .map(ForecastStep::humidityPercent)
                        .filter(Objects::nonNull)
                        .min(Double::compare)
                        .orElse(null),
                within.stream()
                        .map(ForecastStep::windMs)
                        .filter(Objects::nonNull)
                        .max(Double::compare)
                        .orElse(null),
                covered);
    }

    private static double hours(ForecastStep step, Instant start, Instant end) {
        Instant from = step.from().isAfter(start) ? step.from() : start;
        Instant to = step.to().isBefore(end) ? step.to() : end;
        return from.isBefore(to) ? Duration.between(from, to).toMinutes() / 60.0 : 0;
    }

    private static boolean covers(LocalDate date, ZoneId zone, int fromHour, int toHour, List<ForecastStep> steps) {
        Instant from = date.atTime(LocalTime.of(fromHour, 0)).atZone(zone).toInstant();
        Instant to = date.atTime(LocalTime.of(toHour, 0)).atZone(zone).toInstant();
        double needed = Duration.between(from, to).toMinutes() / 60.0;
        return steps.stream().mapToDouble(step -> hours(step, from, to)).sum() >= needed - 1e-9;
    }

    /** Lowest (sign −1) or highest (1) temperature; a step that began the day before counts only with its extremes. */
    private static Double extreme(List<ForecastStep> steps, Instant start, int sign) {
        Function<ForecastStep, Double> inStep = sign < 0 ? ForecastStep::lowC : ForecastStep::highC;
        return steps.stream()
                .flatMap(step -> Stream.of(step.from().isBefore(start) ? null : step.tempC(), inStep.apply(step)))
                .filter(Objects::nonNull)
                .max((one, other) -> sign * Double.compare(one, other))
                .orElse(null);
    }

    private static Double rain(List<ForecastStep> steps, Instant start, Instant end) {
        if (steps.stream().allMatch(step -> step.rainMm() == null)) {
            return null;
        }
        double sum = steps.stream()
                .filter(step -> step.rainMm() != null)
                .mapToDouble(step -> step.rainMm() * hours(step, start, end) / step.hours())
                .sum();
        return Math.round(sum * 10) / 10.0;
    }

    private static Double humidHours(List<ForecastStep> steps, Instant start, Instant end) {
        if (steps.stream().allMatch(step -> step.humidityPercent() == null)) {
            return null;
        }
        return steps.stream()
                .filter(step -> step.humidityPercent() != null && step.humidityPercent() >= HUMID_PERCENT)
                .mapToDouble(step -> hours(step, start, end))
                .sum();
    }
}
