package bothy.advice.reckoning;

import bothy.advice.facts.Outlook;
import bothy.advice.reckoned.NothingUpChance;
import bothy.advice.reckoned.UpByNow;
import bothy.agronomy.Emergence;
import bothy.agronomy.NothingUp;
import bothy.agronomy.NothingUp.Chances;
import bothy.agronomy.NothingUp.Moisture;
import bothy.agronomy.SeedAge;
import bothy.agronomy.SeedlingsByNow;
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
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What is likely of seed that is not up; reckoned only when the message tells of it. */
final class NothingUpReckoning {
    /** Where nobody told how many were sown the chances are those of ten. */
    private static final int USUAL_SEEDS = 10;

    /** Asked so, nothing is up. */
    private static final String SOW_AGAIN = "sow-again-or-wait";

    private static final Set<String> HOW_MANY_BY_NOW = Set.of("up-by-now", "normal", SOW_AGAIN);

    private static final int MOST_COUNTED = 2000;
    /** Soil further from the usual than this stands elsewhere than in the open, °C. Own choice. */
    private static final double MOST_OFF_C = 8;
    /** Age of seed where nobody told it: last year's packing. */
    private static final double USUAL_AGE_YEARS = 1;

    private static final int SOIL_FELT_DAYS = 14;
    /** So much rain in a week keeps the top of a drill moist. Common practice. */
    private static final double MOISTENING_MM = 5;

    private static final int RAIN_COMES_DAYS = 21;
    private static final int RAIN_LASTS_DAYS = 7;
    private static final int MOST_DAYS = 400;
    /** Stragglers come in the days after; then it is time to look. */
    private static final int LOOK_AFTER_DAYS = 2;

    private static final int LATE_LOOK_DAYS = 3;

    private NothingUpReckoning() {}

    static Optional<NothingUpChance> of(Subject subject) {
        boolean told = subject.signs().stream().anyMatch(sign -> SignSeen.ofSeed(sign.sign()))
                || subject.inquiries().stream().anyMatch(inquiry -> SOW_AGAIN.equals(inquiry.topic()));
        if (!told || !seedWithATable(subject)) {
            return Optional.empty();
        }
        long days = ChronoUnit.DAYS.between(start(subject), subject.today());
        return days < 1 || days > MOST_DAYS ? Optional.empty() : Optional.of(chance(subject, (int) days));
    }

    /** How many should be up; reckoned only when that is asked, or whether it is normal. */
    static Optional<UpByNow> byNow(Subject subject) {
        boolean asked = subject.inquiries().stream()
                .anyMatch(inquiry -> HOW_MANY_BY_NOW.contains(String.valueOf(inquiry.topic())));
        if (!asked || !seedWithATable(subject)) {
            return Optional.empty();
        }
        long days = ChronoUnit.DAYS.between(start(subject), subject.today());
        if (days < 0 || days > MOST_DAYS) {
            return Optional.empty();
        }
        Integer told = subject.planting().sown();
        int sown = told == null || told < 1 ? USUAL_SEEDS : Math.min(MOST_COUNTED, told);
        SeedlingsByNow up = SeedlingsByNow.of(
                Emergence.table(subject.sheet().germination().emergenceDays()),
                errorC(subject),
                sown,
                soilTemps(subject, (int) days),
                viable(subject));
        return Optional.of(new UpByNow(
                subject.id(),
                sown,
                up.likely(),
                up.low(),
                up.high(),
                subject.warmth() == null
                        ? null
                        : Double.valueOf(subject.warmth().tempC())));
    }

    private static double errorC(Subject subject) {
        return subject.warmth() == null ? NothingUp.GUESSED_ERROR_C : NothingUp.TOLD_ERROR_C;
    }

