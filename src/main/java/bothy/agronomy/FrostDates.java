package bothy.agronomy;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The usual last frost of spring and first frost of autumn at a place, in either hemisphere: where the first comes before the second
 * in the calendar year (May and October) the frost-free season lies within one year, otherwise (October and May) it spans the new year.
 *
 * @param lastSpring usual last frost of spring
 * @param firstAutumn usual first frost of autumn
 */
public record FrostDates(MonthDay lastSpring, MonthDay firstAutumn) {
    /** Either side of {@link #typical}, days. Own estimate: places of one latitude differ by about a month with height and sea. */
    public static final int TYPICAL_MARGIN_DAYS = 30;

    private static final int HALF_A_YEAR = 183;
    private static final int ANY_COMMON_YEAR = 2001;
    private static final NavigableMap<Double, int[]> DAY_OF_YEAR = new TreeMap<>(Map.of(
            30.0, new int[] {60, 335},
            35.0, new int[] {91, 312},
            40.0, new int[] {110, 293},
            45.0, new int[] {121, 283},
            50.0, new int[] {126, 281},
            55.0, new int[] {133, 275},
            60.0, new int[] {143, 266},
            65.0, new int[] {156, 252},
            70.0, new int[] {166, 244}));

    public FrostDates {
        if (lastSpring.equals(firstAutumn)) {
            throw new IllegalArgumentException("last spring frost and first autumn frost are both " + lastSpring
                    + "; no season lies between them");
        }
    }

    /** The frost-free season that a day lies in, or the next one when it lies in none. */
    public Season seasonAt(LocalDate day) {
        for (int year = day.getYear() - 1; year <= day.getYear() + 1; year++) {
            Season season = seasonFrom(year);
            if (!season.firstFrost().isBefore(day)) {
                return season;
            }
        }
        throw new IllegalStateException("unreachable: the season of the year after " + day + " ends after it");
    }

    private Season seasonFrom(int year) {
        LocalDate last = lastSpring.atYear(year);
        LocalDate first = firstAutumn.atYear(year);
        return new Season(last, first.isAfter(last) ? first : firstAutumn.atYear(year + 1));
    }

    /**
     * Frost dates for when nothing is known but the latitude. Own estimate, no source: rounded dates of lowland places by latitude,
     * joined by straight lines, and right to about {@value #TYPICAL_MARGIN_DAYS} days only; say so beside them and ask for the local dates.
     * South of the equator half a year later.
     *
     * @param latitude degrees, −90 to 90, south negative
     * @return empty nearer to the equator than 30° (frost is not usual) and beyond 70° (the season is a polar one)
     */
    public static Optional<FrostDates> typical(double latitude) {
        double north = Math.abs(Stated.within("latitude", latitude, -90, 90, "°"));
        if (north < DAY_OF_YEAR.firstKey() || north > DAY_OF_YEAR.lastKey()) {
            return Optional.empty();
        }
        int shift = latitude < 0 ? HALF_A_YEAR : 0;
        return Optional.of(new FrostDates(dayAt(north, 0, shift), dayAt(north, 1, shift)));
    }

    private static MonthDay dayAt(double latitude, int column, int shiftDays) {
        Map.Entry<Double, int[]> below = DAY_OF_YEAR.floorEntry(latitude);
        Map.Entry<Double, int[]> above = DAY_OF_YEAR.ceilingEntry(latitude);
        double span = above.getKey() - below.getKey();
        double part = span == 0 ? 0 : (latitude - below.getKey()) / span;
        long dayOfYear =
                Math.round(below.getValue()[column] + part * (above.getValue()[column] - below.getValue()[column]));
        return MonthDay.from(
                LocalDate.ofYearDay(ANY_COMMON_YEAR, (int) dayOfYear).plusDays(shiftDays));
    }
}
