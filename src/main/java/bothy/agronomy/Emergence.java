package bothy.agronomy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Days to emergence by soil temperature, from a published table such as Harrington and Minges 1954 (in Knott's Handbook for
 * Vegetable Growers). Between printed temperatures the rates (1/days) are joined by straight lines, as thermal time has it; the
 * table is exact at every printed cell. Outside the printed temperatures at which seedlings came, nothing is said.
 */
public final class Emergence {
    /** The range of soil temperatures that is reckoned with, in °C; own choice, far beyond what any seed comes up at. */
    public static final double LEAST_SOIL_C = -20;

    public static final double MOST_SOIL_C = 60;

    /** Longest waiting that is worked out, days. */
    private static final int HORIZON = 400;

    private final NavigableMap<Double, Double> ratePerDay;

    private Emergence(NavigableMap<Double, Double> ratePerDay) {
        this.ratePerDay = ratePerDay;
    }

    /**
     * @param daysBySoilTempC days to emergence by soil temperature in °C, at least one row, −5 to 50 °C, 0.5 to 400 days
     * @throws IllegalArgumentException when the table is empty or a row is outside the range
     */
    public static Emergence table(Map<Double, Double> daysBySoilTempC) {
        if (daysBySoilTempC.isEmpty()) {
            throw new IllegalArgumentException("the table of days to emergence has no row; it needs at least one");
        }
        NavigableMap<Double, Double> rates = new TreeMap<>();
        daysBySoilTempC.forEach((soilTempC, days) -> rates.put(
                Stated.within("soilTempC", soilTempC, -5, 50, "°C"),
                1 / Stated.within("days", days, 0.5, HORIZON, "days")));
        return new Emergence(rates);
    }

    /**
     * A stand-in for a crop of which only "usually 7 to 14 days" is printed: the same days at every temperature between the published least
     * and greatest (own model; the middle is taken so that as many times later as earlier remain).
     *
     * @param lowDays 0.5 to 400
     * @param highDays at or above the low end, to 400
     * @param leastC published least soil temperature for germination, −5 to 50 °C
     * @param greatestC published greatest, not below the least
     */
    public static Emergence usually(double lowDays, double highDays, double leastC, double greatestC) {
        Stated.ordered("usualDays", lowDays, highDays, 0.5, HORIZON, "days");
        Stated.ordered("soilTempC", leastC, greatestC, -5, 50, "°C");
        double days = Math.sqrt(lowDays * highDays);
        return table(leastC == greatestC ? Map.of(leastC, days) : Map.of(leastC, days, greatestC, days));
    }

    /** Lowest printed soil temperature at which seedlings came, °C. */
    public double lowestC() {
        return ratePerDay.firstKey();
    }

    /** Highest printed soil temperature at which seedlings came, °C. */
    public double highestC() {
        return ratePerDay.lastKey();
    }

    /** Printed soil temperature with the fewest days, °C; the lowest of several. */
    public double optimumC() {
        double best = ratePerDay.values().stream().max(Double::compare).orElseThrow();
        return ratePerDay.entrySet().stream()
                .filter(row -> row.getValue() == best)
                .findFirst()
                .orElseThrow()
                .getKey();
    }

