package bothy.advice;

import bothy.agronomy.climate.DegreeDayNormals;
import bothy.agronomy.climate.DegreeDays;
import bothy.agronomy.climate.RipeningWarmth;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.garden.Normals;
import bothy.garden.WeatherDay;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a crop ripens by warmth: degree days of the days that were or are forecast, and of usual days by the station's record for the rest.
 */
final class Ripening {
    private static final int MOST_DAYS = 300;

    private final double baseC;
    private final Double degreeDays;
    private final boolean warmSeason;
    private final Normals normals;
    private final Map<LocalDate, Double> known = new HashMap<>();

    private Ripening(Sheet sheet, Normals normals, List<WeatherDay> weather) {
        this.baseC = sheet.harvest().degreeDayBaseC();
        this.degreeDays = sheet.harvest().degreeDays();
        this.warmSeason = sheet.growth() != null && sheet.growth().hardiness() == Sheet.Hardiness.TENDER;
        this.normals = normals;
        weather.stream()
                .filter(day -> day.tmin() != null && day.tmax() != null && day.tmin() <= day.tmax())
                .filter(day -> day.tmin() >= -60 && day.tmax() <= 60)
                .forEach(day -> known.put(day.date(), held(DegreeDays.averaging(day.tmin(), day.tmax(), baseC))));
    }

    /** Empty where no record makes a whole year normal, or the crop does not go by degree days. */
    static Optional<Ripening> of(Sheet sheet, Normals normals, List<WeatherDay> weather) {
        return normals == null
                        || !normals.wholeYear()
                        || sheet.harvest() == null
                        || sheet.harvest().degreeDayBaseC() == null
                ? Optional.empty()
                : Optional.of(new Ripening(sheet, normals, weather));
    }

    /**
     * Degree days that so many days to harvest stand for.
     *
     * @param fromSowing whether the days count from sowing, for which degree days may be published
     */
    double needed(double days, Range published, boolean fromSowing) {
        return fromSowing && degreeDays != null
                ? degreeDays * days / published.middle()
                : RipeningWarmth.needed(days, baseC, warmSeason);
    }

    /** The day on which what was begun on a day has had so many degree days; empty when it takes more than 300 days. */
    Optional<LocalDate> reached(LocalDate begun, double needed) {
        double sum = 0;
        for (int day = 0; day <= MOST_DAYS; day++) {
            if (sum >= needed) {
                return Optional.of(begun.plusDays(day));
            }
            LocalDate date = begun.plusDays(day);
            sum += known.getOrDefault(date, usual(date));
        }
        return Optional.empty();
    }

    /** The days of the sheet as the warmth after a beginning makes them; empty when it never comes to that. */
    Optional<Range> daysFrom(LocalDate begun, Range days, boolean fromSowing) {
        Optional<LocalDate> first = reached(begun, needed(days.low(), days, fromSowing));
        Optional<LocalDate> last = reached(begun, needed(days.high(), days, fromSowing));
        return first.isEmpty() || last.isEmpty()
                ? Optional.empty()
                : Optional.of(new Range(
                        ChronoUnit.DAYS.between(begun, first.get()), ChronoUnit.DAYS.between(begun, last.get())));
    }

    /** The last day on which a beginning still gets so many degree days before an end, in usual years. */
    Optional<LocalDate> lastBeginning(LocalDate end, double needed) {
        List<Double> usual =
                end.minusDays(MOST_DAYS).datesUntil(end).map(this::usual).toList();
        return DegreeDays.daysBeforeEnd(usual, needed).stream()
                .mapToObj(days -> end.minusDays(days))
                .findFirst();
    }

    private double usual(LocalDate date) {
        return normals.of(date.getMonth())
                .map(month -> held(DegreeDayNormals.ofADay(
                        month.degreeDays(),
                        Normals.BASE_STEP_C,
                        baseC,
                        date.getMonth().maxLength())))
                .orElse(0.0);
    }

    private double held(double degreeDays) {
        return Math.min(degreeDays, RipeningWarmth.UPPER_C - baseC);
    }
}
