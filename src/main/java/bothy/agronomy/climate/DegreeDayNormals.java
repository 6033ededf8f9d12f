package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.util.List;

/** Degree days of a usual day out of a month's sums above a row of bases. */
public final class DegreeDayNormals {
    private DegreeDayNormals() {}

    /**
     * Degree days of one day, °C·d: the month's sum above the base, evenly over its days; between two kept bases a straight line (the sum
     * bends only while days lie between the two, so that a step of 2 °C errs by less than half a degree a day).
     *
     * @param sums degree days of the month above 0, {@code stepC}, 2 {@code stepC} … °C, at least one, not negative
     * @param stepC 0.5 to 5 °C
     * @param baseC 0 °C to the last base kept
     * @param days days of the month, 28 to 31
     */
    public static double ofADay(List<Double> sums, double stepC, double baseC, int days) {
        within("stepC", stepC, 0.5, 5, "°C");
        within("baseC", baseC, 0, stepC * (sums.size() - 1), "°C");
        within("days", days, 28, 31, "days");
        int below = Math.min((int) (baseC / stepC), Math.max(0, sums.size() - 2));
        double part = baseC / stepC - below;
        double next = sums.size() == 1 ? sums.get(0) : sums.get(below + 1);
        return (sums.get(below) + part * (next - sums.get(below))) / days;
    }
}
