package bothy.advice;

import bothy.advice.facts.ByCalendar;
import bothy.advice.facts.DrySpell;
import bothy.advice.facts.Frosts;
import bothy.advice.facts.Latest;
import bothy.advice.facts.Lesson;
import bothy.advice.facts.Lifted;
import bothy.advice.facts.Outlook;
import bothy.advice.facts.Stands;
import bothy.advice.facts.Warmth;
import bothy.advice.reckoning.Reckoning;
import bothy.advice.reckoning.Subject;
import bothy.agronomy.Emergence;
import bothy.agronomy.climate.SoilWarmth;
import bothy.almanac.Climates;
import bothy.almanac.PlaceKind;
import bothy.almanac.Places;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.almanac.SowingCalendars;
import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The facts of one planting. */
final class PlantingFacts {
    /** A temperature told is taken as still so for three weeks. */
    private static final int WARMTH_KEEPS_DAYS = 21;
    /** Nobody tells of every shower: after so many days with no word and no weather source, how long it was dry is not known. */
    private static final int UNWATCHED_DAYS = 14;
    /** Less rain than this does not wet the soil below the mulch. Common practice. */
    private static final double WETTING_RAIN_MM = 2;
    /** From the first flower of spring to the last fruit of autumn it is no longer than this. */
    private static final int BEARING_DAYS = 200;
    /** What a crop that stands for years does anew in each. */
    private static final Set<What> EACH_YEAR =
            EnumSet.of(What.FLOWERING, What.FRUIT_SET, What.COLOUR_TURNED, What.HARVESTED);

    private final Planting planting;
    private final Sheet sheet;
    private final List<Event> events;
    private final Day day;
    private final PlotDiary diary;
    private final Places places;
    private final Climates climates;

    PlantingFacts(
            Planting planting,
            Sheet sheet,
            List<Event> events,
            Day day,
            PlotDiary diary,
            Places places,
            Climates climates) {
        this.climates = climates;
        this.diary = diary;
        this.places = places;
        this.planting = planting;
        this.sheet = sheet;
        this.events = events.stream()
                .filter(event -> event.on() != null && !event.on().isAfter(day.today()))
                .sorted(Comparator.comparing(Event::on))
                .toList();
        this.day = day;
    }

    /**
     * @param calendar when the crop is sown here, {@code null} where it goes by frost
     */
    List<Object> facts(SeasonDates seasons, Frosts frosts, SowingCalendars.Calendar calendar) {
        List<Object> facts = new ArrayList<>();
        events.forEach(event -> facts.add(DayFacts.happened(event)));
        Map<What, Latest> latest = latest();
        facts.addAll(latest.values());
        LocalDate lifted = Lifting.of(planting, events).orElse(null);
        if (lifted != null) {
            facts.add(new Lifted(planting.id(), lifted));
        }
        Stands stands = stands(latest, seasons, calendar);
        facts.add(stands);
        Warmth warmth = warmth(stands);
        if (warmth != null) {
            facts.add(warmth);
        }
        if (calendar != null) {
            facts.add(new ByCalendar(planting.id(), calendar.never(), calendar.notInHeat()));
        }
        if (sheet != null) {
            Ripening ripening = stands.where() == PlaceKind.OUTDOORS || !planting.begunAtAll()
                    ? Ripening.of(sheet, day.normals(), day.weather()).orElse(null)
                    : null;
            boolean cool = stands.where() != PlaceKind.UNDER_GLASS
                    && day.garden().grower().coolSummers();
            List<Outlook> outlooks = new Outlooks(
                            planting,
                            sheet,
                            latest,
                            lifted,
                            frosts,
                            season(seasons, frosts),
                            day.today(),
                            ripening,
                            calendar,
                            day.garden().grower().southern(),
                            cool)
                    .all(seasons, warmth, soil(latest, stands, warmth));
            facts.addAll(outlooks);
            facts.addAll(Reckoning.of(subject(latest, outlooks, stands, warmth, frosts)));
        }
        drySpell(latest).ifPresent(facts::add);
        facts.addAll(lessons());
        return facts;
    }

    /** The frosts around the beginning of the planting, those of today where it has not begun. */
    private Frosts season(SeasonDates seasons, Frosts frosts) {
        return planting.begun() == null ? frosts : seasons.around(planting.begun());
    }

    private Subject subject(
            Map<What, Latest> latest, List<Outlook> outlooks, Stands stands, Warmth warmth, Frosts frosts) {
        return new Subject(
                day.today(),
                day.garden().grower(),
                planting,
                sheet,
                events,
                diary.events(),
                latest,
                outlooks,
                stands,
                warmth,
                frosts,
                day.weather(),
                day.inquiries().stream()
                        .filter(asked -> DayFacts.about(asked, sheet == null ? Map.of() : Map.of(sheet.crop(), sheet))
                                .contains(planting.id()))
                        .toList(),
                signs(latest),
                findings(),
                day.normals(),
                climates.at(day.garden().grower()));
    }

