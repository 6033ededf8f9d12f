package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a clause without a crop is about: what was just named, "they", "the greenhouse ones", everything, or the one planting there is. */
final class Unnamed {
    private static final Set<String> POINTING =
            Set.of("they", "them", "it", "these", "those", "ones", "both", "all", "this", "that", "one", "lot", "rest");
    private static final Set<String> OBJECT = Set.of("a", "an", "the", "my", "our", "some", "his", "her");
    private static final Set<String> PLANTS = Set.of(
            "row",
            "side",
            "sideshoots",
            "suckers",
            "tips",
            "leaves",
            "growing",
            "lower",
            "bottom",
            "old",
            "dead",
            "yellow",
            "flowers",
            "weakest",
            "spares",
            "rows",
            "lot",
            "pots",
            "pot",
            "bed",
            "tray",
            "trays",
            "seedlings",
            "plants",
            "rest",
            "others",
            "cells",
            "modules",
            "bag",
            "big",
            "huge",
            "crop",
            "whole",
            "first",
            "tops",
            "top",
            "best");
    /** "Peas falling over, put up sticks": what helps is for what was named before it. */
    private static final Set<What> AIDS = Set.of(What.SUPPORTED, What.PROTECTED, What.WATERED, What.FED);

    /** What is seen on plants that stand. */
    private static final Set<What> SEEN = Set.of(What.FRUIT_SET, What.FLOWERING, What.COLOUR_TURNED);

    private static final Set<What> OF_CROP = Set.of(What.HARVESTED, What.DIED, What.SOWN);
    private static final Set<String> AGAIN = Set.of(
            "row", "rows", "batch", "lot", "tray", "sowing", "pinch", "few", "dozen", "line", "drill", "pot", "patch",
            "load", "round");
    /** What may stand before the doing of a sentence that is hardly more than it. */
    private static final Set<String> OPENING =
            Set.of("and", "then", "also", "now", "just", "all", "been", "have", "has");
    /** "Squash cut on Saturday, sat on the floor curing since". */
    private static final Set<String> LYING =
            Set.of("sat", "sitting", "laid", "lying", "hung", "hanging", "spread", "stood", "standing");
    /** So many words may follow a verb that has no object of its own. */
    private static final int TRAILING = 4;

    private final Passage passage;
    private final Clause clause;
    private final List<Told> before;

    Unnamed(Passage passage, Clause clause, List<Told> before) {
        this.passage = passage;
        this.clause = clause;
        this.before = before;
    }

    List<Told> meant(Told told, boolean everything) {
        boolean ofAll = PlantingsMeant.ofAll(told.event().what());
        List<Planting> growing = PlantingsMeant.growing(passage.situation());
        boolean justNamed = !before.isEmpty() && before.get(before.size() - 1).from() >= sentenceFrom();
        boolean over =
                told.event().what() == What.DIED || "last".equals(told.event().detail());
        if (everything && (ofAll || over) && !(growing.isEmpty() && justNamed)) {
            return List.of(growing.size() == 1 ? one(told, growing.get(0)) : told.about(PlantingsMeant.ids(growing)));
        }
        String again = justNamed && told.event().what() == What.SOWN && more()
                ? before.get(before.size() - 1).event().crop()
                : null;
        if (again != null) {
            return List.of(told.with(told.event().withPlanting(null, again)));
        }
        List<Told> carried = ofOne(told, carried(told));
        if (!carried.isEmpty()) {
            // "We lost." after the chillies tells nothing of them: who means them says "them" or goes on in the
            // sentence.
            return !Eaten.only(passage, clause, before) && (points() || everything || goesOn(justNamed) || terse(told))
                    ? carried
                    : List.of();
        }
        if (points()
                && !before.isEmpty()
                && !Sequence.follows(
                        before.get(before.size() - 1).event().what(),
                        told.event().what())) {
            return List.of();
        }
        CropSaid named = namedBefore();
        if (named != null && (points() || AIDS.contains(told.event().what()))) {
            return List.of(Statements.withPlantings(
                            told.with(told.event().withPlanting(null, named.crop())),
                            PlantingsMeant.of(named, passage, clause, false),
                            named,
                            passage)
                    .assuming("crop"));
        }
        List<Planting> placed =
                told() == What.FED && says("them") ? PlantingsMeant.byTheirFeed(passage, clause) : placed(growing);
        if (!placed.isEmpty()) {
            return List.of(among(told, placed));
        }
        CropSaid exclaimed = before.isEmpty() && (terse(told) || ofWhatWasShown(told)) ? namedSentenceBefore() : null;
        if (exclaimed != null) {
            return List.of(Statements.withPlantings(
                            told.with(told.event().withPlanting(null, exclaimed.crop())),
                            PlantingsMeant.of(exclaimed, passage, clause, false),
                            exclaimed,
                            passage)
                    .assuming("crop"));
        }
        List<Planting> mentioned = PlantingsMeant.mentioned(passage.situation());
        boolean fenced = told.event().what() == What.PROTECTED && mentioned.size() == 1;
        if (!mentioned.isEmpty() && (points() || !ofAll || fenced)) {
            return List.of(among(told, mentioned).assuming("planting"));
        }
        return List.of(alone(told, growing, ofAll));
    }

