package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;

/** Degree days, °C·d, from the lowest and highest temperature of a day, −60 to 60 °C; never below 0. */
public final class DegreeDays {
    private DegreeDays() {}

    /**
     * Mean less base, 0 when that is negative (McMaster and Wilhelm 1997, Agricultural and Forest Meteorology 87, method 1).
     *
     * @param baseC base temperature, −5 to 30 °C
     */
    public static double averaging(double tminC, double tmaxC, double baseC) {
        check(tminC, tmaxC, baseC, 60);
        return Math.max(0, (tminC + tmaxC) / 2 - baseC);
    }

    /**
     * Both temperatures held between base and upper limit before they are averaged (McMaster and Wilhelm 1997, method 2; with 10 and
     * 30 °C the "86/50" method of maize growers).
     *
     * @param upperC upper limit, not below the base, to 60 °C
     */
    public static double capped(double tminC, double tmaxC, double baseC, double upperC) {
        check(tminC, tmaxC, baseC, upperC);
        return (hold(tminC, baseC, upperC) + hold(tmaxC, baseC, upperC)) / 2 - baseC;
    }

    /** A sine wave between the two temperatures, cut off level at the upper limit (Baskerville and Emin 1969, Ecology 50). */
    public static double sine(double tminC, double tmaxC, double baseC, double upperC) {
        check(tminC, tmaxC, baseC, upperC);
        return sineAbove(tminC, tmaxC, baseC) - sineAbove(tminC, tmaxC, upperC);
    }

    /** Straight lines between the two temperatures, cut off level at the upper limit (single triangle). */
    public static double triangle(double tminC, double tmaxC, double baseC, double upperC) {
        check(tminC, tmaxC, baseC, upperC);
        return triangleAbove(tminC, tmaxC, baseC) - triangleAbove(tminC, tmaxC, upperC);
    }

    /**
     * How many of the days it takes until the sum reaches what is needed.
     *
     * @param daily degree days of each day in order, 0 to 60
     * @param needed 0 to 10 000 °C·d
     * @return empty when the days do not suffice; 0 when nothing is needed
     */
    public static OptionalInt daysUntil(List<Double> daily, double needed) {
        within("needed", needed, 0, 10_000, "°C·d");
        double sum = 0;
        for (int day = 0; day < daily.size(); day++) {
            if (sum >= needed) {
                return OptionalInt.of(day);
            }
            sum += within("daily", daily.get(day), 0, 60, "°C·d");
        }
        return sum >= needed ? OptionalInt.of(daily.size()) : OptionalInt.empty();
    }

    /**
     * How many days before the end of the days a planting must begin, at the latest, to have the sum that it needs: with the normal days
     * up to the first frost, the last sowing that ripens.
     *
     * @param daily degree days of each day in order, the last just before the end, 0 to 60
     * @param needed 0 to 10 000 °C·d
     * @return empty when all of the days do not suffice
     */
    public static OptionalInt daysBeforeEnd(List<Double> daily, double needed) {
        List<Double> backwards = new ArrayList<>(daily);
        Collections.reverse(backwards);
        return daysUntil(backwards, needed);
    }

    private static double sineAbove(double tminC, double tmaxC, double thresholdC) {
        double mean = (tminC + tmaxC) / 2;
        if (tminC >= thresholdC) {
            return mean - thresholdC;
        }
        if (tmaxC <= thresholdC) {
            return 0;
        }
        double half = (tmaxC - tminC) / 2;
        double theta = Math.asin((thresholdC - mean) / half);
        return ((mean - thresholdC) * (Math.PI / 2 - theta) + half * Math.cos(theta)) / Math.PI;
    }

    private static double triangleAbove(double tminC, double tmaxC, double thresholdC) {
        if (tminC >= thresholdC) {
            return (tminC + tmaxC) / 2 - thresholdC;
        }
        return tmaxC <= thresholdC ? 0 : (tmaxC - thresholdC) * (tmaxC - thresholdC) / (2 * (tmaxC - tminC));
    }

    private static double hold(double tempC, double lowC, double highC) {
        return Math.max(lowC, Math.min(highC, tempC));
    }

    private static void check(double tminC, double tmaxC, double baseC, double upperC) {
        within("tminC", tminC, -60, 60, "°C");
        within("tmaxC", tmaxC, -60, 60, "°C");
        within("baseC", baseC, -5, 30, "°C");
        within("upperC", upperC, baseC, 60, "°C");
        if (tminC > tmaxC) {
            throw new IllegalArgumentException("tminC " + tminC + " °C is above tmaxC " + tmaxC + " °C");
        }
    }
}
