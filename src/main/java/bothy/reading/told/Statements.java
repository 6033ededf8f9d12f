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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Makes statements and plans of clauses: for each crop of a clause one, with its count, amount, place, day and plantings. */
public final class Statements {
    /** Doings that end what still stands. */
    private static final Set<String> BEARS_ONCE = Set.of(
            "sweetcorn",
            "cabbage",
            "cauliflower",
            "kohlrabi",
            "carrot",
            "beetroot",
            "parsnip",
            "radish",
            "turnip",
            "swede");

    private static final Set<String> CLEARING = Set.of(
            "ripped",
            "rip",
            "ripping",
            "pulled",
            "pull",
            "pulling",
            "cleared",
            "clear",
            "clearing",
            "composted",
            "compost",
            "grubbed",
            "dug",
            "binned",
            "chucked");

    /** Words beside which plants were cleared since they failed. */
    private static final Set<String> SPOILT = Set.of(
            "blight",
            "blighted",
            "virus",
            "rot",
            "rotted",
            "rotten",
            "dead",
            "died",
            "dying",
            "killed",
            "eaten",
            "ate",
            "bolted",
            "failed",
            "useless",
            "diseased",
            "disease",
            "wilted",
            "wilt",
            "frosted",
            "frost",
            "slugs",
            "never",
            "nothing",
            "mouldy",
            "clubroot",
            "rust",
            "because",
            "infested",
            "sick",
            "lost",
            "mildew",
            "not",
            "no");

    private static final Set<String> PARTS = Set.of(
            "stem", "stems", "stalk", "stalks", "leaf", "leaves", "foliage", "tops", "haulm", "haulms", "roots", "tips",
            "veins", "edges", "shoots", "flowers", "soil", "ends", "bottoms", "bases");
    private static final int PART_REACH = 4;

    private static final Set<String> CAUGHT = Set.of(
            "got", "caught", "had", "took", "hit", "nipped", "touched", "burnt", "burned", "zapped", "blackened");
    private static final Set<String> WHOLE = Set.of("everything", "all", "every", "both", "each");
    private static final Set<String> DEAD = Set.of("dead", "died", "killed", "lost", "goners", "kaput", "mush");

    /** By this age nearly every crop that fruits has borne. By judgement. */
    private static final int BORNE_DAYS = 100;

    private static final Set<String> FINISHED = Set.of("finished", "spent", "done");
    private static final Set<String> BEFORE_OVER = Set.of("are", "is", "all", "now", "been", "were");

    /** A day without a year that lies further ahead is more likely one that is over, days. */
    private static final int SOON = 90;

    private static final Set<What> TOGETHER = java.util.EnumSet.of(
            What.EMERGED,
            What.PRICKED_OUT,
            What.POTTED_ON,
            What.HARDENING_STARTED,
            What.PLANTED_OUT,
            What.MOVED,
            What.FLOWERING);
    private static final Set<What> UNCOUNTED = java.util.EnumSet.of(What.RAIN, What.SOIL_CHECKED, What.NOTE);
    private static final int MOST_PLANTS = 20_000;
    private final Particulars particulars;
    private final WhatMeant whatMeant;

    private final Cropless cropless;

    public Statements(Particulars particulars, Grammar grammar) {
        this.particulars = particulars;
        this.whatMeant = new WhatMeant(grammar.cropNames(), particulars.animals());
        this.cropless = new Cropless(particulars, whatMeant, grammar);
    }

    /** What one message tells as done, in order. */
    public List<Told> told(Passage passage, List<Clause> clauses) {
        List<Told> told = new ArrayList<>();
        for (Clause clause : clauses) {
            if (clause.mood() == Mood.DONE || clause.mood() == Mood.UNCLEAR) {
                if (!toCome(passage, clause)) {
                    told.addAll(ofClause(passage, clause, told));
                }
                if (whatMeant.of(passage, clause, null) == What.NOTE
                        && clause.action().detail() == null) {
                    // What follows is the note's own text.
                    break;
                }
            }
        }
        return Repeats.without(told);
    }

    /** What one message tells as meant. */
    public List<Plan> plans(Passage passage, List<Clause> clauses) {
        List<Plan> plans = new ArrayList<>();
        for (Clause clause : clauses) {
            boolean toCome = clause.mood() == Mood.DONE && toCome(passage, clause);
            if ((clause.mood() == Mood.MEANT || toCome) && !clause.action().state()) {
                plans.addAll(plansOf(passage, clause));
            }
        }
        return plans;
    }

    /** "Sowing peas on Saturday week" is a plan. */
    private static boolean toCome(Passage passage, Clause clause) {
        DaySaid day = WhenTold.said(passage, clause);
        boolean ing = clause.action().form() == bothy.reading.text.Conjugation.Form.ING
                || clause.action().form() == bothy.reading.text.Conjugation.Form.PLAIN;
        if (day == null || !day.known() || !ing) {
            return false;
        }
        LocalDate today = passage.situation().today();
        int verb = clause.action().words().nextSetBit(0);
        boolean over = Cropless.names(passage, clause, Set.of("completed", "done", "finished", "complete"));
        if (over && !day.past().isAfter(today)) {
            return false;
        }
        boolean began = Set.of("was", "were", "been", "started", "finished", "spent", "began")
                .contains(passage.word(verb - 1));
        boolean either = day.past().isBefore(today)
                && day.future().isAfter(today)
                && !began
                && day.future().isBefore(today.plusDays(SOON));
        return day.past().isAfter(today) || either;
    }

