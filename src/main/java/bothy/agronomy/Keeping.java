package bothy.agronomy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Curing and storing: until when, and when to look. The conditions and lives come from the crop sheet. */
public final class Keeping {
    /**
     * How much faster stored produce ages for 10 °C more: respiration rises 2 to 3 times (USDA Agriculture Handbook 66, from
     * memory); the middle is taken.
     */
    public static final double AGEING_PER_TEN_C = 2.5;

    private Keeping() {}

    /**
     * The days in which the store comes to its end.
     *
     * @param stored day of storing
     * @param lowDays shortest published life, 1 to 1000 days
     * @param highDays longest, 1 to 1000 days
     */
    public static Window keepsUntil(LocalDate stored, double lowDays, double highDays) {
        Stated.ordered("life", lowDays, highDays, 1, 1000, "days");
        return new Window(stored.plusDays(Math.round(lowDays)), stored.plusDays(Math.round(highDays)));
    }

    /**
     * Life in a store warmer than it should be, days. A colder store is not said to keep longer: many crops are chilled by it.
     *
     * @param lifeDays published life at the right temperature, 1 to 1000 days
     * @param rightC highest right temperature, −2 to 25 °C
     * @param storeC temperature of the store, −5 to 40 °C
     */
    public static double lifeDaysAt(double lifeDays, double rightC, double storeC) {
        Stated.within("lifeDays", lifeDays, 1, 1000, "days");
        Stated.within("rightC", rightC, -2, 25, "°C");
        Stated.within("storeC", storeC, -5, 40, "°C");
        return lifeDays * Math.pow(AGEING_PER_TEN_C, -Math.max(0, storeC - rightC) / 10);
    }

    /**
     * Days on which to look through the store, as long as it keeps at the longest.
     *
     * @param everyDays 1 to 60
     */
    public static List<LocalDate> checks(LocalDate stored, int everyDays, double highDays) {
        Stated.within("everyDays", everyDays, 1, 60, "days");
        LocalDate end = keepsUntil(stored, highDays, highDays).to();
        return Stream.iterate(stored.plusDays(everyDays), day -> !day.isAfter(end), day -> day.plusDays(everyDays))
                .toList();
    }

    /** The days in which curing is done, when it is warm and airy enough throughout (1 to 60 days after its start). */
    public static Window curedBetween(LocalDate started, double lowDays, double highDays) {
        Stated.ordered("curing", lowDays, highDays, 1, 60, "days");
        return new Window(started.plusDays(Math.round(lowDays)), started.plusDays(Math.round(highDays)));
    }

    /**
     * The day on which curing is done by the temperatures had. Own model: only days at or above the least temperature count.
     *
     * @param dailyMeanC mean of each day from the start on, −60 to 60 °C
     * @param leastC least curing temperature, 0 to 40 °C
     * @param needed days needed, 1 to 60
     * @return empty when the days had do not suffice
     */
    public static Optional<LocalDate> curedOn(LocalDate started, List<Double> dailyMeanC, double leastC, int needed) {
        Stated.within("leastC", leastC, 0, 40, "°C");
        Stated.within("needed", needed, 1, 60, "days");
        int counted = 0;
        for (int day = 0; day < dailyMeanC.size(); day++) {
            counted += Stated.within("dailyMeanC", dailyMeanC.get(day), -60, 60, "°C") >= leastC ? 1 : 0;
            if (counted == needed) {
                return Optional.of(started.plusDays(day + 1L));
            }
        }
        return Optional.empty();
    }
}
