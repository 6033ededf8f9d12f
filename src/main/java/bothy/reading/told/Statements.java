package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Plan;
import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.grammar.Grammar;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Makes statements and plans of clauses: for each crop of a clause one, with its count, amount, place, day and plantings. */
public final class Statements {
    /** What lots that were begun and stand together do together. */
    private static final Set<What> TOGETHER = EnumSet.of(
            What.EMERGED,
            What.PRICKED_OUT,
            What.POTTED_ON,
            What.HARDENING_STARTED,
            What.PLANTED_OUT,
            What.MOVED,
            What.FLOWERING);

    private static final Set<What> UNCOUNTED = EnumSet.of(What.RAIN, What.SOIL_CHECKED, What.NOTE);
    private static final int MOST_PLANTS = 20_000;
    private final Particulars particulars;
    private final WhatMeant whatMeant;

    private final Cropless cropless;
    private final Endings endings;
    private final PlansTold plansTold;
    private final VarietyBehind varietyBehind;

    public Statements(Particulars particulars, Grammar grammar) {
        this.particulars = particulars;
        this.whatMeant = new WhatMeant(grammar.cropNames(), particulars.animals());
        this.endings = new Endings(particulars);
        this.plansTold = new PlansTold(whatMeant);
        this.varietyBehind = new VarietyBehind(grammar.spelling()::known);
        this.cropless = new Cropless(particulars, whatMeant, endings, grammar);
    }

    /** What one message tells as meant. */
    public List<Plan> plans(Passage passage, List<Clause> clauses) {
        return plansTold.in(passage, clauses);
    }

    /** What one message tells as done, in order. */
    public List<Told> told(Passage passage, List<Clause> clauses) {
        List<Told> told = new ArrayList<>();
        for (Clause clause : clauses) {
            if (clause.mood() == Mood.DONE || clause.mood() == Mood.UNCLEAR) {
                if (!PlansTold.toCome(passage, clause)) {
                    Clause own = carried(clause) ? cropless.ofItsOwn(passage, clause) : clause;
                    told.addAll(StandsWhereBegun.without(own, ofClause(passage, own, told), told));
                }
                if (whatMeant.of(passage, clause, null) == What.NOTE
                        && clause.action().detail() == null) {
                    // What follows is the note's own text.
                    break;
                }
            }
        }
        List<Told> once = Repeats.without(AmountAfterDay.joined(passage, told));
        return varietyBehind.with(passage, Sequence.sownFirst(PartsOfAll.apart(passage, once)));
    }

    private static boolean carried(Clause clause) {
        return !clause.crops().isEmpty()
                && clause.crops().stream().allMatch(crop -> crop.end() <= clause.sentence()[0]);
    }

    private List<Told> ofClause(Passage passage, Clause clause, List<Told> before) {
        List<Told> told = new ArrayList<>();
        if (particulars.animals().goesOn(passage, clause)) {
            return told; // "Birds are nipping the tops off them."
        }
        if (BroughtIn.ofNothingNamed(passage, clause, before)) {
            return told;
        }
        if (clause.action().action().equals("colour-turned") && Seeming.ofAnotherPart(passage, clause)) {
            return told;
        }
        if (Seeming.partDead(passage, clause)
                || ThrownAway.noPlant(passage, clause)
                || LostThings.are(passage, clause)) {
            return told;
        }
        if (clause.action().action().equals("harvested")
                && (particulars.animals().done(passage, clause)
                        || particulars.animals().gathered(passage, clause))) {
            return told; // "One has been pulled up, birds I think."
        }
        if (carried(clause)
                && Subject.foreign(passage, clause)
                && !particulars.animals().begins(passage, clause)) {
            return told; // "Picked the toms. My nephew did the digging."
        }
        for (CropSaid crop : clause.crops()) {
            if (whatMeant.young(clause, crop) || Seeming.dugFor(passage, clause, crop)) {
                return List.of();
            }
            if (Seeming.bitten(passage, clause, crop)) {
                return frosted(passage, clause);
            }
            told.add(finished(passage, clause, ofCrop(passage, clause, crop), WhenTold.said(passage, clause, crop)));
        }
        if (told.isEmpty()) {
            DaySaid day = WhenTold.said(passage, clause);
            cropless.told(passage, clause, before)
                    .forEach(one -> told.add(
                            one.event().on() != null && day == null
                                    ? inItsScale(one, passage)
                                    : finished(passage, clause, one, day)));
        }
        if (after(passage, clause)) {
            told.replaceAll(one -> one.event().what() == What.EMERGED
                            && one.event().count() != null
                            && one.event().detail() == null
                    ? one.with(one.event().withDetail(Event.MORE))
                    : one);
        }
        if (before.isEmpty()) {
            told.replaceAll(one -> CountedBefore.with(passage, clause, one));
        }
        told.replaceAll(one -> Seeming.caught(passage, clause, one));
        if (told.size() == 1
                && told.get(0).event().what() == What.DIED
                && passage.word(clause.action().start()).equals("frost")) {
            Told killed = told.get(0);
            told.add(
                    finished( // "Frost killed everything" tells of a frost too.
                            passage,
                            clause,
                            Told.of(Event.of(What.FROST, null, null, null), killed.from(), killed.to()),
                            WhenTold.said(passage, clause)));
        }
        told.replaceAll(one -> particulars.lost(passage, clause, LeftOver.dated(passage, clause, one, before)));
        if (told.size() == 1) {
            told.set(0, LeftOver.asked(passage, clause, told.get(0), particulars));
        }
        if (told.size() == 1 && told.get(0).event().what() == What.RAIN) {
            return OnAnotherDay.rains(passage, clause, told.get(0));
        }
        if (told.size() == 1 && told.get(0).event().what() == What.FROST) {
            return OnAnotherDay.frosts(passage, clause, told.get(0));
        }
        if (told.size() == 1
                && told.get(0).event().what() == What.HARVESTED
                && told.get(0).event().amount() != null) {
            List<Told> weighed = OnAnotherDay.weighings(passage, clause, told.get(0));
            if (!weighed.isEmpty()) {
                told.set(0, told.get(0).with(told.get(0).event().withCount(null)));
                told.addAll(weighed);
                return told;
            }
            return OnAnotherDay.pickings(passage, clause, told.get(0));
        }
        if (told.size() == 1 && told.get(0).event().what() == What.FED) {
            return WaterAndFeed.of(passage, clause, told.get(0));
        }
        List<Told> daily = told.size() == 1 ? OnAnotherDay.counted(passage, clause, told.get(0)) : List.of();
        if (!daily.isEmpty()) {
            return daily;
        }
        if (told.size() == 1) {
            List<Told> places = InAnotherPlace.of(passage, clause, told.get(0));
            if (places.size() > 1) {
                return places;
            }
        }
        if (told.size() == 1) {
            List<Told> again = OnAnotherDay.of(passage, clause, told.get(0));
            told.set(0, again.isEmpty() ? told.get(0) : OnAnotherDay.first(passage, clause, told.get(0)));
            told.addAll(again);
        }
        return told;
    }