    private List<Plan> plansOf(Passage passage, Clause clause) {
        DaySaid day = WhenTold.said(passage, clause);
        LocalDate on = day == null ? null : day.future();
        List<Plan> plans = new ArrayList<>();
        for (CropSaid crop : clause.crops()) {
            What what = whatMeant.of(passage, clause, crop);
            List<String> ids = PlantingsMeant.ids(PlantingsMeant.of(crop, passage, clause, true));
            plans.add(new Plan(what, crop.crop(), what == What.SOWN ? List.of() : ids, on));
        }
        if (plans.isEmpty()) {
            plans.add(new Plan(whatMeant.of(passage, clause, null), null, List.of(), on));
        }
        return plans;
    }

    private List<Told> ofClause(Passage passage, Clause clause, List<Told> before) {
        List<Told> told = new ArrayList<>();
        if (particulars.animals().does(passage, clause)
                && !Set.of("harvested", "died").contains(clause.action().action())
                && clause.action().form() != null) {
            return told; // "Birds are nipping the tops off them."
        }
        if (clause.action().action().equals("colour-turned") && ofAnotherPart(passage, clause)) {
            return told;
        }
        if (clause.action().action().equals("harvested")
                && particulars.animals().done(passage, clause)) {
            return told; // "One has been pulled up, birds I think."
        }
        boolean carried = !clause.crops().isEmpty()
                && clause.crops().stream().allMatch(crop -> crop.end() <= clause.sentence()[0]);
        if (carried && Subject.foreign(passage, clause)) {
            return told; // "Picked the toms. My nephew did the digging."
        }
        for (CropSaid crop : clause.crops()) {
            if (dugFor(passage, clause, crop) || bitten(passage, clause, crop)) {
                return List.of();
            }
            told.add(finished(passage, clause, ofCrop(passage, clause, crop), WhenTold.said(passage, clause, crop)));
        }
        if (told.isEmpty()) {
            DaySaid day = WhenTold.said(passage, clause);
            cropless.told(passage, clause, before).forEach(one -> told.add(finished(passage, clause, one, day)));
        }
        told.replaceAll(one -> caught(passage, clause, one));
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
        if (told.size() == 1
                && told.get(0).event().what() == What.HARVESTED
                && told.get(0).event().amount() != null) {
            List<Told> weighed = OnAnotherDay.weighings(passage, clause, told.get(0));
            if (!weighed.isEmpty()) {
                told.set(0, told.get(0).with(told.get(0).event().withCount(null)));
                told.addAll(weighed);
                return told;
            }
            told.addAll(OnAnotherDay.pickings(passage, clause, told.get(0)));
            return told;
        }
        if (told.size() == 1 && told.get(0).event().count() != null) {
            List<Told> again = OnAnotherDay.of(passage, clause, told.get(0));
            told.set(0, again.isEmpty() ? told.get(0) : OnAnotherDay.first(passage, clause, told.get(0)));
            told.addAll(again);
        }
        return told;
    }

    /** "The frost got the potatoes": caught is not killed, where neither a number nor a "dead" says so. */
    private static Told caught(Passage passage, Clause clause, Told told) {
        int verb = clause.action().start() + 1;
        boolean caught = told.event().what() == What.DIED
                && told.event().count() == null
                && passage.word(clause.action().start()).equals("frost")
                && CAUGHT.contains(passage.word(verb))
                && !WHOLE.contains(passage.word(verb + 1))
                && passage.words().stream().noneMatch(DEAD::contains);
        return caught ? Told.of(Event.of(What.FROST, null, null, told.event().on()), told.from(), told.to()) : told;
    }

