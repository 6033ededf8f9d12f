package bothy.agronomy.climate;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.EnumMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** Mean of monthly sums in a record: rain in mm, degree days in °C·d. Only months with every day count. */
public final class MonthlyNormals {
    private final Map<Month, Double> sums;
    private final Map<Month, Integer> years;

    private MonthlyNormals(Map<Month, Double> sums, Map<Month, Integer> years) {
        this.sums = sums;
        this.years = years;
    }

    /** @param daily what each day brought, not negative */
    public static MonthlyNormals of(NavigableMap<LocalDate, Double> daily) {
        Map<YearMonth, Double> sum = new TreeMap<>();
        Map<YearMonth, Integer> days = new TreeMap<>();
        daily.forEach((day, value) -> {
            if (!(value >= 0)) {
                throw new IllegalArgumentException(
                        "the value of " + day + " is " + value + "; it must not be negative");
            }
            sum.merge(YearMonth.from(day), value, Double::sum);
            days.merge(YearMonth.from(day), 1, Integer::sum);
        });
        Map<Month, Double> sums = new EnumMap<>(Month.class);
        Map<Month, Integer> years = new EnumMap<>(Month.class);
        sum.forEach((month, value) -> {
            if (days.get(month) == month.lengthOfMonth()) {
                sums.merge(month.getMonth(), value, Double::sum);
                years.merge(month.getMonth(), 1, Integer::sum);
            }
        });
        return new MonthlyNormals(sums, years);
    }

    /** The mean sum of a month, empty when the record has no whole one. */
    public Optional<Double> mean(Month month) {
        return Optional.ofNullable(sums.get(month)).map(sum -> sum / years.get(month));
    }

    /** How many whole months of that name the record has. */
    public int years(Month month) {
        return years.getOrDefault(month, 0);
    }

    /** The sum of the twelve means, empty when a month is missing. */
    public Optional<Double> meanYear() {
        if (sums.size() < 12) {
            return Optional.empty();
        }
        return Optional.of(sums.keySet().stream()
                .mapToDouble(month -> mean(month).orElseThrow())
                .sum());
    }
}
