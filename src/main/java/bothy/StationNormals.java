package bothy;

import bothy.agronomy.climate.DegreeDays;
import bothy.agronomy.climate.FrostCurve;
import bothy.agronomy.climate.FrostRecord;
import bothy.agronomy.climate.MonthlyNormals;
import bothy.garden.Normals;
import bothy.garden.WeatherDay;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** What a station's daily record makes normal: frosts by their chances, rain, temperatures and degree days by month. */
final class StationNormals {
    private static final int HIGHEST_BASE_C = 16;

    private StationNormals() {}

    /**
     * @param days the record, in order, without a gap, every figure known
     * @param southern whether the station lies south of the equator
     */
    static Normals of(List<WeatherDay> days, boolean southern) {
        NavigableMap<LocalDate, Double> lowest = byDay(days, WeatherDay::tmin);
        FrostRecord frosts = FrostRecord.of(lowest, southern);
        return new Normals(
                lowest.firstKey().getYear(),
                lowest.lastKey().getYear(),
                frosts.lastSpring(0).map(StationNormals::frost).orElse(null),
                frosts.firstAutumn(0).map(StationNormals::frost).orElse(null),
                months(days));
    }

    private static Normals.Frost frost(FrostRecord.Fitted fitted) {
        FrostCurve curve = fitted.curve();
        return new Normals.Frost(
                curve.dateWithChanceAfter(0.9),
                curve.dateWithChanceAfter(0.5),
                curve.dateWithChanceAfter(0.1),
                curve.spreadDays(),
                fitted.years(),
                fitted.withoutFrost());
    }

    private static List<Normals.OfMonth> months(List<WeatherDay> days) {
        MonthlyNormals rain = MonthlyNormals.of(byDay(days, WeatherDay::rain));
        List<MonthlyNormals> warmth = new ArrayList<>();
        for (int base = 0; base <= HIGHEST_BASE_C; base += Normals.BASE_STEP_C) {
            double baseC = base;
            warmth.add(MonthlyNormals.of(byDay(days, day -> DegreeDays.averaging(day.tmin(), day.tmax(), baseC))));
        }
        List<Normals.OfMonth> months = new ArrayList<>();
        for (Month month : Month.values()) {
            Optional<Double> fallen = rain.mean(month);
            if (fallen.isPresent()) {
                months.add(new Normals.OfMonth(
                        month.getValue(),
                        rain.years(month),
                        fallen.get(),
                        mean(days, month, WeatherDay::tmin),
                        mean(days, month, WeatherDay::tmax),
                        warmth.stream()
                                .map(one -> one.mean(month).orElseThrow())
                                .toList()));
            }
        }
        return months;
    }

    private static NavigableMap<LocalDate, Double> byDay(List<WeatherDay> days, ToDoubleFunction<WeatherDay> what) {
        NavigableMap<LocalDate, Double> byDay = new TreeMap<>();
        days.stream()
                .sorted(Comparator.comparing(WeatherDay::date))
                .forEach(day -> byDay.put(day.date(), what.applyAsDouble(day)));
        return byDay;
    }

    private static double mean(List<WeatherDay> days, Month month, ToDoubleFunction<WeatherDay> what) {
        return days.stream()
                .filter(day -> YearMonth.from(day.date()).getMonth() == month)
                .mapToDouble(what)
                .average()
                .orElseThrow();
    }
}
