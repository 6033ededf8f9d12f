package bothy.agronomy;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A calendar for getting seedlings used to the open. Common practice, no single source: begin with two sheltered hours, stay out a
 * little longer each day, and leave them out for the last two nights when no frost is about.
 */
public final class HardeningOff {
    private static final int FIRST_HOURS = 2;
    private static final int LONGEST_DAY_HOURS = 10;
    private static final int NIGHTS_OUT = 2;

    private HardeningOff() {}

    /**
     * @param date the day
     * @param hoursOutside hours outside, 2 to 24
     * @param nightOutside whether they stay out overnight
     */
    public record Day(LocalDate date, int hoursOutside, boolean nightOutside) {}

    /**
     * @param start first day outside
     * @param days days of hardening off, 4 to 28
     */
    public static List<Day> calendar(LocalDate start, int days) {
        Stated.within("days", days, 4, 28, "days");
        return IntStream.range(0, days)
                .mapToObj(index -> day(start.plusDays(index), index, days))
                .toList();
    }

    /** The calendar whose last day is the day before planting out. */
    public static List<Day> before(LocalDate plantingOut, int days) {
        return calendar(plantingOut.minusDays(days), days);
    }

    private static Day day(LocalDate date, int index, int days) {
        if (index >= days - NIGHTS_OUT) {
            return new Day(date, 24, true);
        }
        int steps = Math.max(1, days - NIGHTS_OUT - 1);
        return new Day(
                date, FIRST_HOURS + Math.round((LONGEST_DAY_HOURS - FIRST_HOURS) * index / (float) steps), false);
    }
}