    /** "The stems are going black" tells of no fruit. */
    private static boolean ofAnotherPart(Passage passage, Clause clause) {
        for (int at = Math.max(clause.sentence()[0], clause.action().start() - PART_REACH);
                at < clause.action().start();
                at++) {
            if (PARTS.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Slugs had one strawberry leaf" costs no plant. */
    private static boolean bitten(Passage passage, Clause clause, CropSaid crop) {
        return clause.action().action().equals("died")
                && Set.of("leaf", "leaves", "tips", "tip", "flower", "flowers", "bud", "buds", "petals")
                        .contains(passage.word(crop.end()));
    }

    /** "Dug a trench for the beans" gathers none. */
    private static boolean dugFor(Passage passage, Clause clause, CropSaid crop) {
        int before = Set.of("the", "my", "our", "some", "next").contains(passage.word(crop.start() - 1)) ? 2 : 1;
        return clause.action().action().equals("harvested")
                && passage.word(crop.start() - before).equals("for")
                && passage.word(clause.action().start()).startsWith("d");
    }

    /** "Two more came up", "another 3 are up". */
    private static boolean after(Passage passage, Clause clause) {
        return passage.counts(clause.from(), clause.to()).stream()
                .anyMatch(number -> Set.of("more", "extra").contains(passage.word(number.end()))
                        || Set.of("another", "further").contains(passage.word(number.start() - 1)));
    }

    /** "Ripped the tomatoes out": what was picked from before is not lost but done with. */
    private boolean clearedAfterPicking(What what, Passage passage, Clause clause, CropSaid crop) {
        if (what != What.DIED
                || !(CLEARING.contains(passage.word(clause.action().words().nextSetBit(0)))
                        || doneWith(passage, clause))) {
            return false;
        }
        List<Planting> meant = PlantingsMeant.of(crop, passage, clause, true);
        boolean spoilt = passage.words().stream().anyMatch(SPOILT::contains);
        if (fewerThanStand(passage, clause, crop, meant)) {
            return false; // "Binned 3 plants with blight" while the others go on.
        }
        return !meant.isEmpty()
                && meant.stream()
                        .allMatch(planting -> passage.situation().has(planting, Set.of(What.HARVESTED))
                                || !spoilt
                                        && grown(planting, passage.situation().today()));
    }

    private boolean fewerThanStand(Passage passage, Clause clause, CropSaid crop, List<Planting> meant) {
        Integer count = particulars.count(passage, clause, crop);
        Planting one = meant.size() == 1 ? meant.get(0) : null;
        Integer standing = one == null ? null : one.count() == null ? one.sown() : one.count();
        return count != null && standing != null && count < standing;
    }

    /** Nobody tells of every picking: what was sown so long ago and is cleared with no word of a mishap has borne. */
    private static boolean grown(Planting planting, LocalDate today) {
        return planting.begun() != null && planting.begun().isBefore(today.minusDays(BORNE_DAYS));
    }

    /** "The beans are finished", but not "the beans keeled over". */
    private static boolean doneWith(Passage passage, Clause clause) {
        return clause.action().words().stream()
                .anyMatch(at -> FINISHED.contains(passage.word(at))
                        || passage.word(at).equals("over") && BEFORE_OVER.contains(passage.word(at - 1)));
    }

    private Told ofCrop(Passage passage, Clause clause, CropSaid crop) {
        What meant = whatMeant.of(passage, clause, crop);
        boolean over = clearedAfterPicking(meant, passage, clause, crop);
        What what = over ? What.HARVESTED : meant;
        if (what.ofThePlot()) {
            Event weather = particulars.withAmount(Event.of(what, null, null, null), passage, clause, null);
            return Told.of(PlotEvents.told(weather, passage, clause), from(passage, clause), to(passage, clause));
        }
        Event event = Event.of(what, null, crop.single() || crop.certain() ? crop.crop() : null, null)
                .withVariety(crop.variety())
                .withCount(UNCOUNTED.contains(what) ? null : particulars.count(passage, clause, crop))
                .withDetail(clause.action().detail());
        event = particulars.withAmount(event, passage, clause, crop);
        if (what == What.EMERGED && event.count() != null && after(passage, clause)) {
            event = event.withDetail(Event.MORE);
        }
        if (what == What.NOTE && clause.action().detail() == null) {
            event = PlotEvents.told(event, passage, clause);
        } else if (over
                || what == What.HARVESTED
                        && (lastOne(passage, clause)
                                || allAtOnce(passage, clause, crop)
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

    /** "Picked the last of the peas" ends them. */
    private static boolean lastOne(Passage passage, Clause clause) {
        for (int at = clause.from(); at < clause.to(); at++) {
            if (Set.of("last", "final").contains(passage.word(at))
                    && Set.of("of", "ones", "few", "picking", "harvest", "crop", "haul")
                            .contains(passage.word(at + 1))) {
                return true;
            }
        }
        return false;
    }

    /** "Picked all the corn" ends what bears once; of beans it is only what was ripe. */
    private static boolean allAtOnce(Passage passage, Clause clause, CropSaid crop) {
        if (!BEARS_ONCE.contains(crop.crop())) {
            return false;
        }
        int at = crop.start() - 1;
        while (at >= clause.from() && Set.of("the", "my", "our", "of").contains(passage.word(at))) {
            at--;
        }
        return at >= clause.from() && passage.word(at).equals("all");
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
        if (dated.event().what() == What.TEMPERATURE) {
            dated = PlotEvents.degrees(dated, passage);
        }
        boolean asked = clause.mood() == Mood.UNCLEAR || !Sequence.allows(dated, passage.situation());
        return asked ? dated.doubting(Doubt.About.REALLY_DONE, null) : dated;
    }

    static int from(Passage passage, Clause clause) {
        return passage.tokens().get(clause.from()).from();
    }

    static int to(Passage passage, Clause clause) {
        return passage.tokens().get(clause.to() - 1).to();
    }
}
