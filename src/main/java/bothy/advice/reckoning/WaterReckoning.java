package bothy.advice.reckoning;

import bothy.advice.facts.Latest;
import bothy.advice.reckoned.DryThenWet;
import bothy.advice.reckoned.WaterBalance;
import bothy.advice.reckoned.WaterRhythm;
import bothy.agronomy.climate.Spells;
import bothy.agronomy.water.CropCoefficient;
import bothy.agronomy.water.Demand;
import bothy.agronomy.water.Ledger;
import bothy.agronomy.water.Roots;
import bothy.agronomy.water.SoilWater;
import bothy.agronomy.water.Stages;
import bothy.agronomy.water.TypicalEvapotranspiration;
import bothy.agronomy.water.Watering;
import bothy.almanac.PlaceKind;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.garden.Inquiry;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The balance of one planting's water, when to water next and how much. */
final class WaterReckoning {
    private static final int DAYS_AHEAD = 14;
    private static final int MOST_DAYS = 400;
    private static final int RHYTHM_DAYS = 60;
    /** Rooted depth of a plug or a sprouted seed (FAO-56: 0.15 to 0.2 m is usual). */
    private static final double FIRST_ROOTS_M = 0.15;

    private final Subject subject;
    private final Standing standing;
    private final LocalDate start;
    private final WaterDays days;

    private WaterReckoning(Subject subject, Standing standing, LocalDate start) {
        this.subject = subject;
        this.standing = standing;
        this.start = start;
        this.days = new WaterDays(subject, standing);
    }

    static Stream<?> of(Subject subject) {
        LocalDate start = WaterDays.start(subject);
        if (subject.sheet().waterUse() == null || start == null || !growsOutOfTheHouse(subject)) {
            return Stream.empty();
        }
        long age = ChronoUnit.DAYS.between(start, subject.today());
        if (age < 0) {
            return Stream.empty();
        }
        return Standing.of(subject).stream().flatMap(standing -> new WaterReckoning(subject, standing, start).facts());
    }

    /** Trays and pots in the house are looked at daily instead; what is sown in place is up when its balance begins to matter. */
    private static boolean growsOutOfTheHouse(Subject subject) {
        boolean over = subject.last(What.CURED).isPresent()
                || subject.last(What.STORED).isPresent();
        boolean out = subject.last(What.PLANTED_OUT).isPresent()
                || subject.stands().where() == PlaceKind.OUTDOORS
                        && subject.last(What.EMERGED).isPresent()
                || subject.stands().where() == PlaceKind.UNDER_GLASS
                        && subject.last(What.POTTED_ON).isPresent();
        return out && !over;
    }

    private Stream<?> facts() {
        Ledger ledger = new Ledger(start, crop(), standing.ground(), demand());
        LocalDate today = subject.today();
        boolean settledToday = days.watered(today) || days.felt(today) != null;
        LocalDate lastPast = settledToday ? today : today.minusDays(1);
        if (!days.watched(today) || ChronoUnit.DAYS.between(start, today) > MOST_DAYS) {
            return rhythm(ledger).stream();
        }
        List<Ledger.Told> past = days.from(start, lastPast);
        List<Ledger.Told> ahead = days.from(lastPast.plusDays(1), today.plusDays(DAYS_AHEAD));
        Ledger.Course course = ledger.course(past, ahead);
        return Stream.concat(Stream.of(balance(course.lines(), course.next())), dryThenWet(course.lines()).stream());
    }

    /** From full soil on, under typical days without rain: how long the freely taken water lasts. */
    private Optional<WaterRhythm> rhythm(Ledger ledger) {
        LocalDate today = subject.today();
        List<Ledger.Told> typical = today.datesUntil(today.plusDays(RHYTHM_DAYS))
                .map(day -> new Ledger.Told(day, null, null, 0.0, 0, null))
                .toList();
        return ledger.next(List.of(), typical).filter(next -> next.litres() > 0).map(next -> {
            double litres = Math.min(next.litres(), dose());
            long lasts = Math.max(1, ChronoUnit.DAYS.between(today, next.date()));
            double can = canLitres();
            return new WaterRhythm(
                    subject.id(),
                    (int) Math.max(1, Math.floor(lasts * litres / next.litres())),
                    litres / standing.plants(),
                    forAll(litres),
                    forAll(Watering.cans(litres, can)),
                    can,
                    typicalMm());
        });
    }

    private Range typicalMm() {
        Demand demand = demand();
        TypicalEvapotranspiration typical = TypicalEvapotranspiration.in(demand.climate(), demand.usualMeanC());
        return new Range(typical.lowMm(), typical.highMm());
    }

    private Ledger.Crop crop() {
        Sheet.WaterUse use = subject.sheet().waterUse();
        double deepest = Math.max(FIRST_ROOTS_M, use.rootDepthM().low());
        return new Ledger.Crop(
                new CropCoefficient(use.kcInitial(), use.kcMiddle(), use.kcEnd()),
                stages(use),
                new Roots(FIRST_ROOTS_M, deepest),
                use.freeShare());
    }

