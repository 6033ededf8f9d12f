package bothy.reading.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.function.IntFunction;

/**
 * A feast that growers date their work by: St Patrick's Day, Good Friday, Labor Day.
 *
 * @param inYear its day in a year
 */
record Feast(IntFunction<LocalDate> inYear) {
    private static final String EASTER = "easter";
    private static final String LAST = "last";

    /** "3-17"; "easter-2", days from Easter Sunday; "monday-1-9" and "monday-last-5", the first of September and the last of May. */
    static Feast of(String written) {
        if (written.startsWith(EASTER)) {
            int days = Integer.parseInt(written.substring(EASTER.length()));
            return new Feast(year -> easter(year).plusDays(days));
        }
        String[] parts = written.split("-");
        int last = Integer.parseInt(parts[parts.length - 1]);
        if (parts.length == 2) {
            MonthDay fixed = MonthDay.of(Integer.parseInt(parts[0]), last);
            return new Feast(fixed::atYear);
        }
        DayOfWeek weekday = DayOfWeek.valueOf(parts[0].toUpperCase(Locale.ROOT));
        int which = parts[1].equals(LAST) ? -1 : Integer.parseInt(parts[1]);
        return new Feast(year -> LocalDate.of(year, last, 1).with(TemporalAdjusters.dayOfWeekInMonth(which, weekday)));
    }

    LocalDate in(int year) {
        return inYear.apply(year);
    }

    /** The last one up to a day. */
    LocalDate past(LocalDate today) {
        LocalDate day = in(today.getYear());
        return day.isAfter(today) ? in(today.getYear() - 1) : day;
    }

    /** The next one from a day on. */
    LocalDate future(LocalDate today) {
        LocalDate day = in(today.getYear());
        return day.isBefore(today) ? in(today.getYear() + 1) : day;
    }

    /** Easter Sunday of the Gregorian calendar, by Meeus, Jones and Butcher. */
    private static LocalDate easter(int year) {
        int golden = year % 19;
        int century = year / 100;
        int ofCentury = year % 100;
        int moon = (19 * golden + century - century / 4 - (century - (century + 8) / 25 + 1) / 3 + 15) % 30;
        int sunday = (32 + 2 * (century % 4) + 2 * (ofCentury / 4) - moon - ofCentury % 4) % 7;
        int late = (golden + 11 * moon + 22 * sunday) / 451;
        int sum = moon + sunday - 7 * late + 114;
        return LocalDate.of(year, sum / 31, sum % 31 + 1);
    }
}
