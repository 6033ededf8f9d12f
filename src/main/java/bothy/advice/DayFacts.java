package bothy.advice;

import bothy.advice.facts.Asked;
import bothy.advice.facts.ClimateHere;
import bothy.advice.facts.CuesTold;
import bothy.advice.facts.Frosts;
import bothy.advice.facts.Happened;
import bothy.advice.facts.Meant;
import bothy.advice.facts.NightTold;
import bothy.advice.facts.NoSummer;
import bothy.advice.facts.Sign;
import bothy.advice.facts.SizeTold;
import bothy.advice.facts.Today;
import bothy.advice.facts.Told;
import bothy.advice.reckoning.ForecastReckoning;
import bothy.advice.reckoning.PlaceReckoning;
import bothy.almanac.Climates;
import bothy.almanac.CraftNotes;
import bothy.almanac.Places;
import bothy.almanac.Sheet;
import bothy.almanac.SowingCalendars;
import bothy.garden.Climate;
import bothy.garden.Event;
import bothy.garden.Inquiry;
import bothy.garden.Plan;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Turns a day into the facts that the rules match. */
final class DayFacts {
    /** Topic of the question what can be sown now. */
    private static final String NOW = "now";
    /** Topic of the question what grows where there are only pots. */
    private static final String IN_POTS = "grow-in-pots";

    private static final String FOLLOWING = "following";

    private static final String PACKET = "packet:";
    /** Rules look a fortnight back and ahead. */
    private static final int NEAR_DAYS = 14;

    private final Map<String, Sheet> sheets;
    private final Places places;
    private final Climates climates;
    private final SowingCalendars calendars;

    DayFacts(Map<String, Sheet> sheets, Places places, Climates climates, SowingCalendars calendars) {
        this.sheets = sheets;
        this.places = places;
        this.climates = climates;
        this.calendars = calendars;
    }

    /** The crop of a planting that stands in for one still in its packet. */
    static Optional<String> cropInPacket(String planting) {
        return planting.startsWith(PACKET) ? Optional.of(planting.substring(PACKET.length())) : Optional.empty();
    }

    /**
     * @param ofCases plantings whose cases are weighed on the day
     */
    List<Object> of(Day day, Set<String> ofCases) {
        List<Object> facts = new ArrayList<>();
        facts.add(new Today(day.today()));
        day.weather().stream().filter(one -> near(one, day.today())).forEach(facts::add);
        facts.addAll(PlotFigures.of(day));
        ForecastReckoning.of(day.inquiries(), day.weather(), day.today()).ifPresent(facts::add);
        SeasonDates seasons = new SeasonDates(day.garden().grower(), day.normals(), climates);
        Frosts frosts = seasons.around(day.today());
        facts.add(frosts);
        ClimateHere climate = seasons.climate();
        facts.add(climate);
        Optional<NoSummer> noSummer = seasons.noSummer();
        noSummer.ifPresent(facts::add);
        day.inquiries()
                .forEach(asked -> facts.addAll(
                        PlaceReckoning.of(asked, day.garden().grower(), frosts, day.normals(), day.today())));
        Map<String, Planting> subjects = subjects(day, new Regarded(day, ofCases));
        PlotDiary diary = PlotDiary.of(day.garden());
        Map<String, List<Event>> events = diary.byPlanting();
        for (Planting known : subjects.values()) {
            Sheet sheet = sheets.get(known.crop());
            Planting planting = startedFrom(known, sheet, events.getOrDefault(known.id(), List.of()));
            facts.add(planting);
            PlantingFacts about = new PlantingFacts(
                    planting, sheet, events.getOrDefault(planting.id(), List.of()), day, diary, places, climates);
            facts.addAll(about.facts(
                    seasons,
                    frosts,
                    noSummer.isPresent() ? SowingCalendars.Calendar.empty() : calendar(sheet, climate, frosts)));
        }
        subjects.values().stream()
                .map(Planting::crop)
                .distinct()
                .map(sheets::get)
                .filter(java.util.Objects::nonNull)
                .forEach(facts::add);
        said(day, diary, facts);
        besideQuestions(day, seasons, climate, facts);
        return facts;
    }

