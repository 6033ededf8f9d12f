package bothy.advice.reckoning;

import bothy.advice.reckoned.NothingUpChance;
import bothy.agronomy.Emergence;
import bothy.agronomy.NothingUp;
import bothy.agronomy.NothingUp.Chances;
import bothy.agronomy.NothingUp.Moisture;
import bothy.agronomy.SeedAge;
import bothy.agronomy.climate.SoilWarmth;
import bothy.almanac.PlaceKind;
import bothy.almanac.Sheet;
import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What is likely of seed that is not up; reckoned only when the message tells of it. */
final class NothingUpReckoning {
    private static final Set<String> SIGNS = Set.of("no-emergence", "patchy-emergence");
    /** Where nobody told how many were sown the chances are those of ten. */
    private static final int USUAL_SEEDS = 10;
    /** Age of seed where nobody told it: last year's packing. */
    private static final double USUAL_AGE_YEARS = 1;

    private static final int MOST_AGE_YEARS = 50;
    private static final double FRESH_YEARS = 0.5;
    private static final double ONE_OR_TWO_YEARS = 1.5;
    private static final double OLDER_YEARS = 4;
    private static final int SOIL_FELT_DAYS = 14;
    /** So much rain in a week keeps the top of a drill moist. Common practice. */
    private static final double MOISTENING_MM = 5;

    private static final int RAIN_LASTS_DAYS = 7;
    private static final int MOST_DAYS = 400;
    /** Stragglers come in the days after; then it is time to look. */
    private static final int LOOK_AFTER_DAYS = 2;

    private static final int LATE_LOOK_DAYS = 3;

    private NothingUpReckoning() {}

    static Optional<NothingUpChance> of(Subject subject) {
        if (subject.signs().stream().noneMatch(sign -> SIGNS.contains(sign.sign())) || !seedWithATable(subject)) {
            return Optional.empty();
        }
        long days = ChronoUnit.DAYS.between(start(subject), subject.today());
        return days < 1 || days > MOST_DAYS ? Optional.empty() : Optional.of(chance(subject, (int) days));
    }

    private static boolean seedWithATable(Subject subject) {
        Sheet.Germination seed = subject.sheet().germination();
        return seed != null
                && seed.emergenceDays() != null
                && seed.emergenceDays().size() > 1
                && subject.warmth() != null
                && subject.planting().begun() != null
                && subject.planting().start() == Planting.Start.SEED;
    }

    /** Seed that was too cold starts anew where it was moved to. */
    private static LocalDate start(Subject subject) {
        return subject.last(What.MOVED)
                .map(latest -> latest.on())
                .orElse(subject.planting().begun());
    }

    private static NothingUpChance chance(Subject subject, int days) {
        Emergence emergence = Emergence.table(subject.sheet().germination().emergenceDays());
        List<Double> temps = soilTemps(subject, days);
        Integer told = subject.planting().sown();
        int sown = told == null || told < 1 ? USUAL_SEEDS : Math.min(10_000, told);
        int up = Math.min(sown, seedlings(subject));
        Chances chances = warmEnough(
                subject, new NothingUp(emergence).chances(sown, up, temps, viable(subject), moisture(subject)));
        LocalDate nineInTen = emergence
                .dates(start(subject), temps, subject.warmth().tempC())
                .map(Emergence.Dates::nineInTenBy)
                .orElse(null);
        return new NothingUpChance(
                subject.id(),
                sown,
                up,
                ageYears(subject),
                subject.warmth().tempC(),
                nineInTen,
                look(nineInTen, subject.today()),
                percent(chances.slow()),
                percent(chances.tooCold()),
                percent(chances.tooHot()),
                percent(chances.tooDry()),
                percent(chances.dead()),
                NothingUpChance.likeliest(
                        chances.slow(), chances.tooCold(), chances.tooHot(), chances.tooDry(), chances.dead()),
                false);
    }

    /** The table may begin above the least at which the crop comes: what waits for warmth at or above the least is only slow. */
    private static Chances warmEnough(Subject subject, Chances by) {
        Double least = subject.sheet().germination().minSoilTempC();
        return least != null && subject.warmth().tempC() >= least
                ? new Chances(by.slow() + by.tooCold(), 0, by.tooHot(), by.tooDry(), by.dead())
                : by;
    }

