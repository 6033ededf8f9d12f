package bothy.advice;

import bothy.advice.facts.Asked;
import bothy.advice.facts.DrySpell;
import bothy.advice.facts.Frosts;
import bothy.advice.facts.Happened;
import bothy.advice.facts.Latest;
import bothy.advice.facts.Lesson;
import bothy.advice.facts.Meant;
import bothy.advice.facts.Sign;
import bothy.advice.facts.Stands;
import bothy.advice.facts.Today;
import bothy.advice.facts.Told;
import bothy.advice.facts.Warmth;
import bothy.almanac.PlaceKind;
import bothy.almanac.Places;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.garden.Event;
import bothy.garden.Inquiry;
import bothy.garden.Plan;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Turns a day into the facts that the rules match. */
final class DayFacts {
    private static final String PACKET = "packet:";
    /** A temperature told is taken as still so for three weeks. */
    private static final int WARMTH_KEEPS_DAYS = 21;
    /** Nobody tells of every shower: after so many days with no word and no weather source, how long it was dry is not known. */
    private static final int UNWATCHED_DAYS = 14;
    /** Less rain than this does not wet the soil below the mulch. Common practice. */
    private static final double WETTING_RAIN_MM = 2;

    private final Map<String, Sheet> sheets;
    private final Places places;

    DayFacts(Map<String, Sheet> sheets, Places places) {
        this.sheets = sheets;
        this.places = places;
    }

    /** The crop of a planting that stands in for one still in its packet. */
    static Optional<String> cropInPacket(String planting) {
        return planting.startsWith(PACKET) ? Optional.of(planting.substring(PACKET.length())) : Optional.empty();
    }

    List<Object> of(Day day) {
        List<Object> facts = new ArrayList<>();
        facts.add(new Today(day.today()));
        facts.addAll(day.weather());
        SeasonDates seasons = new SeasonDates(day.garden().grower());
        Frosts frosts = seasons.around(day.today());
        facts.add(frosts);
        Map<String, Planting> subjects = subjects(day);
        Map<String, List<Event>> events = byPlanting(day.garden().events());
        for (Planting known : subjects.values()) {
            Sheet sheet = sheets.get(known.crop());
            Planting planting = startedFrom(known, sheet, events.getOrDefault(known.id(), List.of()));
            facts.add(planting);
            PlantingFacts about =
                    new PlantingFacts(planting, sheet, events.getOrDefault(planting.id(), List.of()), day);
            facts.addAll(about.facts(seasons, frosts));
        }
        subjects.values().stream()
                .map(Planting::crop)
                .distinct()
                .map(sheets::get)
                .filter(java.util.Objects::nonNull)
                .forEach(facts::add);
        said(day, facts);
        return facts;
    }

    /** Garlic "planted out" was begun from cloves; onions count as sets unless they were sown in something. */
    private static Planting startedFrom(Planting planting, Sheet sheet, List<Event> events) {
        if (sheet == null || sheet.growth() == null || planting.start() == Planting.Start.PACKET) {
            return planting;
        }
        boolean sownInSomething =
                events.stream().anyMatch(event -> event.what() == What.SOWN && event.container() != null);
        Planting.Start start =
                switch (sheet.growth().start()) {
                    case CLOVE -> Planting.Start.CLOVE;
                    case TUBER -> Planting.Start.TUBER;
                    case SET -> sownInSomething ? Planting.Start.SEED : Planting.Start.SET;
                    case SEED -> planting.start();
                };
        return new Planting(
                planting.id(),
                planting.crop(),
                planting.variety(),
                planting.place(),
                planting.container(),
                start,
                planting.begun(),
                planting.count(),
                planting.sown(),
                planting.ended());
    }

    /** The plantings that the rules look at: all that grow, those just spoken of, and crops asked about that are not begun. */
    private static Map<String, Planting> subjects(Day day) {
        Map<String, Planting> subjects = new TreeMap<>();
        day.garden().growing().forEach(planting -> subjects.put(planting.id(), planting));
        for (Event told : day.told()) {
            day.garden().planting(String.valueOf(told.planting())).ifPresent(one -> subjects.put(one.id(), one));
        }
        for (Inquiry inquiry : day.inquiries()) {
            inquiry.plantings().forEach(id -> day.garden().planting(id).ifPresent(one -> subjects.put(id, one)));
            packet(inquiry.crop(), inquiry.plantings(), subjects);
        }
        for (Plan plan : day.plans()) {
            packet(plan.crop(), plan.plantings(), subjects);
        }
        return subjects;
    }

    private static void packet(String crop, List<String> plantings, Map<String, Planting> subjects) {
        if (crop != null && plantings.isEmpty()) {
            subjects.put(
                    PACKET + crop,
                    new Planting(PACKET + crop, crop, null, null, null, Planting.Start.PACKET, null, null, null, null));
        }
    }

    private static List<String> about(String crop, List<String> plantings) {
        if (!plantings.isEmpty()) {
            return plantings;
        }
        return crop == null ? java.util.Collections.singletonList(null) : List.of(PACKET + crop);
    }