    /** "Potted on the toms, 9 plum and 4 cherry, one snapped": it was one of one lot, which is to be asked. */
    private List<Told> ofOne(Told told, List<Told> carried) {
        boolean counted = told.event().what() == What.DIED && told.event().count() != null;
        List<Planting> among = !counted || carried.size() < 2
                ? List.of()
                : PlantingsMeant.growing(passage.situation()).stream()
                        .filter(planting ->
                                carried.stream().anyMatch(one -> one.plantings().contains(planting.id())))
                        .toList();
        return among.size() < 2
                ? carried
                : List.of(carried.get(0).about(List.of()).oneOf(among));
    }

    /** Growth seen without a crop named: on what was just named, else on what was talked about last. */
    List<Told> seen(Told told) {
        List<Told> carried = carried(told);
        if (!carried.isEmpty()) {
            return points() || !elsewhere() ? carried : List.of();
        }
        if (!points() && elsewhere() && clause.action().form() != null) {
            return List.of(); // "Trimmed the hedge."
        }
        List<Planting> growing = PlantingsMeant.growing(passage.situation());
        List<Planting> mentioned = PlantingsMeant.mentioned(passage.situation());
        List<Planting> likely = mentioned.isEmpty() ? growing : mentioned;
        return List.of(likely.size() == 1 ? one(told, likely.get(0)).assuming("planting") : told);
    }

    private Told alone(Told told, List<Planting> growing, boolean ofAll) {
        List<String> spokenOf = passage.situation().crops();
        if (spokenOf.size() == 1 && (points() || !ofAll)) {
            List<Planting> lots =
                    PlantingsMeant.lots(growing, spokenOf.get(0), told.event().what());
            if (!lots.isEmpty()) {
                return among(told, lots).assuming("planting");
            }
            return told.with(told.event().withPlanting(null, spokenOf.get(0))).assuming("crop");
        }
        if (growing.size() == 1 && told.event().what() != What.SOWN) {
            return one(told, growing.get(0)).assuming("crop");
        }
        if (ofAll) {
            return told.about(PlantingsMeant.ids(growing)).assuming("planting");
        }
        if (growing.isEmpty() || told.event().what() == What.SOWN) {
            return told.oneOfCrops(List.of());
        }
        return told.oneOf(growing);
    }

    /** "Radishes pulled and another row sown": the same crop again. */
    private boolean more() {
        for (int at = clause.from(); at < clause.to(); at++) {
            String next = passage.word(at + 1);
            boolean another =
                    Set.of("another", "second", "next", "new", "fresh").contains(passage.word(at))
                            && AGAIN.contains(next);
            boolean further = passage.word(at).equals("more")
                    && (at + 1 >= clause.to()
                            || Set.of("same", "there", "behind", "after", "for").contains(next)
                            || Set.of("of", "seed", "seeds", "in", ",").contains(next)
                            || passage.tokens().get(at + 1).mark());
            if (another || further) {
                return true;
            }
        }
        return false;
    }

