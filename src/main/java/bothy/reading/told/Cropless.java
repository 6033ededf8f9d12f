package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.grammar.Grammar;
import bothy.reading.grammar.LaterSentences;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Makes statements of a clause that names no crop: of the plot, of "them", of everything, or of a strange word that may be a crop. */
final class Cropless {
    /** What a crop is gathered in: "picked a big bowl". */
    static final Set<String> VESSELS =
            Set.of("bowl", "bowlful", "basket", "bag", "bagful", "colander", "punnet", "trug");

    private static final Set<String> ALL = Set.of("everything", "everyone", "lot", "whole", "everybody", "entire");

    private static final Set<String> EVERYTHING = Set.of("everything", "everyone", "everybody");

    private static final Set<What> BEGUN = Set.of(What.SOWN, What.PLANTED_OUT, What.MOVED);

    private final Particulars particulars;
    private final WhatMeant whatMeant;
    private final UnknownCrops unknownCrops;

    private final HungToKeep hungToKeep;
    private final Endings endings;

    Cropless(Particulars particulars, WhatMeant whatMeant, Endings endings, Grammar grammar) {
        this.endings = endings;
        this.particulars = particulars;
        this.whatMeant = whatMeant;
        this.unknownCrops = new UnknownCrops(grammar);
        this.hungToKeep = new HungToKeep(grammar.cropNames());
    }

    List<Told> told(Passage passage, Clause clause, List<Told> before) {
        What what = whatMeant.of(passage, clause, null);
        boolean weather =
                what.ofThePlot() || what == What.TEMPERATURE || what == What.SOIL_CHECKED || what == What.NOTE;
        if (!weather && Subject.foreign(passage, clause)) {
            return List.of();
        }
        Event event = particulars.withAmount(
                Event.of(what, null, null, null).withDetail(clause.action().detail()), passage, clause, null);
        int from = Statements.from(passage, clause);
        int to = Statements.to(passage, clause);
        if (what == What.NOTE && clause.action().detail() != null) {
            return new Unnamed(passage, clause, before).seen(Told.of(event, from, to));
        }
        if (what == What.NOTE) {
            return List.of(Notes.told(PlotEvents.told(event, passage, clause), passage, clause));
        }
        if (what == What.TEMPERATURE || what.ofThePlot() || what == What.SOIL_CHECKED) {
            return List.of(Told.of(PlotEvents.told(event, passage, clause), from, to));
        }
        if (ofNothing(passage, clause)
                || onlyThing(passage, clause)
                || HouseholdThings.are(what, passage, clause, before)) {
            return List.of();
        }
        if (HungToKeep.is(what, passage, clause) && !hungToKeep.justNamed(before)) {
            List<Planting> hung = hungToKeep.meant(passage.situation());
            Event kept = Particulars.withPlace(
                    Event.of(What.STORED, null, null, null).withCount(particulars.loose(passage, clause)),
                    passage,
                    clause,
                    null);
            return hung.isEmpty()
                    ? List.of()
                    : List.of(new Unnamed(passage, clause, before).among(Told.of(kept, from, to), hung));
        }
        if (what == What.HARVESTED
                && (whatMeant.cleared(passage, clause, null) || Endings.takenUpWhole(passage, clause))) {
            event = event.withDetail("last");
        }
        if (BEGUN.contains(what) && LaterSentences.ofAnother(passage, clause.sentence()[0])) {
            return List.of(Told.of(event.withCount(particulars.loose(passage, clause)), from, to)
                    .oneOfCrops(List.of())); // "Methi sown in trays. The other one I put in bags."
        }
        List<Planting> done = what == What.DIED ? endings.allCleared(passage, clause) : List.of();
        if (!done.isEmpty()) {
            Event last = Event.of(What.HARVESTED, null, null, null).withDetail("last");
            return List.of(Told.of(last, from, to).about(PlantingsMeant.ids(done)));
        }
        event = event.withCount(particulars.loose(passage, clause));
        if (Set.of(What.PLANTED_OUT, What.POTTED_ON, What.MOVED, What.STORED, What.CURED, What.SOWN)
                .contains(what)) {
            event = Particulars.withPlace(event, passage, clause, null);
        }
        if (what == What.FRUIT_SET
                && clause.action().form() != null
                && before.isEmpty()
                && !names(
                        passage,
                        clause,
                        Set.of("they", "them", "these", "those", "all", "fruit", "fruits", "flowers"))) {
            return List.of(); // "Set units to metric".
        }
        if (what == What.EMERGED && standsUp(passage, clause)) {
            return List.of();
        }
        if (what == What.DIED && packet(passage, clause)) {
            return List.of();
        }
        boolean trench = Set.of(What.WATERED, What.FED).contains(what)
                && names(
                        passage,
                        clause,
                        Set.of("trench", "trenches", "lawn", "hanging", "baskets", "hedge", "compost"));
        if (trench) {
            return List.of();
        }
        boolean onlyThings = Passage.within(passage.crops(), clause.from(), clause.to()).stream()
                .anyMatch(CropSaid::thing);
        if (onlyThings
                && Set.of(What.HARVESTED, What.SOWN, What.EMERGED, What.PLANTED_OUT)
                        .contains(what)) {
            return List.of();
        }
        boolean dug = (what == What.HARVESTED
                        || what == What.DIED
                                && passage.word(clause.action().words().nextSetBit(0))
                                        .equals("lost"))
                && event.count() == null
                && event.amount() == null
                && before.isEmpty()
                && !names(
                        passage,
                        clause,
                        Set.of(
                                "them",
                                "it",
                                "they",
                                "these",
                                "those",
                                "ones",
                                "lot",
                                "all",
                                "first",
                                "everything",
                                "some"))
                && !names(passage, clause, VESSELS);
        boolean heap = what == What.HARVESTED
                && names(
                        passage,
                        clause,
                        Set.of("compost", "manure", "muck", "soil", "leafmould", "sand", "grit", "weeds"));
        if (dug || heap) {
            return List.of();
        }
        boolean gap = clause.action().action().equals("planted")
                && clause.action().end() - clause.action().start()
                        > clause.action().words().cardinality();
        if (gap && !names(passage, clause, Set.of("them", "it", "they", "these", "those", "ones", "lot", "all"))) {
            return List.of();
        }
        Told thinned =
                Thinnings.of(passage, clause, Told.of(event, from, to), before, particulars.leftOver(passage, clause));
        if (thinned != null) {
            return List.of(thinned);
        }
        Told strange = before.isEmpty() && !names(passage, clause, ALL)
                ? unknownCrops.in(passage, clause, Told.of(event, from, to))
                : null;
        if (strange == null && HouseholdThings.putAway(what, passage, clause)) {
            return List.of();
        }
        return strange != null
                ? List.of(strange)
                : new Unnamed(passage, clause, before)
                                .meant(
                                        Told.of(event, from, to),
                                        ofAll(passage, clause, what) && !lotOfOne(passage, clause, before))
                                .stream()
                                .map(one -> hungToKeep.kept(one, passage, clause))
                                .toList();
    }

