package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.Set;

/** What the words around a verb make of it: who did it, and what for. */
final class Around {
    private static final int CURE_REACH = 5;

    private Around() {}

    /** "Hung in the porch to cure", "put in the greenhouse to dry". */
    static boolean toCure(Passage passage, Clause clause) {
        for (int at = clause.action().start();
                at < Math.min(passage.size() - 1, clause.action().end() + CURE_REACH);
                at++) {
            if (passage.tokens().get(at).endsSentence()) {
                return false;
            }
            if (passage.word(at).equals("to")
                    && Set.of("cure", "dry", "harden").contains(passage.word(at + 1))
                    && !passage.word(at + 2).equals("off")) {
                return true;
            }
        }
        return false;
    }
}