    /** "Mulched the squash, then trimmed the hedge": what was done has an object of its own. */
    private boolean elsewhere() {
        int after = clause.action().lastWord() + 1;
        // "Curing in the shed".
        boolean where =
                passage.places().stream().anyMatch(place -> place.start() == after || place.start() == after + 1);
        return !where
                && OBJECT.contains(passage.word(after))
                && !PLANTS.contains(passage.word(after + 1))
                && !Cropless.VESSELS.contains(passage.word(after + 1))
                && !passage.word(after + 1).equals("other")
                && passage.end("n", after + 1) < 0;
    }

    /** "Weeded and watered", "planted out the squash, fed and watered": another doing in the sentence that named the crop. */
    private boolean goesOn(boolean justNamed) {
        int verb = clause.action().words().nextSetBit(0);
        int counted = Counted.subject(passage, clause);
        String last = passage.word(counted < 0 ? verb - 1 : counted - 1);
        boolean led = counted >= 0
                        && (counted <= clause.from()
                                || Set.of("but", "-", "only").contains(last))
                || Set.of(
                                "and", ",", "then", "also", "i", "we", "have", "been", "plus", "were", "are", "was",
                                "now", "all", "which", "with")
                        .contains(last)
                || passage.word(verb).equals("and")
                || clause.from() == verb && clause.sentence()[0] < verb
                || clause.from() > clause.sentence()[0] && LYING.contains(passage.word(clause.from()));
        boolean whole = counted >= 0
                || clause.action().form() == null
                || AmountAfterDay.weighs(passage, clause, TRAILING)
                || markAfter() - clause.action().end() <= TRAILING;
        return justNamed
                && (led || grown())
                && !elsewhere()
                && (whole || told().ofThePlot() || !OF_CROP.contains(told()));
    }

    /** "Beans in flower since Sunday and today I found the first tiny pods": what is seen next on the plants just named. */
    private boolean grown() {
        int after = clause.action().lastWord() + 1;
        boolean onOthers = Set.of("on", "of", "from", "behind").contains(passage.word(after))
                && !PLANTS.contains(passage.word(after + 1))
                && !PLANTS.contains(passage.word(after + 2))
                && !POINTING.contains(passage.word(after + 1));
        return clause.action().state() && SEEN.contains(told()) && !onOthers && !Subject.foreign(passage, clause);
    }

    /** "Onions cured now. Strung and hung in the garage.": a sentence that is hardly more than its doing, of what the one before named. */
    private boolean terse(Told told) {
        int start = clause.sentence()[0];
        while (start < clause.to() && OPENING.contains(passage.word(start))) {
            start++;
        }
        boolean lost = told.event().what() == What.DIED
                || OF_CROP.contains(told.event().what())
                        && told.event().count() == null
                        && told.event().amount() == null;
        return !lost
                && clause.action().start() == start
                && clause.sentence()[1] - clause.action().end() <= TRAILING + 1
                && !elsewhere();
    }

    /** "Loads of peas! Picked a bowl", "first courgette. Ate it": what is picked is what was just cried out about. */
    private boolean ofWhatWasShown(Told told) {
        int[] shown = passage.sentenceBefore(clause.sentence());
        return told.event().what() == What.HARVESTED && shown != null && shown[1] - shown[0] <= TRAILING;
    }

    /** "Onion tops bent over, lifted the lot": the one crop named before in the sentence, {@code null} when it is not one. */
    private CropSaid namedBefore() {
        boolean lot = says("lot");
        List<CropSaid> named =
                Passage.within(
                                passage.crops(),
                                lot ? 0 : clause.sentence()[0],
                                clause.action().start())
                        .stream()
                        .filter(crop -> !crop.thing() && (lot || crop.single() || crop.certain()))
                        .toList();
        return named.stream().map(CropSaid::crop).distinct().count() == 1 ? named.get(0) : null;
    }

