package bothy.agronomy;

import java.time.LocalDate;

/**
 * A span of days, both ends included.
 *
 * @param from first day
 * @param to last day, not before {@code from}
 */
public record Window(LocalDate from, LocalDate to) {
    public Window {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("a window cannot end on " + to + " before it begins on " + from);
        }
    }

    /** Whether a day lies in the window. */
    public boolean contains(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /** Whether the window is past on a day. */
    public boolean over(LocalDate day) {
        return day.isAfter(to);
    }

    /** The window moved by so many days, later when above 0. */
    public Window plusDays(long days) {
        return new Window(from.plusDays(days), to.plusDays(days));
    }
}