    /** Tender crops go by the last frost where one was told. */
    private SowingCalendars.Calendar calendar(Sheet sheet, ClimateHere climate, Frosts frosts) {
        boolean tender =
                sheet != null && sheet.growth() != null && sheet.growth().hardiness() == Sheet.Hardiness.TENDER;
        return sheet == null || tender && frosts.told() && !frosts.none()
                ? null
                : calendars.of(sheet.crop(), climate.climate()).orElse(null);
    }

    /** Rules look a fortnight back and ahead; what lies further off is in the figures. */
    private static boolean near(WeatherDay weather, LocalDate today) {
        return Math.abs(ChronoUnit.DAYS.between(today, weather.date())) <= NEAR_DAYS;
    }

    /** Garlic "planted out" was begun from cloves; onions count as sets, strawberries as plants unless they were sown in something. */
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
                    case SLIP -> Planting.Start.PLANT;
                    case PLANT -> sownInSomething ? Planting.Start.SEED : Planting.Start.PLANT;
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

    /**
     * The plantings that the rules look at: those that grow, as far as they are regarded, those just spoken of, and crops asked about
     * that are not begun.
     */
    private Map<String, Planting> subjects(Day day, Regarded regarded) {
        Map<String, Planting> subjects = new TreeMap<>();
        day.garden().growing().stream()
                .filter(regarded::holds)
                .forEach(planting -> subjects.put(planting.id(), planting));
        for (Event told : day.told()) {
            day.garden().planting(String.valueOf(told.planting())).ifPresent(one -> subjects.put(one.id(), one));
        }
        for (Inquiry inquiry : day.inquiries()) {
            inquiry.plantings().forEach(id -> day.garden().planting(id).ifPresent(one -> subjects.put(id, one)));
            packet(inquiry.crop(), ofNextSowing(inquiry, sheets) ? List.of() : inquiry.plantings(), subjects);
            if (anyCrop(inquiry)) {
                sheets.keySet().forEach(crop -> packet(crop, List.of(), subjects));
            }
        }
        for (Plan plan : day.plans()) {
            packet(plan.crop(), plan.plantings(), subjects);
        }
        return subjects;
    }

    /** "What can I sow now?" is asked of every crop there is a sheet for. */
    private static boolean anyCrop(Inquiry inquiry) {
        return inquiry.question() == Question.WHAT_TO_GROW
                && !FOLLOWING.equals(inquiry.topic())
                && inquiry.crop() == null
                && inquiry.plantings().isEmpty();
    }

    private static void packet(String crop, List<String> plantings, Map<String, Planting> subjects) {
        if (crop != null && plantings.isEmpty()) {
            subjects.put(
                    PACKET + crop,
                    new Planting(PACKET + crop, crop, null, null, null, Planting.Start.PACKET, null, null, null, null));
        }
    }

    /** What a question is about: its plantings; the next sowing of the crop where that is asked and what grows says nothing of it. */
    static List<String> about(Inquiry asked, Map<String, Sheet> sheets) {
        if (!ofNextSowing(asked, sheets)) {
            return about(asked.crop(), asked.plantings());
        }
        if (asked.question() == Question.WHEN_SOW) {
            // What grows may be sown again in succession, and the crop has its dates besides.
            List<String> both = new ArrayList<>(asked.plantings());
            both.add(PACKET + asked.crop());
            return both;
        }
        return about(asked.crop(), List.of());
    }

    private static boolean ofNextSowing(Inquiry asked, Map<String, Sheet> sheets) {
        Sheet sheet = asked.crop() == null ? null : sheets.get(asked.crop());
        if (sheet == null || asked.plantings().isEmpty()) {
            return false;
        }
        boolean setWhole = sheet.growth() != null && sheet.growth().start() != Sheet.Start.SEED;
        return switch (asked.question()) {
            case STILL_TIME, WHEN_SOW -> true;
            case WHEN_PLANT_OUT -> setWhole;
            default -> false;
        };
    }