    /** "The only thing I fed today was the cat": what was done was done to what stands behind "was". */
    private static boolean onlyThing(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        return Set.of("i", "we").contains(passage.word(verb - 1))
                && Set.of("thing", "things").contains(passage.word(verb - 2))
                && IntStream.range(clause.action().end(), clause.sentence()[1])
                        .anyMatch(at -> Set.of("was", "were").contains(passage.word(at)));
    }

    /** "Sown today: nothing." */
    private static boolean ofNothing(Passage passage, Clause clause) {
        int at = clause.action().lastWord() + 1;
        while (at < clause.to() && (passage.tokens().get(at).mark() || passage.end("date", at) > 0)) {
            at = Math.max(at + 1, passage.end("date", at));
        }
        return at < clause.to() && Set.of("nothing", "nowt", "none", "nil").contains(passage.word(at));
    }

    /** Whether all that grows is meant; "slugs had the lot" may be any one lot, which is to be asked. */
    private static boolean ofAll(Passage passage, Clause clause, What what) {
        return names(passage, clause, what == What.DIED ? EVERYTHING : ALL);
    }

    /** "Tied in the cucumbers. 6 litres of water for the lot": of the one crop that the message is about. */
    private static boolean lotOfOne(Passage passage, Clause clause, List<Told> before) {
        List<CropSaid> named = Passage.within(passage.crops(), 0, clause.from()).stream()
                .filter(crop -> !crop.thing())
                .toList();
        boolean one = !before.isEmpty()
                && before.get(0).event().crop() != null
                && before.stream().map(told -> told.event().crop()).distinct().count() == 1;
        return names(passage, clause, Set.of("lot"))
                && !names(passage, clause, Set.of("whole", "everything"))
                && (one
                        || before.isEmpty()
                                && named.stream().map(CropSaid::crop).distinct().count() == 1);
    }

    /** "The seed was two years old so I binned it". */
    private static boolean packet(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        boolean thrown = Set.of(
                        "binned", "bin", "threw", "chucked", "composted", "cleared", "thrown", "burned", "burnt")
                .contains(passage.word(verb));
        if (thrown && passage.seeds().stream().anyMatch(seed -> seed.at() <= verb && verb - seed.at() <= 10)) {
            return true;
        }
        for (int at = Math.max(clause.sentence()[0], verb - 10); thrown && at < verb; at++) {
            if (Set.of("seed", "packet", "packets", "compost", "label", "labels", "pot", "tray")
                    .contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Shading's up", "the new fence is up": what stands before the "up" is no plant. */
    private static boolean standsUp(Passage passage, Clause clause) {
        int at = clause.action().start() - 1;
        while (at >= clause.sentence()[0]
                && Set.of("all", "now", "just", "finally", "is", "are", "'s", "also", "both")
                        .contains(passage.word(at))) {
            at--;
        }
        return clause.action().state()
                && at >= clause.sentence()[0]
                && passage.tokens().get(at).aWord()
                && !Subject.plantOrGrower(passage.word(at))
                && Set.of("up", "through", "showing")
                        .contains(passage.word(clause.action().lastWord()));
    }

    /** Whether a clause says one of some words. */
    static boolean names(Passage passage, Clause clause, Set<String> words) {
        for (int at = clause.from(); at < clause.to(); at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** The clause without the crop that was carried on to it where a strange name stands in its place. */
    Clause ofItsOwn(Passage passage, Clause clause) {
        return unknownCrops.named(passage, clause) ? clause.with(List.of()) : clause;
    }
}
