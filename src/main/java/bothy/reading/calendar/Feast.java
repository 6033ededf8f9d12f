package bothy.reading.calendar;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * A feast that growers date their work by: St Patrick's Day, Good Friday.
 *
 * @param fixed its day in every year, {@code null} when it moves with Easter
 * @param fromEaster days from Easter Sunday
 */
record Feast(MonthDay fixed, int fromEaster) {
    private static final String EASTER = "easter";

    /** "3-17", "easter-2". */
    static Feast of(String written) {
        if (written.startsWith(EASTER)) {
            return new Feast(null, Integer.parseInt(written.substring(EASTER.length())));
        }
        String[] parts = written.split("-");
        return new Feast(MonthDay.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1])), 0);
    }

    LocalDate in(int year) {
        return fixed != null ? fixed.atYear(year) : easter(year).plusDays(fromEaster);
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