    private static boolean seedWithATable(Subject subject) {
        Sheet.Germination seed = subject.sheet().germination();
        return seed != null
                && seed.emergenceDays() != null
                && seed.emergenceDays().size() > 1
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
        boolean open = subject.stands().where() == PlaceKind.OUTDOORS
                && !subject.stands().inContainer();
        double lost = open ? NothingUp.LOST_IN_OPEN_GROUND : NothingUp.LOST_UNDER_COVER;
        Chances chances = warmEnough(
                subject,
                new NothingUp(emergence, errorC(subject), lost)
                        .chances(sown, up, temps, viable(subject), moisture(subject)));
        // A guessed warmth is good for chances, not for a date.
        LocalDate nineInTen = Optional.ofNullable(subject.warmth())
                .flatMap(warmth -> emergence.dates(start(subject), temps, warmth.tempC()))
                .map(Emergence.Dates::nineInTenBy)
                .orElse(null);
        return new NothingUpChance(
                subject.id(),
                sown,
                up,
                SeedTold.ageYears(subject).orElse(USUAL_AGE_YEARS),
                subject.warmth() == null
                        ? null
                        : Double.valueOf(subject.warmth().tempC()),
                nineInTen,
                inTime(look(nineInTen == null ? usually(subject) : nineInTen, subject.today()), subject),
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
        return least != null && subject.warmth() != null && subject.warmth().tempC() >= least
                ? new Chances(by.slow() + by.tooCold(), 0, by.tooHot(), by.tooDry(), by.dead())
                : by;
    }

    private static LocalDate look(LocalDate nineInTen, LocalDate today) {
        return nineInTen != null && nineInTen.isAfter(today)
                ? nineInTen.plusDays(LOOK_AFTER_DAYS)
                : today.plusDays(LATE_LOOK_DAYS);
    }

    /** Whoever looks after the last day for a new sowing looks too late to decide. */
    private static LocalDate inTime(LocalDate look, Subject subject) {
        return subject.outlook(What.SOWN, "latest")
                .map(Outlook::to)
                .filter(latest -> latest.isAfter(subject.today()) && latest.isBefore(look))
                .orElse(look);
    }

    /** The end of the crop's usual window where the warmth gives no date, {@code null} when there is none. */
    private static LocalDate usually(Subject subject) {
        return subject.outlook(What.EMERGED).map(Outlook::to).orElse(null);
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
                SeedTold.ageYears(subject).orElse(USUAL_AGE_YEARS),
                seed.seedLifeYears(),
                Math.max(20, Math.min(98, seed.minGerminationPercent())));
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
                .map(event -> event.what() == What.WATERED ? Moisture.MOIST : felt(event.detail(), subject))
                .orElseGet(() -> rained(subject)
                        ? Moisture.MOIST
                        : felt(String.valueOf(subject.findings().get("soil-moisture")), subject));
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

    private static Moisture felt(String detail, Subject subject) {
        return switch (detail) {
            case "dry" -> Moisture.DRY;
            case "moist" -> Moisture.MOIST;
            case "wet" -> Moisture.WET;
            default -> {
                boolean longOut = subject.stands().where() == PlaceKind.OUTDOORS
                        && start(subject).isBefore(subject.today().minusDays(RAIN_COMES_DAYS));
                yield longOut ? Moisture.UNKNOWN_FOR_WEEKS : Moisture.UNKNOWN;
            }
        };
    }

    /**
     * Soil temperature of each day since the sowing: as told or usual there, outdoors from the air where the weather is known,
     * else as usual at that season. */
    private static List<Double> soilTemps(Subject subject, int days) {
        if (subject.warmth() == null) {
            double offC = offFromUsual(subject);
            return start(subject)
                    .datesUntil(subject.today())
                    .map(day -> UsualWarmth.meanC(subject, day) + offC)
                    .toList();
        }
        boolean steady = subject.warmth().told() || subject.stands().where() == PlaceKind.INDOORS;
        Optional<List<Double>> air = steady ? Optional.empty() : Air.means(subject, days);
        return air.map(SoilWarmth::fromAirC)
                .orElseGet(() -> Collections.nCopies(days, subject.warmth().tempC()));
    }

    /** How far the soil was from what is usual when its warmth was told last, too long ago to hold still, °C. */
    private static double offFromUsual(Subject subject) {
        return subject.events().stream()
                .filter(event -> event.what() == What.TEMPERATURE
                        && event.amount() != null
                        && "°C".equals(event.unit())
                        && event.on() != null
                        && !event.on().isBefore(start(subject)))
                .reduce((earlier, later) -> later)
                .map(event -> event.amount() - UsualWarmth.meanC(subject, event.on()))
                .map(offC -> Math.max(-MOST_OFF_C, Math.min(MOST_OFF_C, offC)))
                .orElse(0.0);
    }
}
