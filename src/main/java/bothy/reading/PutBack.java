package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** What is put back, thrown away or drowned is neither planted nor moved: "pushed them back in", "took the tops to the tip". */
final class PutBack {
    private static final Set<String> PLANTING = Set.of("planted", "planted-out", "sown");
    private static final Set<String> BACK_IN = Set.of(
            "pushed", "poked", "pressed", "popped", "stuck", "tucked", "shoved", "put", "set", "firmed", "planted");
    private static final Set<String> TIPS =
            Set.of("tip", "dump", "skip", "council", "landfill", "recycling", "bonfire");
    /** So many words may stand between the doing and where it goes. */
    private static final int REACH = 5;

    private PutBack() {}

    static boolean only(Passage passage, ActionSaid action) {
        return backIn(passage, action) || thrownAway(passage, action) || drowned(passage, action);
    }

    /** "Birds pulled the sets out, I pushed them back in": what stood there stands there again. */
    private static boolean backIn(Passage passage, ActionSaid action) {
        if (!PLANTING.contains(action.action()) || !BACK_IN.contains(passage.word(action.start()))) {
            return false;
        }
        for (int at = action.start() + 1; at <= action.start() + REACH; at++) {
            if (passage.word(at).equals("back")) {
                return Set.of("in", "into", "down").contains(passage.word(at + 1));
            }
        }
        return false;
    }

    private static boolean thrownAway(Passage passage, ActionSaid action) {
        return action.action().equals("moved") && within(passage, action, TIPS);
    }

    /** "Dropped them in soapy water": beetles, not plants. */
    private static boolean drowned(Passage passage, ActionSaid action) {
        return PLANTING.contains(action.action()) && within(passage, action, Set.of("soapy"));
    }

    private static boolean within(Passage passage, ActionSaid action, Set<String> words) {
        for (int at = action.start(); at <= action.lastWord() + REACH; at++) {
            if (at >= passage.size() || passage.tokens().get(at).endsSentence()) {
                return false;
            }
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