    /** Signs just told, and earlier ones that nothing has come up since. */
    private List<SignSeen> signs(Map<What, Latest> latest) {
        Latest up = latest.get(What.EMERGED);
        return diary.signs().stream()
                .filter(sign -> planting.id().equals(sign.planting()))
                .filter(sign -> day.signs().contains(sign)
                        || sign.on() != null && (up == null || up.on().isBefore(sign.on())))
                .toList();
    }

    private Map<String, String> findings() {
        Map<String, String> findings = new HashMap<>();
        diary.findings().stream()
                .filter(finding -> planting.id().equals(finding.planting())
                        || finding.planting() == null && planting.crop().equals(finding.crop()))
                .forEach(finding -> findings.put(finding.about(), finding.found()));
        return findings;
    }

    private Map<What, Latest> latest() {
        Map<What, Latest> latest = new EnumMap<>(What.class);
        LocalDate seasonBegan = seasonBegan();
        for (Event event : events) {
            if (EACH_YEAR.contains(event.what()) && event.on().isBefore(seasonBegan)) {
                continue;
            }
            Latest before = latest.get(event.what());
            latest.put(
                    event.what(),
                    new Latest(
                            planting.id(),
                            event.what(),
                            before == null ? event.on() : before.first(),
                            event.on(),
                            (int) ChronoUnit.DAYS.between(event.on(), day.today()),
                            before == null ? 1 : before.times() + 1));
        }
        return latest;
    }

    /** What stands for years flowers and bears anew after its last picking: what it did before makes no stage of this season. */
    private LocalDate seasonBegan() {
        if (sheet == null || !sheet.perennial()) {
            return LocalDate.MIN;
        }
        LocalDate longAgo = day.today().minusDays(BEARING_DAYS);
        return events.stream()
                .filter(event -> event.what() == What.HARVESTED && "last".equals(event.detail()))
                .map(event -> event.on().plusDays(1))
                .filter(longAgo::isBefore)
                .max(Comparator.naturalOrder())
                .orElse(longAgo);
    }

    private Stands stands(Map<What, Latest> latest, SeasonDates seasons, SowingCalendars.Calendar calendar) {
        boolean inContainer = planting.container() != null;
        Optional<PlaceKind> told = places.kind(planting.place());
        if (told.isPresent()) {
            return new Stands(planting.id(), told.get(), inContainer);
        }
        boolean out = latest.containsKey(What.PLANTED_OUT) || !inContainer && sownOutdoors(seasons, calendar);
        return new Stands(planting.id(), out ? PlaceKind.OUTDOORS : PlaceKind.INDOORS, inContainer);
    }

    /** With neither place nor pot told: sets and what is always sown in place are outdoors, the rest from its time outdoors on. */
    private boolean sownOutdoors(SeasonDates seasons, SowingCalendars.Calendar calendar) {
        if (sheet == null || sheet.sowing() == null) {
            return false;
        }
        boolean inPlace = sheet.sowing().where() == Sheet.Where.OUTDOORS
                || EnumSet.of(Planting.Start.SET, Planting.Start.CLOVE, Planting.Start.TUBER)
                        .contains(planting.start());
        if (planting.begun() == null) {
            return inPlace;
        }
        if (calendar != null) {
            return inPlace
                    || SowingCalendars.atOrAfter(
                                    calendar.inPlace(),
                                    planting.begun(),
                                    day.garden().grower().southern())
                            .filter(time -> !time.from().isAfter(planting.begun()))
                            .isPresent();
        }
        Range weeks = sheet.sowing().weeksFromLastFrostOutdoors();
        return inPlace
                || weeks != null
                        && !planting.begun()
                                .isBefore(seasons.around(planting.begun())
                                        .lastSpring()
                                        .plusDays(Math.round(weeks.low() * 7)));
    }

    private Warmth warmth(Stands stands) {
        Optional<Event> told = Optional.empty();
        for (Event event : events) {
            boolean fresh = !event.on().isBefore(day.today().minusDays(WARMTH_KEEPS_DAYS));
            if (ofSoil(event)) {
                // Under cover that of the sowing day holds for the sowing, however long they take.
                boolean ofTheSowing = event.what() == What.SOWN
                        || stands.where() != PlaceKind.OUTDOORS && event.on().equals(planting.begun());
                told = fresh || ofTheSowing ? Optional.of(event) : told;
            } else if (event.what() == What.MOVED || event.what() == What.PLANTED_OUT) {
                // A temperature told before says nothing of where they stand now.
                told = Optional.empty();
            }
        }
        told = told.or(() -> soilOfThePlot(stands));
        if (told.isPresent()) {
            return new Warmth(planting.id(), told.get().amount(), true);
        }
        Optional<Double> usual = places.usualTempC(planting.place()).or(() -> places.usualTempC(stands.where()));
        if (usual.isPresent()) {
            return new Warmth(planting.id(), usual.get(), false);
        }
        return outdoors().map(tempC -> new Warmth(planting.id(), tempC, false)).orElse(null);
    }

    /** A diary may hold more than can be reckoned with, from a file or an older version. */
    private static boolean ofSoil(Event event) {
        return event.amount() != null
                && "°C".equals(event.unit())
                && event.amount() >= Emergence.LEAST_SOIL_C
                && event.amount() <= Emergence.MOST_SOIL_C;
    }