    private static List<String> about(String crop, List<String> plantings) {
        if (!plantings.isEmpty()) {
            return plantings;
        }
        return crop == null ? java.util.Collections.singletonList(null) : List.of(PACKET + crop);
    }

    private void said(Day day, PlotDiary diary, List<Object> facts) {
        for (Event told : day.told()) {
            facts.add(new Told(
                    told.planting(),
                    told.what(),
                    told.on(),
                    told.on() == null ? 0 : (int) ChronoUnit.DAYS.between(told.on(), day.today()),
                    told.count(),
                    told.amount(),
                    told.unit(),
                    told.detail(),
                    told.planting() == null ? told.place() : null));
        }
        for (Event event : diary.events()) {
            if (event.planting() == null) {
                facts.add(happened(event));
            }
        }
        for (Inquiry inquiry : day.inquiries()) {
            for (String planting : about(inquiry, sheets)) {
                // A note answers alone, whatever its question is like.
                Question kind = CraftNotes.is(inquiry.topic()) ? Question.OTHER : inquiry.question();
                facts.add(new Asked(kind, planting, inquiry.topic(), inquiry.eaten()));
            }
            if (anyCrop(inquiry)) {
                String topic = IN_POTS.equals(inquiry.topic()) ? IN_POTS : NOW;
                sheets.keySet().forEach(crop -> facts.add(new Asked(inquiry.question(), PACKET + crop, topic, null)));
            }
        }
        for (Plan plan : day.plans()) {
            for (String planting : about(plan.crop(), plan.plantings())) {
                facts.add(new Meant(planting, plan.what(), plan.on()));
            }
        }
        for (SignSeen sign : diary.signs()) {
            facts.add(new Sign(
                    sign.planting(), sign.sign(), sign.on(), day.signs().contains(sign)));
        }
    }

    /** What a question tells of the harvest, and what can follow in a bed that it asks about. */
    private void besideQuestions(Day day, SeasonDates seasons, ClimateHere climate, List<Object> facts) {
        Following following = new Following(
                sheets.values(), seasons, day.today(), day.garden().grower().coolSummers());
        for (Inquiry inquiry : day.inquiries()) {
            for (String planting : about(inquiry, sheets)) {
                Sheet sheet = planting == null ? null : sheet(day, planting);
                if (FOLLOWING.equals(inquiry.topic()) && climate.climate() == Climate.FROSTY) {
                    facts.add(following.after(planting, sheet));
                }
                if (planting != null
                        && inquiry.question() == Question.WHEN_PLANT_OUT
                        && Inquiry.CELSIUS.equals(inquiry.unit())) {
                    facts.add(new NightTold(planting, inquiry.amount()));
                }
                if (sheet != null && sheet.harvest() != null) {
                    ofHarvest(inquiry, planting, sheet.harvest(), facts);
                }
            }
        }
    }

    private Sheet sheet(Day day, String planting) {
        return cropInPacket(planting)
                .or(() -> day.garden().planting(planting).map(Planting::crop))
                .map(sheets::get)
                .orElse(null);
    }

    private static void ofHarvest(Inquiry inquiry, String planting, Sheet.Harvest harvest, List<Object> facts) {
        List<String> met =
                harvest.cues().stream().filter(inquiry.cues()::contains).toList();
        if (!met.isEmpty()) {
            List<String> open =
                    harvest.cues().stream().filter(cue -> !met.contains(cue)).toList();
            facts.add(new CuesTold(planting, met, open));
        }
        if (inquiry.length() != null && inquiry.width() == null && harvest.sizeCm() != null) {
            facts.add(new SizeTold(planting, 100 * inquiry.length()));
        }
    }

    static Happened happened(Event event) {
        return new Happened(
                event.planting(),
                event.what(),
                event.on(),
                event.count(),
                event.amount(),
                event.unit(),
                event.detail());
    }
}
