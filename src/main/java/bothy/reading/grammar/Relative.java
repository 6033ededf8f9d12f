package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;

/** "The leeks I put in on Saturday look sorry for themselves": the doing only says which plants are meant. */
final class Relative {
    private static final Set<String> MAIN = Set.of(
            "look", "looks", "seem", "seems", "are", "is", "need", "needs", "want", "wants", "keep", "keeps", "smell",
            "taste", "tastes", "refuse", "sit", "stand");
    /** So many words may stand between the doing and what is told of the plants. */
    private static final int REACH = 7;

    private Relative() {}

    static boolean only(Passage passage, ActionSaid action, int[] sentence) {
        int verb = action.words().nextSetBit(0);
        boolean led = action.form() == Form.PAST
                && Set.of("i", "we").contains(passage.word(verb - 1))
                && passage.crops().stream()
                        .anyMatch(crop -> crop.start() - sentence[0] <= 2
                                && (crop.end() == verb - 1
                                        || crop.end() == verb - 2
                                                && passage.word(verb - 2).equals("that")));
        for (int at = action.lastWord() + 1; led && at < Math.min(sentence[1], action.lastWord() + REACH); at++) {
            if (passage.tokens().get(at).mark() || Set.of("and", "but", "so").contains(passage.word(at))) {
                return false;
            }
            if (MAIN.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Even though I put in single seeds": recalled beside what is told, and of no day. */
    static boolean conceded(Passage passage, ActionSaid action, int begin) {
        int verb = action.words().nextSetBit(0);
        for (int at = verb - 1; at >= Math.max(0, begin - 1); at--) {
            if (Set.of("though", "although").contains(passage.word(at))) {
                return passage.days().stream().noneMatch(day -> day.start() > verb);
            }
            if (passage.tokens().get(at).mark()) {
                return false;
            }
        }
        return false;
    }
}
