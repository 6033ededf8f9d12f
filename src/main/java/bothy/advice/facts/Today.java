package bothy.advice.facts;

import java.time.LocalDate;

/**
 * The grower's day, for rules that apply on some days and not on others. A rule that only reckons dates from it takes the global
 * {@code today}: whatever has to wait for a fact costs time in every run.
 */
public record Today(LocalDate day) {

    public LocalDate daysAgo(double days) {
        return day.minusDays(Math.round(days));
    }

    public LocalDate inDays(double days) {
        return day.plusDays(Math.round(days));
    }
}
