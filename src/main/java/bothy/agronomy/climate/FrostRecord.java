package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Last and first frosts of a station's record. Years are split at 24 July, in the south at 24 January, and a half with more than ten days
 * missing is left out (the practice of the Utah Climate Center, Moller and Gillies 2007). Dates are fitted by a normal curve.
 */
public final class FrostRecord {
    private static final int MISSING_ALLOWED = 10;
    private static final int FEWEST = 3;

    private final NavigableMap<LocalDate, Double> tminC;
    private final MonthDay midsummer;
    private final MonthDay midwinter;

    private FrostRecord(NavigableMap<LocalDate, Double> tminC, boolean southern) {
        this.tminC = tminC;
        this.midsummer = MonthDay.of(southern ? Month.JANUARY : Month.JULY, 24);
        this.midwinter = MonthDay.of(southern ? Month.JULY : Month.JANUARY, 24);
    }

    /**
     * @param tminC lowest temperature by day, −90 to 60 °C
     * @param southern whether the station lies south of the equator
     */
    public static FrostRecord of(NavigableMap<LocalDate, Double> tminC, boolean southern) {
        tminC.values().forEach(value -> within("tminC", value, -90, 60, "°C"));
        return new FrostRecord(new TreeMap<>(tminC), southern);
    }

    /**
     * One frost date in the record.
     *
     * @param curve its chances
     * @param years halves of a year that were complete enough
     * @param withoutFrost how many of them had no such frost; the curve is that of the others
     */
    public record Fitted(FrostCurve curve, int years, int withoutFrost) {}

    /**
     * The last frost of spring.
     *
     * @param thresholdC −10 to 5 °C; 0 for frost in the air
     * @return empty with fewer than three halves that had one
     */
    public Optional<Fitted> lastSpring(double thresholdC) {
        return fit(thresholdC, midwinter, true);
    }

    /** The first frost of autumn; parameters as for {@link #lastSpring}. */
    public Optional<Fitted> firstAutumn(double thresholdC) {
        return fit(thresholdC, midsummer, false);
    }

    private Optional<Fitted> fit(double thresholdC, MonthDay from, boolean last) {
        within("thresholdC", thresholdC, -10, 5, "°C");
        if (tminC.isEmpty()) {
            return Optional.empty();
        }
        List<Long> days = new ArrayList<>();
        int years = 0;
        for (int year = tminC.firstKey().getYear() - 1; year <= tminC.lastKey().getYear(); year++) {
            LocalDate start = from.atYear(year);
            LocalDate end = start.plusMonths(6);
            NavigableMap<LocalDate, Double> half = tminC.subMap(start, true, end, false);
            if (ChronoUnit.DAYS.between(start, end) - half.size() > MISSING_ALLOWED) {
                continue;
            }
            years++;
            NavigableMap<LocalDate, Double> inOrder = last ? half.descendingMap() : half;
            inOrder.entrySet().stream()
                    .filter(day -> day.getValue() <= thresholdC)
                    .findFirst()
                    .ifPresent(day -> days.add(ChronoUnit.DAYS.between(start, day.getKey())));
        }
        return days.size() < FEWEST
                ? Optional.empty()
                : Optional.of(new Fitted(curve(days, from), years, years - days.size()));
    }

    private static FrostCurve curve(List<Long> days, MonthDay from) {
        double mean = days.stream().mapToLong(Long::longValue).average().orElseThrow();
        double squares =
                days.stream().mapToDouble(day -> (day - mean) * (day - mean)).sum();
        MonthDay middle = MonthDay.from(from.atYear(2001).plusDays(Math.round(mean)));
        return new FrostCurve(middle, Math.min(60, Math.sqrt(squares / (days.size() - 1))));
    }
}
