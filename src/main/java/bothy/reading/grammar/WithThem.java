package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** "Gave them and the corn a good soak": a crop named beside what was named before. */
final class WithThem {
    private static final Set<String> THEM = Set.of("them", "it", "those", "these");
    /** Words from "them and" to the crop that goes with them. */
    private static final int REACH = 5;

    private WithThem() {}

    /** The crops of a doing, with those that "them" points to: of the doing before it in its sentence, else the one named last. */
    static List<CropSaid> of(
            Passage passage, ActionSaid action, List<CropSaid> named, List<Clause> before, int sentence) {
        int verb = action.words().nextSetBit(0);
        boolean joined = !named.isEmpty()
                && (joins(passage, action.lastWord() + 1, named.get(0))
                        || joins(passage, verb + 1, named.get(0))
                        || given(passage, action, named.get(0)));
        if (!joined) {
            return named;
        }
        List<CropSaid> all = new ArrayList<>(
                before.isEmpty()
                        ? PointsBackTo.last(passage, sentence)
                        : before.get(before.size() - 1).crops());
        all.addAll(named);
        return all;
    }

    /** "Gave them and the tomatoes a good feed", where "the tomatoes a good feed" tells it by itself. */
    private static boolean given(Passage passage, ActionSaid action, CropSaid first) {
        int gave = action.start() - 1;
        while (gave > 0 && action.start() - gave < REACH && !passage.word(gave).equals("gave")) {
            gave--;
        }
        return action.form() == null
                && Set.of("watered", "fed").contains(action.action())
                && passage.word(gave).equals("gave")
                && joins(passage, gave + 1, first);
    }

    private static boolean joins(Passage passage, int at, CropSaid first) {
        return THEM.contains(passage.word(at))
                && Set.of("and", "&", "plus").contains(passage.word(at + 1))
                && first.start() > at + 1
                && first.start() <= at + REACH;
    }
}
