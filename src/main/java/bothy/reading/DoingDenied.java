package bothy.reading;

import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** "I did not water yesterday or today", "today it was not possible": what was never told as done is not put right by being denied. */
final class DoingDenied {
    /** What stands behind "not" where no doing is named. */
    private static final Set<String> MANAGED = Set.of(
            "possible", "able", "feasible", "practical", "manage", "managed", "bother", "get", "got", "happen", "done");

    private static final Set<String> BETWEEN = Set.of("yet", "even", "really", "been", "always", "have", "any");
    private static final Set<String> JOINING = Set.of("or", "nor", "and", "on", "the", "for", ",");

    private DoingDenied() {}

    /** Whether a message says "not" of a doing and names no other day that it was done on instead. */
    static boolean only(Passage passage) {
        for (int at = 0; at < passage.size(); at++) {
            if (passage.word(at).equals("not") && ofDoing(passage, at + 1)) {
                return !insteadBehind(passage, at);
            }
        }
        return false;
    }

    private static boolean ofDoing(Passage passage, int behind) {
        int verb = behind;
        while (BETWEEN.contains(passage.word(verb))) {
            verb++;
        }
        int first = verb;
        return MANAGED.contains(passage.word(first))
                || passage.actions().stream().anyMatch(action -> action.words().nextSetBit(0) == first);
    }

    /** "I did not sow them on Monday, it was Tuesday"; "yesterday or today" are both denied. */
    private static boolean insteadBehind(Passage passage, int not) {
        List<DaySaid> behind = passage.days().stream()
                .filter(day -> day.known() && day.start() > not)
                .toList();
        for (int i = 1; i < behind.size(); i++) {
            DaySaid day = behind.get(i);
            boolean joined = true;
            for (int at = behind.get(i - 1).end(); at < day.start(); at++) {
                joined &= JOINING.contains(passage.word(at));
            }
            if (!joined) {
                return true;
            }
        }
        return false;
    }
}
