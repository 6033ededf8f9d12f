package bothy.weather;

import java.net.http.HttpHeaders;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** What is known of the weather at one place, how long it holds, and when to ask again. Guarded by its own lock. */
final class Place {
    private static final Duration SHORTEST = Duration.ofMinutes(10);
    private static final Duration LONGEST = Duration.ofHours(12);
    private static final int DAYS_KEPT = 30;

    private final String query;
    private final NavigableMap<LocalDate, ForecastDay> days = new TreeMap<>();
    private List<ForecastStep> steps = List.of();
    private ZoneId summedUpIn;
    private String lastModified;
    private Instant askAgain = Instant.MIN;

    Place(String query) {
        this.query = query;
    }

    String query() {
        return query;
    }

    boolean due(Instant now) {
        return !now.isBefore(askAgain);
    }

    Optional<String> lastModified() {
        return Optional.ofNullable(lastModified);
    }

    void took(Instant now, HttpHeaders headers, List<ForecastStep> read) {
        steps = read;
        summedUpIn = null;
        lastModified = headers.firstValue("Last-Modified").orElse(null);
        holds(now, headers);
    }

    void unchanged(Instant now, HttpHeaders headers) {
        holds(now, headers);
    }

    private void holds(Instant now, HttpHeaders headers) {
        Instant least = now.plus(SHORTEST);
        Instant most = now.plus(LONGEST);
        Instant stale = headers.firstValue("Expires").flatMap(Place::instant).orElse(least);
        askAgain = stale.isBefore(least) ? least : stale.isAfter(most) ? most : stale;
    }

    private static Optional<Instant> instant(String httpDate) {
        try {
            return Optional.of(Instant.from(DateTimeFormatter.RFC_1123_DATE_TIME.parse(httpDate)));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }

    /** Days in the grower's zone; a day that this forecast covers less of than an earlier one did stays as it was. */
    List<ForecastDay> days(ZoneId zone) {
        if (!steps.isEmpty() && !zone.equals(summedUpIn)) {
            if (summedUpIn != null) {
                days.clear();
            }
            ForecastDays.in(zone, steps)
                    .forEach(day -> days.merge(
                            day.day().date(),
                            day,
                            (old, fresh) -> fresh.hours() >= Math.min(23, old.hours()) ? fresh : old));
            days.headMap(days.lastKey().minusDays(DAYS_KEPT)).clear();
            summedUpIn = zone;
        }
        return List.copyOf(days.values());
    }
}
