package bothy.reading.said;

import java.time.LocalDate;

/**
 * A day told.
 *
 * @param past the day meant when it is over, {@code null} when it cannot be told
 * @param future the day meant when it is to come, {@code null} when it cannot be told
 * @param sort how well the day is told
 */
public record DaySaid(int start, int end, LocalDate past, LocalDate future, Sort sort) implements Span {

    /** How well a day is told. */
    public enum Sort {
        /** One day. */
        EXACT,
        /** One day with its year. */
        YEARLY,
        /** About that day: "start of May". */
        ABOUT,
        /** Only the grower knows which. */
        UNKNOWN,
        /** There is no such day. */
        IMPOSSIBLE
    }

    public static DaySaid exact(int start, int end, LocalDate day) {
        return new DaySaid(start, end, day, day, Sort.EXACT);
    }

    public static DaySaid without(int start, int end, Sort sort) {
        return new DaySaid(start, end, null, null, sort);
    }

    public DaySaid spanning(int newStart, int newEnd) {
        return new DaySaid(newStart, newEnd, past, future, sort);
    }

    public DaySaid plusDays(int days) {
        return new DaySaid(start, end, past.plusDays(days), future.plusDays(days), sort);
    }

    public DaySaid as(Sort other) {
        return new DaySaid(start, end, past, future, other);
    }

    public boolean known() {
        return past != null;
    }
}