    /** "Frost killed the potato tops": a frost, and no plant lost. */
    private static List<Told> frosted(Passage passage, Clause clause) {
        Told frost = Told.of(Event.of(What.FROST, null, null, null), from(passage, clause), to(passage, clause));
        return passage.word(clause.action().start()).equals("frost")
                ? List.of(finished(passage, clause, frost, WhenTold.said(passage, clause)))
                : List.of();
    }

    /** "Two more came up", "another 3 are up". */
    private static boolean after(Passage passage, Clause clause) {
        return passage.counts(clause.from(), clause.to()).stream()
                .anyMatch(number -> Set.of("more", "extra").contains(passage.word(number.end()))
                        || Set.of("another", "further").contains(passage.word(number.start() - 1)));
    }

    private Told ofCrop(Passage passage, Clause clause, CropSaid crop) {
        What meant = whatMeant.of(passage, clause, crop);
        boolean over = endings.clearedAfterPicking(meant, passage, clause, crop);
        What what = over ? What.HARVESTED : meant;
        if (what.ofThePlot()) {
            Event weather = particulars.withAmount(Event.of(what, null, null, null), passage, clause, null);
            return Told.of(PlotEvents.told(weather, passage, clause), from(passage, clause), to(passage, clause));
        }
        Event event = Event.of(what, null, crop.single() || crop.certain() ? crop.crop() : null, null)
                .withVariety(crop.variety())
                .withCount(UNCOUNTED.contains(what) ? null : particulars.count(passage, clause, crop))
                .withDetail(clause.action().detail());
        if (!alongside(passage, clause, crop)) {
            event = particulars.withAmount(event, passage, clause, crop);
        }
        if (what == What.NOTE && clause.action().detail() == null) {
            event = PlotEvents.told(event, passage, clause);
        } else if (over
                || what == What.HARVESTED
                        && (Endings.lastOne(passage, clause)
                                || Endings.allAtOnce(passage, clause, crop)
                                || whatMeant.cleared(passage, clause, crop))) {
            event = event.withDetail("last");
        }
        Told told = Told.of(event, from(passage, clause), to(passage, clause));
        if (what == What.SOWN) {
            return begun(told, passage, clause, crop);
        }
        boolean toPlace = Set.of(What.PLANTED_OUT, What.POTTED_ON, What.MOVED, What.PRICKED_OUT)
                .contains(what);
        Told placed = toPlace || what == What.STORED || what == What.CURED
                ? told.with(Particulars.withPlace(told.event(), passage, clause, crop))
                : told;
        int verb = clause.action().words().nextSetBit(0);
        // "Tomatoes on the windowsill pricked out": a place before the verb tells which, one after it where to.
        List<Planting> fitting = toPlace && crop.end() <= verb
                ? PlantingsMeant.of(crop, passage, crop.start(), verb, true)
                : PlantingsMeant.of(crop, passage, clause, !toPlace);
        return withPlantings(placed, fitting, crop, passage);
    }