    /** The table's lengths, moved by the first flower and by the turning of the colour where the diary tells of them. */
    private Stages stages(Sheet.WaterUse use) {
        Stages stages = new Stages(use.initialDays(), use.developmentDays(), use.middleDays(), use.lateDays());
        Optional<LocalDate> flower = seen(What.FLOWERING);
        if (flower.isPresent()) {
            stages = stages.withMiddleFrom(start, flower.get());
        }
        Optional<LocalDate> ripe = seen(What.COLOUR_TURNED);
        boolean pickedOnce =
                subject.sheet().harvest() != null && subject.sheet().harvest().pickEveryDays() == null;
        return ripe.isPresent() && pickedOnce ? stages.withLateFrom(start, ripe.get()) : stages;
    }

    private Optional<LocalDate> seen(What what) {
        return subject.last(what)
                .map(Latest::first)
                .filter(day -> day.isAfter(start) && ChronoUnit.DAYS.between(start, day) <= MOST_DAYS);
    }

    private Demand demand() {
        Double latitude = subject.grower().latitude();
        boolean known = latitude != null && Math.abs(latitude) <= 90;
        return new Demand(known ? latitude : null, UsualWarmth.climate(subject), UsualWarmth.meanC(subject));
    }

    private WaterBalance balance(List<Ledger.Line> lines, Optional<Ledger.Next> next) {
        SoilWater now = lines.isEmpty()
                ? SoilWater.FULL
                : lines.get(lines.size() - 1).done().after();
        double free = lines.isEmpty() ? 0 : lines.get(lines.size() - 1).day().freeMm();
        LocalDate today = subject.today();
        boolean dry = days.felt(today) == SoilWater.Finger.DRY && !days.watered(today);
        double missing = dry
                ? standing.ground().litresMissing(now)
                : next.map(Ledger.Next::litres).orElse(0.0);
        double litres = Math.min(missing, dose());
        double can = canLitres();
        String basis = basis(lines);
        return new WaterBalance(
                subject.id(),
                now.depletionMm(),
                free,
                dry ? today : next.map(Ledger.Next::date).orElse(null),
                litres / standing.plants(),
                forAll(litres),
                forAll(Watering.cans(litres, can)),
                can,
                basis,
                basis.equals("weather-known") && standing.told());
    }

    /** The most that is carried to a plant at a time, by its sheet, for all plants; what is still missing makes the next time come sooner. */
    private double dose() {
        Range each = subject.sheet().watering() == null
                ? null
                : subject.sheet().watering().litresPerPlant();
        return each == null ? Double.MAX_VALUE : each.high() * standing.plants();
    }

    /** Where nobody counted the plants nothing is said for all of them. */
    private Double forAll(double value) {
        return standing.counted() ? Double.valueOf(value) : null;
    }

    private double canLitres() {
        return subject.inquiries().stream()
                .filter(inquiry -> "L".equals(inquiry.unit()) && inquiry.amount() != null)
                .map(Inquiry::amount)
                .filter(litres -> litres >= 1 && litres <= 30)
                .findFirst()
                .orElseGet(() -> subject.grower().units().canLitres());
    }

    /** How much of the last fortnight's weather was known. */
    private String basis(List<Ledger.Line> lines) {
        List<Ledger.Line> last = lines.subList(Math.max(0, lines.size() - DAYS_AHEAD), lines.size());
        long known =
                last.stream().filter(line -> days.weatherKnown(line.date())).count();
        if (known > 0) {
            return known == last.size() ? "weather-known" : "weather-in-part";
        }
        LocalDate today = subject.today();
        boolean ahead = today.datesUntil(today.plusDays(DAYS_AHEAD)).anyMatch(days::weatherKnown);
        return ahead ? "weather-ahead" : "weather-typical";
    }

    /** Drought before today's rain and water, or before the rain of the coming two days. */
    private Optional<DryThenWet> dryThenWet(List<Ledger.Line> lines) {
        LocalDate today = subject.today();
        List<Double> missing = new ArrayList<>();
        List<Double> free = new ArrayList<>();
        boolean told = true;
        for (Ledger.Line line : lines) {
            if (line.date().isBefore(today)) {
                missing.add(line.done().after().depletionMm());
                free.add(line.day().freeMm());
                told = !line.guessed();
            }
        }
        for (LocalDate day = today; !day.isAfter(today.plusDays(2)); day = day.plusDays(1)) {
            double water = days.rainMm(day);
            if (water > 0 && !missing.isEmpty()) {
                Spells.DryThenWet spell = Spells.dryThenWet(missing, free, water);
                return Optional.of(new DryThenWet(subject.id(), spell.dryDays(), water, day, told));
            }
        }
        return Optional.empty();
    }
}
