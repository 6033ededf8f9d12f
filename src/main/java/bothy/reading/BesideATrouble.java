package bothy.reading;

import bothy.garden.SignSeen;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Words of doing in a description of a trouble that are no doing of the day: a plant pulled up to look at its roots is no harvest, and
 * "sowed thick" tells of the crowding.
 */
final class BesideATrouble {
    private static final Set<String> LOOKING =
            Set.of("pulled", "pull", "dug", "dig", "lifted", "lift", "cut", "tugged", "yanked", "sliced");
    private static final Set<String> LOOKED_AT =
            Set.of("one", "it", "open", "half", "couple", "stem", "stems", "stalk");
    private static final Set<String> ALL = Set.of("all", "lot", "whole", "rest", "everything", "every");
    private static final Set<String> WHERE_AND_WHEN = Set.of("where", "when", "while", "before", "since", "after");
    private static final Set<String> OF_THE_FLOWER = Set.of("end", "ends", "side", "was", "stalk", "were");
    private static final Set<String> SICKLY = Set.of(
            "purple", "purply", "yellow", "yellowy", "brown", "black", "pale", "white", "grey", "reddish", "blue");
    private static final Set<String> NOW_AND_THEN =
            Set.of("when", "whenever", "every", "twice", "daily", "weekly", "place", "usually", "mostly", "sometimes");
    /** So many words behind a doing say what it was done to. */
    private static final int OBJECT = 3;
    /** "Dug half the carrots, 6 lb": what is weighed was gathered. */
    private static final int WEIGHED = 6;
    /** So many words before a flower say where on it. */
    private static final int BEFORE = 3;

    private static final Set<String> GATHERED =
            Set.of("heads", "bulbs", "roots", "tubers", "cobs", "ears", "fruit", "fruits", "pods", "in");
    /** So many may be taken to look at. */
    private static final int TO_LOOK_AT = 5;

    private BesideATrouble() {}

    /** Whether a clause only describes the trouble. */
    static boolean only(Passage passage, Clause clause, List<SignSeen> seen) {
        ActionSaid action = clause.action();
        return switch (action.action()) {
            case "harvested" -> lookedAt(passage, action) && !gathered(passage, clause);
            case "flowering" -> ofAFlower(passage, action);
            case "colour-turned" -> within(passage, action.start(), action.end() + OBJECT, SICKLY);
            case "watered" -> within(passage, action.start(), clause.to(), NOW_AND_THEN);
            case "sown" -> howSown(passage, clause, seen);
            default -> false;
        };
    }

    private static boolean lookedAt(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        return LOOKING.contains(passage.word(verb))
                && passage.quantities().stream()
                        .noneMatch(weight ->
                                weight.unit().equals("kg") && weight.start() > verb && weight.start() <= verb + WEIGHED)
                && !within(passage, verb + 1, verb + 1 + OBJECT, ALL)
                && IntStream.range(verb + 1, Math.min(verb + 1 + OBJECT, passage.size()))
                        .anyMatch(at -> LOOKED_AT.contains(passage.word(at)) && !halfOf(passage, at));
    }

    /** "Dug up half the potatoes", against "cut one in half". */
    private static boolean halfOf(Passage passage, int at) {
        return passage.word(at).equals("half")
                && Set.of("the", "my", "our", "of", "a").contains(passage.word(at + 1));
    }

    /** "Dug it. 38 heads.": nobody counts so many to look at them. */
    private static boolean gathered(Passage passage, Clause clause) {
        return passage.counts(clause.action().end(), clause.to()).stream()
                .anyMatch(number -> number.value() > TO_LOOK_AT && GATHERED.contains(passage.word(number.end())));
    }

    private static boolean ofAFlower(Passage passage, ActionSaid action) {
        return within(passage, action.start() - BEFORE, action.end(), WHERE_AND_WHEN)
                || OF_THE_FLOWER.contains(passage.word(action.lastWord() + 1));
    }

    /** How it was sown, told without a day and a number of what has long come up. */
    private static boolean howSown(Passage passage, Clause clause, List<SignSeen> seen) {
        return seen.stream().noneMatch(sign -> SignSeen.ofSeed(sign.sign()))
                && Passage.within(passage.days(), clause.sentence()[0], clause.sentence()[1])
                        .isEmpty()
                && passage.counts(clause.from(), clause.to()).isEmpty();
    }

    private static boolean within(Passage passage, int from, int to, Set<String> words) {
        for (int at = Math.max(0, from); at < Math.min(to, passage.size()); at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