    private static LocalDate look(LocalDate nineInTen, LocalDate today) {
        return nineInTen != null && nineInTen.isAfter(today)
                ? nineInTen.plusDays(LOOK_AFTER_DAYS)
                : today.plusDays(LATE_LOOK_DAYS);
    }

    private static double percent(double chance) {
        return 100 * chance;
    }

    private static int seedlings(Subject subject) {
        return subject.events().stream()
                .filter(event -> event.what() == What.EMERGED && event.count() != null)
                .mapToInt(Event::count)
                .max()
                .orElse(0);
    }

    private static double viable(Subject subject) {
        Sheet.Germination seed = subject.sheet().germination();
        if (seed.seedLifeYears() == null || seed.minGerminationPercent() == null) {
            return 0.8;
        }
        return SeedAge.viableShare(
                ageYears(subject), seed.seedLifeYears(), Math.max(20, Math.min(98, seed.minGerminationPercent())));
    }

    /** As told with the sign or with the sowing, else as found on a closer look, else last year's packing. */
    private static double ageYears(Subject subject) {
        Stream<Integer> withSign = subject.signs().stream().map(SignSeen::seedAge);
        Stream<Integer> withSowing = subject.events().stream()
                .filter(event -> event.what() == What.SOWN)
                .map(Event::seedAge);
        Optional<Integer> told = Stream.concat(withSign, withSowing)
                .filter(Objects::nonNull)
                .filter(years -> years >= 0 && years <= MOST_AGE_YEARS)
                .reduce((earlier, later) -> later);
        return told.map(Integer::doubleValue).orElseGet(() -> foundAgeYears(subject));
    }

    /** A closer look tells the age in spans only; older than two years is taken as four. */
    private static double foundAgeYears(Subject subject) {
        return switch (String.valueOf(subject.findings().get("seed-age"))) {
            case "fresh" -> FRESH_YEARS;
            case "one-or-two" -> ONE_OR_TWO_YEARS;
            case "older" -> OLDER_YEARS;
            default -> USUAL_AGE_YEARS;
        };
    }

    /** What the finger found last, else moist where a watering was told. */
    private static Moisture moisture(Subject subject) {
        LocalDate since = subject.today().minusDays(SOIL_FELT_DAYS);
        Stream<Event> ofThePlot = subject.plotEvents().stream()
                .filter(event -> event.planting() == null && event.on() != null)
                .filter(event -> !event.on().isAfter(subject.today()));
        return Stream.concat(ofThePlot, subject.events().stream())
                .filter(event -> !event.on().isBefore(since))
                .sorted(Comparator.comparing(Event::on))
                .filter(event ->
                        event.what() == What.WATERED || event.what() == What.SOIL_CHECKED && event.detail() != null)
                .reduce((earlier, later) -> later)
                .map(event -> event.what() == What.WATERED ? Moisture.MOIST : felt(event.detail()))
                .orElseGet(() -> rained(subject)
                        ? Moisture.MOIST
                        : felt(String.valueOf(subject.findings().get("soil-moisture"))));
    }

    /** Whether rain kept a drill moist lately. */
    private static boolean rained(Subject subject) {
        LocalDate since = subject.today().minusDays(RAIN_LASTS_DAYS);
        double mm = subject.weather().stream()
                .filter(day -> day.rain() != null
                        && day.date().isAfter(since)
                        && !day.date().isAfter(subject.today()))
                .mapToDouble(WeatherDay::rain)
                .sum();
        boolean told = subject.plotEvents().stream()
                .anyMatch(event -> event.what() == What.RAIN
                        && event.on() != null
                        && event.on().isAfter(since));
        return subject.stands().where() == PlaceKind.OUTDOORS && (told || mm >= MOISTENING_MM);
    }

    private static Moisture felt(String detail) {
        return switch (detail) {
            case "dry" -> Moisture.DRY;
            case "moist" -> Moisture.MOIST;
            case "wet" -> Moisture.WET;
            default -> Moisture.UNKNOWN;
        };
    }

    /** Soil temperature of each day since the sowing: as told or usual there, outdoors from the air where the weather is known. */
    private static List<Double> soilTemps(Subject subject, int days) {
        boolean steady = subject.warmth().told() || subject.stands().where() == PlaceKind.INDOORS;
        Optional<List<Double>> air = steady ? Optional.empty() : Air.means(subject, days);
        return air.map(SoilWarmth::fromAirC)
                .orElseGet(() -> Collections.nCopies(days, subject.warmth().tempC()));
    }
}
