package bothy.reading.told;

import bothy.garden.Perennials;
import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Whether what was told ends a planting: the last of it picked, or its plants cleared when they had borne. */
final class Endings {
    /** Who picks all of these has none left standing. */
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
    /** Verbs of taking the plant itself, not of picking from it. */
    private static final Set<String> TAKEN_UP =
            Set.of("pulled", "pulling", "lifted", "lifting", "uprooted", "yanked", "dug");

    private static final Set<String> WHOLLY = Set.of("lot", "all", "everything");
    /** "Pulled all the big ones" leaves the others. */
    private static final Set<String> ONLY_THE = Set.of(
            "big", "bigger", "biggest", "large", "larger", "largest", "ripe", "ready", "bolted", "weeds", "side",
            "bad");

    /** What was set lately when the plot is cleared in autumn. */
    private static final Set<String> OVER_WINTER = Set.of("garlic");

    private static final Set<String> WHOLE_PLOT =
            Set.of("all", "everything", "lot", "plot", "allotment", "garden", "beds");
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
            "mouldy",
            "clubroot",
            "rust",
            "because",
            "infested",
            "sick",
            "lost",
            "mildew");
    /** Beside these nothing tells of a good end. */
    private static final Set<String> DENIALS = Set.of("never", "nothing", "not", "no");

    /** By this age nearly every crop that fruits has borne. By judgement. */
    private static final int BORNE_DAYS = 100;
    /** Of this age it may have borne, if that is told: peas and radishes are quick. By judgement. */
    private static final int QUICK_DAYS = 45;
    /** Words beside which plants were cleared since they had borne. */
    private static final Set<String> BORNE =
            Set.of("finished", "spent", "over", "done", "crop", "cropped", "cropping", "harvest", "picked", "season");

    private static final Set<String> FINISHED = Set.of("finished", "spent", "done");
    private static final Set<String> BEFORE_OVER = Set.of("are", "is", "all", "now", "been", "were");

    private final Particulars particulars;

    Endings(Particulars particulars) {
        this.particulars = particulars;
    }

    /** "Ripped the tomatoes out": what was picked from before is not lost but done with. */
    boolean clearedAfterPicking(What what, Passage passage, Clause clause, CropSaid crop) {
        if (what != What.DIED
                || !(CLEARING.contains(passage.word(clause.action().words().nextSetBit(0)))
                        || doneWith(passage, clause))) {
            return false;
        }
        List<Planting> meant = PlantingsMeant.of(crop, passage, clause, true);
        boolean borne = says(passage, clause, BORNE);
        // "Clearing the beans, cropped well. Having read of club root …": a mishap told elsewhere is none of theirs
        // then.
        boolean mishap =
                !borne && passage.words().stream().anyMatch(word -> SPOILT.contains(word) || DENIALS.contains(word));
        boolean spoilt = mishap || spoilt(passage, clause) || says(passage, clause, DENIALS);
        int age = borne ? QUICK_DAYS : BORNE_DAYS;
        if (fewerThanStand(passage, clause, crop, meant)) {
            return false; // "Binned 3 plants with blight" while the others go on.
        }
        return !meant.isEmpty()
                && meant.stream()
                        .allMatch(planting -> passage.situation().has(planting, Set.of(What.HARVESTED))
                                || !spoilt
                                        && begunBefore(
                                                planting,
                                                passage.situation().today().minusDays(age)));
    }

    /** "All cleared away now": the plantings that have borne or are old enough to have, which are done with and not lost. */
    List<Planting> allCleared(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        boolean clears = IntStream.range(
                        clause.action().start(), clause.action().end())
                .anyMatch(at -> clause.action().words().get(at) && CLEARING.contains(passage.word(at)));
        boolean all = IntStream.range(clause.sentence()[0], clause.sentence()[1])
                .anyMatch(at -> WHOLE_PLOT.contains(passage.word(at))
                        && (passage.word(at).startsWith("every") || bare(passage, at + 1)));
        boolean elsewhere = IntStream.range(verb, clause.sentence()[1])
                .anyMatch(at -> Set.of("from", "of").contains(passage.word(at))
                        && !passage.places().isEmpty()); // "Cleared everything out of the shed".
        boolean named = elsewhere
                || !Passage.within(passage.crops(), clause.sentence()[0], clause.sentence()[1])
                        .isEmpty()
                || !passage.counts(clause.from(), clause.to()).isEmpty()
                || Set.of("weeds", "netting", "nets", "canes").contains(passage.word(verb + 1));
        if (!clears || !all || named || spoilt(passage, clause) || says(passage, clause, DENIALS)) {
            return List.of();
        }
        LocalDate borne = passage.situation().today().minusDays(BORNE_DAYS);
        return PlantingsMeant.growing(passage.situation()).stream()
                .filter(planting -> !Perennials.has(planting.crop())
                        && !OVER_WINTER.contains(planting.crop())
                        && (passage.situation().has(planting, Set.of(What.HARVESTED)) || begunBefore(planting, borne)))
                .toList();
    }

    /** Whether nothing but what was cleared with it stands behind an "all": no weeds and no nets. */
    private static boolean bare(Passage passage, int at) {
        String next = passage.word(at);
        return at >= passage.size()
                || passage.tokens().get(at).mark()
                || CLEARING.contains(next)
                || Set.of(
                                        "now", "away", "out", "up", "the", "of", "is", "are", "been", "has", "have",
                                        "done", "today", "and")
                                .contains(next)
                        && !Set.of("weeds", "nets", "netting", "canes", "pots", "rubbish", "leaves", "old")
                                .contains(passage.word(at + 1));
    }

    /** Whether it is told why plants failed: "pulled up the cucumbers, all dead of mildew". */
    static boolean spoilt(Passage passage, Clause clause) {
        return says(passage, clause, SPOILT);
    }

    private static boolean says(Passage passage, Clause clause, Set<String> words) {
        return IntStream.range(clause.sentence()[0], clause.sentence()[1])
                .anyMatch(at -> words.contains(passage.word(at)));
    }

    private boolean fewerThanStand(Passage passage, Clause clause, CropSaid crop, List<Planting> meant) {
        Integer count = particulars.count(passage, clause, crop);
        Planting one = meant.size() == 1 ? meant.get(0) : null;
        Integer standing = one == null ? null : one.count() == null ? one.sown() : one.count();
        return count != null && standing != null && count < standing;
    }

    /** Nobody tells of every picking: what was sown so long ago and is cleared with no word of a mishap has borne. */
    private static boolean begunBefore(Planting planting, LocalDate day) {
        return planting.begun() != null && planting.begun().isBefore(day);
    }

    /** "The beans are finished", but not "the beans keeled over". */
    private static boolean doneWith(Passage passage, Clause clause) {
        return clause.action().words().stream()
                .anyMatch(at -> FINISHED.contains(passage.word(at))
                        || passage.word(at).equals("over") && BEFORE_OVER.contains(passage.word(at - 1)));
    }

    /** "Picked the last of the peas" ends them. */
    static boolean lastOne(Passage passage, Clause clause) {
        for (int at = clause.from(); at < clause.to(); at++) {
            if (Set.of("last", "final").contains(passage.word(at))
                    && Set.of("of", "ones", "few", "picking", "harvest", "crop", "haul")
                            .contains(passage.word(at + 1))) {
                return true;
            }
        }
        return false;
    }

    /** "Pulled the lot", "lifted them all": plants taken up whole, and every one of them. */
    static boolean takenUpWhole(Passage passage, Clause clause) {
        return clause.action().words().stream().anyMatch(at -> TAKEN_UP.contains(passage.word(at)))
                && IntStream.range(clause.from(), clause.to())
                        .anyMatch(at -> WHOLLY.contains(passage.word(at))
                                && !(passage.word(at).equals("all") && ONLY_THE.contains(passage.word(at + 2))));
    }

    /** "Picked all the corn" ends what bears once; of beans it is only what was ripe. */
    static boolean allAtOnce(Passage passage, Clause clause, CropSaid crop) {
        if (takenUpWhole(passage, clause)) {
            return true;
        }
        if (!BEARS_ONCE.contains(crop.crop())) {
            return false;
        }
        int at = crop.start() - 1;
        while (at >= clause.from() && Set.of("the", "my", "our", "of").contains(passage.word(at))) {
            at--;
        }
        return at >= clause.from() && passage.word(at).equals("all");
    }
}