    /**
     * Days to emergence.
     *
     * @param soilTempC steady soil temperature, −20 to 60 °C
     * @return empty below the lowest and above the highest printed temperature at which seedlings came
     */
    public OptionalDouble days(double soilTempC) {
        double rate = rate(soilTempC);
        return rate == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 / rate);
    }

    /** How the seedlings come up at a steady soil temperature (−20 to 60 °C), empty where {@link #days} is. */
    public Optional<EmergenceCurve> curve(double soilTempC) {
        OptionalDouble days = days(soilTempC);
        return days.isEmpty() ? Optional.empty() : Optional.of(EmergenceCurve.around(days.getAsDouble()));
    }

    /**
     * Thermal progress: 1 when as much warmth has been had as brings half of the seedlings up. A day outside the germinating range
     * adds nothing and takes nothing away.
     *
     * @param dailySoilTempC mean soil temperature of each day from the sowing on, −20 to 60 °C
     */
    public double progress(List<Double> dailySoilTempC) {
        return dailySoilTempC.stream().mapToDouble(this::rate).sum();
    }

    /** Share of those that will come which is up after days with these soil temperatures (each −20 to 60 °C), 0 to 1. */
    public double share(List<Double> dailySoilTempC) {
        return EmergenceCurve.around(1).share(Math.min(HORIZON, progress(dailySoilTempC)));
    }

    /**
     * The day by which a share of those that will come is up.
     *
     * @param sown the day of sowing
     * @param dailySoilTempC mean soil temperature of each day from the sowing on, as far as known, −20 to 60 °C
     * @param aheadSoilTempC soil temperature to be expected after those days, −20 to 60 °C
     * @param share 0.001 to 0.999
     * @return empty when it does not come to that within 400 days
     */
    public Optional<LocalDate> upBy(LocalDate sown, List<Double> dailySoilTempC, double aheadSoilTempC, double share) {
        double needed = EmergenceCurve.around(1).daysUntil(share);
        double ahead = rate(aheadSoilTempC);
        double had = 0;
        for (int day = 1; day <= HORIZON; day++) {
            had += day <= dailySoilTempC.size() ? rate(dailySoilTempC.get(day - 1)) : ahead;
            if (had >= needed - 1e-12) {
                return Optional.of(sown.plusDays(day));
            }
        }
        return Optional.empty();
    }

    /** The days by which one in ten, half and nine in ten of those that will come are up; parameters as for {@link #upBy}. */
    public Optional<Dates> dates(LocalDate sown, List<Double> dailySoilTempC, double aheadSoilTempC) {
        Optional<LocalDate> nineInTen = upBy(sown, dailySoilTempC, aheadSoilTempC, 0.9);
        return nineInTen.map(last -> new Dates(
                upBy(sown, dailySoilTempC, aheadSoilTempC, 0.1).orElseThrow(),
                upBy(sown, dailySoilTempC, aheadSoilTempC, 0.5).orElseThrow(),
                last));
    }

    /**
     * @param oneInTenBy day by which one in ten of the seedlings that will come is up
     * @param halfBy day by which half are
     * @param nineInTenBy day by which nine in ten are
     */
    public record Dates(LocalDate oneInTenBy, LocalDate halfBy, LocalDate nineInTenBy) {}

    private double rate(double soilTempC) {
        Stated.within("soilTempC", soilTempC, LEAST_SOIL_C, MOST_SOIL_C, "°C");
        return between(ratePerDay, soilTempC).orElse(0);
    }

    /**
     * Percentage of normal seedlings, joined by straight lines between the printed temperatures and exact at each.
     *
     * @param percentBySoilTempC percentage (0 to 100) by soil temperature in °C (−5 to 50)
     * @param soilTempC −20 to 60 °C
     * @return empty outside the printed temperatures
     */
    public static OptionalDouble percent(Map<Double, Double> percentBySoilTempC, double soilTempC) {
        Stated.within("soilTempC", soilTempC, LEAST_SOIL_C, MOST_SOIL_C, "°C");
        NavigableMap<Double, Double> percent = new TreeMap<>();
        percentBySoilTempC.forEach((tempC, value) -> percent.put(
                Stated.within("soilTempC", tempC, -5, 50, "°C"), Stated.within("percent", value, 0, 100, "%")));
        return between(percent, soilTempC);
    }

    private static OptionalDouble between(NavigableMap<Double, Double> rows, double at) {
        Map.Entry<Double, Double> below = rows.floorEntry(at);
        Map.Entry<Double, Double> above = rows.ceilingEntry(at);
        if (below == null || above == null) {
            return OptionalDouble.empty();
        }
        if (below.getKey().equals(above.getKey())) {
            return OptionalDouble.of(below.getValue());
        }
        double part = (at - below.getKey()) / (above.getKey() - below.getKey());
        return OptionalDouble.of(below.getValue() + part * (above.getValue() - below.getValue()));
    }
}