    private static void said(Day day, List<Object> facts) {
        for (Event told : day.told()) {
            facts.add(new Told(
                    told.planting(), told.what(), told.on(), told.count(), told.amount(), told.unit(), told.detail()));
        }
        for (Event event : day.garden().events()) {
            if (event.planting() == null) {
                facts.add(happened(event));
            }
        }
        for (Inquiry inquiry : day.inquiries()) {
            for (String planting : about(inquiry.crop(), inquiry.plantings())) {
                facts.add(new Asked(inquiry.question(), planting, inquiry.topic()));
            }
        }
        for (Plan plan : day.plans()) {
            for (String planting : about(plan.crop(), plan.plantings())) {
                facts.add(new Meant(planting, plan.what(), plan.on()));
            }
        }
        for (SignSeen sign : day.garden().signs()) {
            facts.add(new Sign(
                    sign.planting(), sign.sign(), sign.on(), day.signs().contains(sign)));
        }
    }

    private static Map<String, List<Event>> byPlanting(List<Event> events) {
        Map<String, List<Event>> sorted = new LinkedHashMap<>();
        for (Event event : events) {
            if (event.planting() != null) {
                sorted.computeIfAbsent(event.planting(), id -> new ArrayList<>())
                        .add(event);
            }
        }
        return sorted;
    }

    private static Happened happened(Event event) {
        return new Happened(
                event.planting(),
                event.what(),
                event.on(),
                event.count(),
                event.amount(),
                event.unit(),
                event.detail());
    }

    /** The facts of one planting. */
    private final class PlantingFacts {
        private final Planting planting;
        private final Sheet sheet;
        private final List<Event> events;
        private final Day day;

        PlantingFacts(Planting planting, Sheet sheet, List<Event> events, Day day) {
            this.planting = planting;
            this.sheet = sheet;
            this.events = events.stream()
                    .filter(event -> event.on() != null && !event.on().isAfter(day.today()))
                    .sorted(Comparator.comparing(Event::on))
                    .toList();
            this.day = day;
        }

        List<Object> facts(SeasonDates seasons, Frosts frosts) {
            List<Object> facts = new ArrayList<>();
            events.forEach(event -> facts.add(happened(event)));
            Map<What, Latest> latest = latest();
            facts.addAll(latest.values());
            Stands stands = stands(latest, seasons);
            facts.add(stands);
            Warmth warmth = warmth(stands);
            if (warmth != null) {
                facts.add(warmth);
            }
            if (sheet != null) {
                facts.addAll(new Outlooks(planting, sheet, latest, frosts, day.today()).all(seasons, warmth));
            }
            drySpell(latest).ifPresent(facts::add);
            facts.addAll(lessons());
            return facts;
        }

        private Map<What, Latest> latest() {
            Map<What, Latest> latest = new EnumMap<>(What.class);
            for (Event event : events) {
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

        private Stands stands(Map<What, Latest> latest, SeasonDates seasons) {
            boolean inContainer = planting.container() != null;
            Optional<PlaceKind> told = places.kind(planting.place());
            if (told.isPresent()) {
                return new Stands(planting.id(), told.get(), inContainer);
            }
            boolean out = latest.containsKey(What.PLANTED_OUT) || !inContainer && sownOutdoors(seasons);
            return new Stands(planting.id(), out ? PlaceKind.OUTDOORS : PlaceKind.INDOORS, inContainer);
        }

        /** With neither place nor pot told: sets and what is always sown in place are outdoors, the rest from its time outdoors on. */
        private boolean sownOutdoors(SeasonDates seasons) {
            if (sheet == null || sheet.sowing() == null || planting.begun() == null) {
                return false;
            }
            Range weeks = sheet.sowing().weeksFromLastFrostOutdoors();
            boolean inPlace = sheet.sowing().where() == Sheet.Where.OUTDOORS
                    || EnumSet.of(Planting.Start.SET, Planting.Start.CLOVE, Planting.Start.TUBER)
                            .contains(planting.start());
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
                boolean fresh = event.on().isAfter(day.today().minusDays(WARMTH_KEEPS_DAYS));
                if (event.amount() != null && "°C".equals(event.unit())) {
                    told = fresh || event.what() == What.SOWN ? Optional.of(event) : told;
                } else if (event.what() == What.MOVED || event.what() == What.PLANTED_OUT) {
                    // A temperature told before says nothing of where they stand now.
                    told = Optional.empty();
                }
            }
            if (told.isPresent()) {
                return new Warmth(planting.id(), told.get().amount(), true);
            }
            Optional<Double> usual = places.usualTempC(planting.place()).or(() -> places.usualTempC(stands.where()));
            if (usual.isPresent()) {
                return new Warmth(planting.id(), usual.get(), false);
            }
            return outdoors()
                    .map(tempC -> new Warmth(planting.id(), tempC, false))
                    .orElse(null);
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
                    day.garden().events().stream()
                            .filter(event -> event.what() == What.RAIN && event.on() != null)
                            .map(Event::on),
                    day.weather().stream()
                            .filter(one -> one.rain() != null && one.rain() >= WETTING_RAIN_MM)
                            .map(WeatherDay::date));
            return Stream.concat(Stream.ofNullable(given), rained.filter(date -> date.isBefore(end)))
                    .max(Comparator.naturalOrder())
                    .orElse(null);
        }

        private List<Lesson> lessons() {
            LocalDate begun = planting.begun() == null ? day.today() : planting.begun();
            return day.garden().events().stream()
                    .filter(event -> event.what() == What.NOTE && event.detail() != null)
                    .filter(event -> planting.crop().equals(event.crop())
                            && !planting.id().equals(event.planting()))
                    .filter(event -> event.on() != null && event.on().isBefore(begun))
                    .map(event -> new Lesson(planting.id(), event.detail(), event.on()))
                    .toList();
        }
    }
}
