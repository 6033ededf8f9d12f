package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.util.List;
import java.util.function.DoublePredicate;

/** Runs and counts of days: cold that makes young plants bolt, heat, drought broken by rain. */
public final class Spells {
    private Spells() {}

    /** Days up to and including the last that fit without a break, 0 when the last does not. */
    public static int running(List<Double> daily, DoublePredicate fits) {
        int days = 0;
        while (days < daily.size() && fits.test(daily.get(daily.size() - 1 - days))) {
            days++;
        }
        return days;
    }

    /**
     * Days at temperatures that bring biennials (beetroot, onion, leek, celery, brassicas) to flower when the plants are big enough: 5 to
     * 10 °C (L. Gilkeson in BC Living). How many days it takes depends on the variety; about ten is a warning (common practice).
     *
     * @param dailyMeanC daily means, −60 to 60 °C
     */
    public static int vernalisingDays(List<Double> dailyMeanC) {
        return (int) dailyMeanC.stream()
                .filter(meanC -> within("dailyMeanC", meanC, -60, 60, "°C") >= 5 && meanC <= 10)
                .count();
    }

    /**
     * Drought and then plenty, which splits tomatoes, cabbages and carrots. Own model: the days just before the last on which the
     * freely taken water was used up, and the water that the last day brought.
     *
     * @param dryDays days running without freely taken water before the last day
     * @param waterMm rain and watering of the last day, mm
     */
    public record DryThenWet(int dryDays, double waterMm) {}

    /**
     * @param depletionMm depletion at the end of each day in order, as reckoned
     * @param freeMm freely taken water of each of the same days
     * @param waterMm rain and watering of the day after the last of them, 0 to 2000 mm
     */
    public static DryThenWet dryThenWet(List<Double> depletionMm, List<Double> freeMm, double waterMm) {
        if (depletionMm.size() != freeMm.size()) {
            throw new IllegalArgumentException("there are " + depletionMm.size() + " depletions and " + freeMm.size()
                    + " amounts of freely taken water; each day needs both");
        }
        within("waterMm", waterMm, 0, 2000, "mm");
        int days = 0;
        for (int day = depletionMm.size() - 1; day >= 0 && depletionMm.get(day) >= freeMm.get(day); day--) {
            days++;
        }
        return new DryThenWet(days, waterMm);
    }
}