    /** "Soil is 8 degrees" told of no crop is that of the open ground. */
    private Optional<Event> soilOfThePlot(Stands stands) {
        return stands.where() == PlaceKind.OUTDOORS && !stands.inContainer()
                ? diary.soilTemperatures().stream()
                        .filter(PlantingFacts::ofSoil)
                        .filter(event -> !event.on().isAfter(day.today())
                                && !event.on().isBefore(day.today().minusDays(WARMTH_KEEPS_DAYS)))
                        .max(Comparator.comparing(Event::on))
                : Optional.empty();
    }

    /** Mean air temperature of the last ten days, the nearest thing to a soil temperature that is at hand. */
    private Optional<Double> outdoors() {
        List<WeatherDay> last = day.weather().stream()
                .filter(one -> !one.date().isAfter(day.today())
                        && one.date().isAfter(day.today().minusDays(10)))
                .filter(one -> one.tmin() != null && one.tmax() != null)
                .toList();
        return last.isEmpty()
                ? Optional.empty()
                : Optional.of(last.stream()
                        .mapToDouble(one -> (one.tmin() + one.tmax()) / 2)
                        .average()
                        .orElseThrow());
    }

    /** Soil temperature of each day since the sowing outdoors or under glass, where the weather of all of them is known. */
    private List<Double> soil(Map<What, Latest> latest, Stands stands, Warmth warmth) {
        boolean steady = warmth == null || warmth.told() || stands.where() == PlaceKind.INDOORS;
        if (steady
                || latest.containsKey(What.MOVED)
                || planting.begun() == null
                || !planting.begun().isBefore(day.today())) {
            return List.of();
        }
        List<Double> air = day.weather().stream()
                .filter(one ->
                        !one.date().isBefore(planting.begun()) && one.date().isBefore(day.today()))
                .filter(one -> one.tmin() != null && one.tmax() != null)
                .map(one -> (one.tmin() + one.tmax()) / 2)
                .toList();
        boolean each = air.size() == ChronoUnit.DAYS.between(planting.begun(), day.today());
        return each ? SoilWarmth.fromAirC(air) : List.of();
    }

    /** The dry days up to today, or up to the rain just told, which ends them: how long it was dry is what matters then. */
    private Optional<DrySpell> drySpell(Map<What, Latest> latest) {
        LocalDate end = day.told().stream()
                .filter(event -> event.what() == What.RAIN && event.on() != null)
                .map(Event::on)
                .min(Comparator.naturalOrder())
                .orElse(day.today());
        LocalDate wet = lastWet(latest, end);
        if (wet == null || !wet.isBefore(end)) {
            return Optional.empty();
        }
        int days = (int) ChronoUnit.DAYS.between(wet, end) - 1;
        boolean watched = day.weather().stream()
                .anyMatch(one -> one.rain() != null && one.date().isBefore(end));
        return days <= 0 || days > UNWATCHED_DAYS && !watched
                ? Optional.empty()
                : Optional.of(new DrySpell(planting.id(), days, end.minusDays(1)));
    }

    private LocalDate lastWet(Map<What, Latest> latest, LocalDate end) {
        LocalDate given =
                latest.containsKey(What.WATERED) ? latest.get(What.WATERED).on() : planting.begun();
        Stream<LocalDate> rained = Stream.concat(
                diary.rains().stream(),
                day.weather().stream()
                        .filter(one -> one.rain() != null && one.rain() >= WETTING_RAIN_MM)
                        .map(WeatherDay::date));
        return Stream.concat(Stream.ofNullable(given), rained.filter(date -> date.isBefore(end)))
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    private List<Lesson> lessons() {
        LocalDate begun = planting.begun() == null ? day.today() : planting.begun();
        List<Lesson> noted = diary.notes().stream()
                .filter(event -> planting.crop().equals(event.crop()))
                .filter(event -> event.planting() == null
                        || planting.id().equals(event.planting())
                        || event.on().isBefore(begun))
                .map(event -> new Lesson(
                        planting.id(),
                        event.detail(),
                        event.on(),
                        event.on().isBefore(begun) && !planting.id().equals(event.planting())))
                .toList();
        return Stream.concat(noted.stream().filter(one -> !one.earlier()), lastSeason(noted).stream())
                .toList();
    }

    /** What was noted in the last year of earlier notes is one lesson, so that none of its notes is passed over. */
    private static Optional<Lesson> lastSeason(List<Lesson> noted) {
        List<Lesson> earlier = noted.stream()
                .filter(Lesson::earlier)
                .sorted(Comparator.comparing(Lesson::on))
                .toList();
        if (earlier.isEmpty()) {
            return Optional.empty();
        }
        Lesson last = earlier.get(earlier.size() - 1);
        String texts = earlier.stream()
                .filter(one -> one.on().getYear() == last.on().getYear())
                .map(Lesson::text)
                .distinct()
                .collect(Collectors.joining("; "));
        return Optional.of(new Lesson(last.planting(), texts, last.on(), true));
    }
}
