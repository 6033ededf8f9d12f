package bothy.garden;

import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;

/**
 * What is normal at a grower's place, by the daily record of a weather station.
 *
 * @param fromYear first year of the record
 * @param toYear last year of the record
 * @param lastSpring last frost of spring, {@code null} when the record has too few
 * @param firstAutumn first frost of autumn, {@code null} when the record has too few
 * @param months those of which the record has a whole one, in order
 */
public record Normals(int fromYear, int toYear, Frost lastSpring, Frost firstAutumn, List<OfMonth> months) {
    /** Degree days are kept above each of these, °C: 0, 2, 4 … 16. */
    public static final int BASE_STEP_C = 2;

    public Normals {
        months = List.copyOf(months);
    }

    /**
     * A frost of the year by its chances.
     *
     * @param nineInTenAfter it comes later than this in nine years of ten
     * @param evenOdds as often later as earlier
     * @param oneInTenAfter it comes later than this in one year of ten
     * @param spreadDays standard deviation, days
     * @param years years of the record that were complete enough
     * @param withoutFrost how many of them had no such frost
     */
    public record Frost(
            MonthDay nineInTenAfter,
            MonthDay evenOdds,
            MonthDay oneInTenAfter,
            double spreadDays,
            int years,
            int withoutFrost) {}

    /**
     * A month in the mean of its years.
     *
     * @param month 1 to 12
     * @param years how many whole ones the record has
     * @param rainMm rain, mm
     * @param tminC mean of the lowest temperatures, °C
     * @param tmaxC mean of the highest, °C
     * @param degreeDays degree days of the month above 0, 2, 4 … 16 °C, °C·d
     */
    public record OfMonth(int month, int years, double rainMm, double tminC, double tmaxC, List<Double> degreeDays) {
        public OfMonth {
            degreeDays = List.copyOf(degreeDays);
        }
    }

    /** The normals of a month, empty when the record has no whole one. */
    public Optional<OfMonth> of(Month month) {
        return months.stream().filter(one -> one.month() == month.getValue()).findFirst();
    }

    /** Whether every month is known. */
    public boolean wholeYear() {
        return months.size() == Month.values().length;
    }
}