    /** "6 litres to the chillies, and the aubergines too": how much the others had is not told. */
    private static boolean alongside(Passage passage, Clause clause, CropSaid crop) {
        boolean after = clause.crops().stream().anyMatch(other -> other.end() < crop.start());
        return after
                && (Set.of("too", "also").contains(passage.word(crop.end()))
                        || passage.word(crop.end()).equals("as")
                                && passage.word(crop.end() + 1).equals("well"));
    }

    /** A sowing begins a planting of its own. */
    private Told begun(Told told, Passage passage, Clause clause, CropSaid crop) {
        Event aged = SeedTold.aged(told.event(), passage, clause, crop);
        Told placed = told.with(Particulars.withPlace(aged, passage, clause, crop));
        if (crop.single() || crop.certain()) {
            List<Planting> chitted = LikeliestLot.chitted(placed.event(), passage.situation());
            return chitted.isEmpty() ? placed : placed.about(PlantingsMeant.ids(chitted));
        }
        return ofAKind(placed, crop, passage);
    }

    private static Told ofAKind(Told told, CropSaid crop, Passage passage) {
        return PlantingsMeant.grownBefore(crop, passage.situation())
                .or(() -> PlantingsMeant.moreOf(crop, passage))
                .or(() -> PlantingsMeant.namedBefore(crop, passage))
                .map(kind -> told.with(told.event().withPlanting(null, kind)).assuming("crop"))
                .orElseGet(() -> told.oneOfCrops(crop.crops()));
    }

    static Told withPlantings(Told told, List<Planting> all, CropSaid crop, Passage passage) {
        boolean several = all.size() > 1 && !PlantingsMeant.ofAll(told.event().what()) && !every(crop, passage);
        List<Planting> fitting = several ? LikeliestLot.of(told.event(), all, passage.situation()) : all;
        if (fitting.isEmpty()) {
            return crop.single() || crop.certain() ? told : ofAKind(told, crop, passage);
        }
        if (fitting.size() == 1) {
            Planting planting = fitting.get(0);
            return told.with(told.event().withPlanting(null, planting.crop())).about(List.of(planting.id()));
        }
        List<Planting> mentioned = fitting.stream()
                .filter(PlantingsMeant.mentioned(passage.situation())::contains)
                .toList();
        boolean oneCrop = fitting.stream().map(Planting::crop).distinct().count() == 1;
        if (PlantingsMeant.ofAll(told.event().what()) || every(crop, passage) || oneCrop && together(told, fitting)) {
            return told.with(told.event()
                            .withPlanting(null, oneCrop ? fitting.get(0).crop() : null))
                    .about(PlantingsMeant.ids(fitting));
        }
        // "The beans" may be any kind, so the ones talked about are meant; two plantings of one named crop are told
        // apart by asking.
        if (mentioned.size() == 1 && !oneCrop) {
            return told.with(told.event().withPlanting(null, mentioned.get(0).crop()))
                    .about(PlantingsMeant.ids(mentioned))
                    .assuming("planting");
        }
        return told.with(
                        told.event().withPlanting(null, oneCrop ? fitting.get(0).crop() : null))
                .oneOf(fitting);
    }

    /** "The toms are up": lots that were sown together and stand together do together what no number tells apart. */
    private static boolean together(Told told, List<Planting> lots) {
        return TOGETHER.contains(told.event().what())
                && told.event().count() == null
                && lots.stream().allMatch(lot -> lot.begun() != null)
                && lots.stream()
                                .map(lot -> Arrays.asList(lot.begun(), lot.place(), lot.container()))
                                .distinct()
                                .count()
                        == 1;
    }

    /** "Dug all the garlic", "both lots of peas". */
    private static boolean every(CropSaid crop, Passage passage) {
        int at = crop.start() - 1;
        while (Set.of("the", "my", "our", "of", "lots", "rows", "beds", "those", "these")
                .contains(passage.word(at))) {
            at--;
        }
        return Set.of("all", "both").contains(passage.word(at));
    }

    private static Told finished(Passage passage, Clause clause, Told told, DaySaid day) {
        Told dated = WhenTold.dated(told, day, passage);
        Integer count = dated.event().count();
        if (count != null && (count <= 0 || count > MOST_PLANTS)) {
            dated = dated.with(dated.event().withCount(null)).doubting(Doubt.About.HOW_MANY, String.valueOf(count));
        }
        if (!Plausible.amount(dated.event())) {
            dated = dated.with(dated.event().withAmount(null, null))
                    .doubting(Doubt.About.HOW_MANY, Plausible.told(dated.event()));
        }
        dated = inItsScale(dated, passage);
        boolean asked = clause.mood() == Mood.UNCLEAR || !Sequence.allows(dated, passage.situation());
        return asked ? dated.doubting(Doubt.About.REALLY_DONE, null) : dated;
    }

    private static Told inItsScale(Told told, Passage passage) {
        boolean degrees =
                told.event().what() == What.TEMPERATURE || told.event().what() == What.FROST;
        return degrees ? PlotEvents.degrees(told, passage) : told;
    }

    static int from(Passage passage, Clause clause) {
        return passage.tokens().get(clause.from()).from();
    }

    static int to(Passage passage, Clause clause) {
        return passage.tokens().get(clause.to() - 1).to();
    }
}