    /** "First new potatoes! 1.8 kg off 3 plants.": the one crop of the sentence before, {@code null} when it is not one. */
    private CropSaid namedSentenceBefore() {
        int[] last = passage.sentenceBefore(clause.sentence());
        List<CropSaid> named = last == null
                ? List.of()
                : Passage.within(passage.crops(), last[0], last[1]).stream()
                        .filter(crop -> !crop.thing() && (crop.single() || crop.certain()))
                        .toList();
        return named.stream().map(CropSaid::crop).distinct().count() == 1 ? named.get(0) : null;
    }

    /** Where what is told of the doing ends: behind a mark stands a remark. */
    private int markAfter() {
        int at = clause.action().end();
        while (at < clause.to() && !passage.tokens().get(at).mark()) {
            at++;
        }
        return at;
    }

    /** "Planted out the squash and watered them in." */
    private List<Told> carried(Told told) {
        if (before.isEmpty()) {
            return List.of();
        }
        // "14 kale netted, the other 2 had died": plants that are counted, not the nets.
        boolean died = told.event().what() == What.DIED && Counted.number(passage, clause) != null;
        int latest = before.get(before.size() - 1).from();
        List<Told> carried = new ArrayList<>();
        for (Told earlier : before) {
            Event from = earlier.event();
            // "Set traps. Sowed another 10": what was done to all that grows was not counted.
            boolean ofEverything = from.crop() == null && earlier.plantings().size() > 1;
            if (earlier.from() == latest
                    && !(ofEverything && told.event().count() != null)
                    && (Sequence.follows(from.what(), told.event().what()) || died)
                    && (from.crop() != null || !earlier.plantings().isEmpty())) {
                Event event = told.event().withPlanting(null, from.crop()).withVariety(from.variety());
                Told next = told.with(event).about(earlier.plantings());
                carried.add(
                        earlier.open() == bothy.garden.Doubt.About.WHICH_PLANTING ? next.oneOf(earlier.among()) : next);
            }
        }
        return carried;
    }

    private List<Planting> placed(List<Planting> growing) {
        List<Planting> placed = new ArrayList<>();
        for (PlaceSaid place : Passage.within(passage.places(), clause.from(), clause.to())) {
            growing.stream()
                    .filter(planting -> PlantingsMeant.stands(planting, place))
                    .forEach(placed::add);
        }
        boolean to =
                Set.of(What.MOVED, What.PLANTED_OUT, What.POTTED_ON, What.SOWN).contains(told());
        return to ? List.of() : placed.stream().distinct().toList();
    }

    private int sentenceFrom() {
        return passage.tokens().get(clause.sentence()[0]).from();
    }

    private What told() {
        return What.of(clause.action().action()).orElse(What.SOWN);
    }

    Told among(Told told, List<Planting> plantings) {
        if (plantings.size() == 1) {
            return one(told, plantings.get(0));
        }
        boolean oneCrop = plantings.stream().map(Planting::crop).distinct().count() == 1;
        Told named = told.with(
                told.event().withPlanting(null, oneCrop ? plantings.get(0).crop() : null));
        boolean all = PlantingsMeant.ofAll(told.event().what()) || says("both") || says("all");
        return all ? named.about(PlantingsMeant.ids(plantings)) : named.oneOf(plantings);
    }

    private static Told one(Told told, Planting planting) {
        return told.with(told.event().withPlanting(null, planting.crop())).about(List.of(planting.id()));
    }

    private boolean points() {
        return POINTING.stream().anyMatch(this::says) || Counted.pointing(passage, clause);
    }

    private boolean says(String word) {
        for (int at = clause.from(); at < clause.to(); at++) {
            if (passage.word(at).equals(word)) {
                return true;
            }
        }
        return false;
    }
}
