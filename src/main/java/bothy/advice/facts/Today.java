package bothy.advice.facts;

import java.time.LocalDate;

/** The grower's day. */
public record Today(LocalDate day) {

    public LocalDate daysAgo(double days) {
        return day.minusDays(Math.round(days));
    }

    public LocalDate inDays(double days) {
        return day.plusDays(Math.round(days));
    }
}
