package bothy.advice.reckoning;

import bothy.advice.reckoned.ForecastAhead;
import bothy.garden.Inquiry;
import bothy.garden.WeatherDay;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The days ahead in one look, for whoever asks what weather comes. */
public final class ForecastReckoning {
    private static final Set<String> TOPICS =
            Set.of("frost", "forecast", "forecast-frost", "forecast-rain", "forecast-heat", "forecast-wind");
    /** As far as forecasts reach; what is kept of one of a record beyond that is none. */
    private static final int DAYS_AHEAD = 10;

    private static final double KMH_PER_MS = 3.6;

    private ForecastReckoning() {}

    /** @param weather days in order, each once */
    public static Optional<ForecastAhead> of(List<Inquiry> inquiries, List<WeatherDay> weather, LocalDate today) {
        if (inquiries.stream().noneMatch(inquiry -> inquiry.topic() != null && TOPICS.contains(inquiry.topic()))) {
            return Optional.empty();
        }
        LocalDate last = today.plusDays(DAYS_AHEAD);
        List<WeatherDay> ahead = weather.stream()
                .filter(day -> !day.date().isBefore(today) && !day.date().isAfter(last))
                .toList();
        // What is left of today is no forecast to speak of.
        if (ahead.stream().noneMatch(day -> day.date().isAfter(today))) {
            return Optional.empty();
        }
        Optional<WeatherDay> coldest = least(ahead, WeatherDay::tmin, 1);
        Optional<WeatherDay> hottest = least(ahead, WeatherDay::tmax, -1);
        Optional<WeatherDay> wettest = least(ahead, WeatherDay::rain, -1);
        Optional<WeatherDay> windiest = least(ahead, WeatherDay::windMs, -1);
        return Optional.of(new ForecastAhead(
                ahead.get(ahead.size() - 1).date(),
                coldest.map(WeatherDay::tmin).orElse(null),
                coldest.map(WeatherDay::date).orElse(null),
                hottest.map(WeatherDay::tmax).orElse(null),
                hottest.map(WeatherDay::date).orElse(null),
                wettest.map(any -> ahead.stream()
                                .map(WeatherDay::rain)
                                .filter(Objects::nonNull)
                                .mapToDouble(Double::doubleValue)
                                .sum())
                        .orElse(null),
                wettest.map(WeatherDay::rain).orElse(null),
                wettest.map(WeatherDay::date).orElse(null),
                windiest.map(day -> day.windMs() * KMH_PER_MS).orElse(null),
                windiest.map(WeatherDay::date).orElse(null)));
    }

    /** The first day on which a figure is least (sign 1) or greatest (−1); days without it are passed over. */
    private static Optional<WeatherDay> least(List<WeatherDay> ahead, Function<WeatherDay, Double> figure, int sign) {
        return ahead.stream()
                .filter(day -> figure.apply(day) != null)
                .min(Comparator.comparingDouble(day -> sign * figure.apply(day)));
    }
}
