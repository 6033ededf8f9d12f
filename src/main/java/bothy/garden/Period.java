package bothy.garden;

import java.time.LocalDate;

/**
 * Days from one to another.
 *
 * @param from the first day
 * @param to the last day
 */
public record Period(LocalDate from, LocalDate to) {
    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
