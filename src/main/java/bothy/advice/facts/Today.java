package bothy.advice.facts;

import java.time.LocalDate;

/**
 * The grower's day, for rules that apply on some days and not on others: before a frost, a week after planting out. A rule that only
 * reckons a date from it, or holds one fact's date against it, takes the global {@code today}: a join with this fact costs memory and
 * time in every run, fired or not.
 */
public record Today(LocalDate day) {

    public LocalDate daysAgo(double days) {
        return day.minusDays(Math.round(days));
    }

    public LocalDate inDays(double days) {
        return day.plusDays(Math.round(days));
    }
}
