package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** A number that stands for plants just named as what did or suffered something: "36 came up", "the other 2 had died". */
final class Counted {
    private static final Set<String> HELPING = Set.of(
            "have", "has", "had", "were", "was", "are", "is", "got", "been", "all", "both", "also", "now", "just",
            "sadly", "since", "already", "then");
    private static final Set<String> LEADING = Set.of(
            "the",
            "other",
            "others",
            "another",
            "only",
            "just",
            "about",
            "around",
            "nearly",
            "some",
            "these",
            "those",
            "last",
            "first",
            "remaining");

    private static final Set<String> WEAK = Set.of(
            "runts",
            "weaklings",
            "duds",
            "spares",
            "stragglers",
            "tiddlers",
            "seedlings",
            "plants",
            "spindly",
            "weedy");

    private Counted() {}

    /** The number, {@code null} when none is the clause's subject. */
    static NumberSaid number(Passage passage, Clause clause) {
        int at = clause.action().words().nextSetBit(0);
        while (at > clause.from() && HELPING.contains(passage.word(at - 1))) {
            at--;
        }
        if (WEAK.contains(passage.word(at - 1))) {
            at--; // "Two runts binned".
        }
        if (passage.word(at - 1).equals("and") && passage.word(at - 2).endsWith("ed")) {
            at -= 2; // "3 wilted and died".
        }
        int verb = at;
        int first = clause.action().words().nextSetBit(0);
        return passage.counts(clause.from(), clause.to()).stream()
                .filter(one -> one.end() == verb || one.start() == first)
                .filter(one -> !everyOne(passage, one))
                .findFirst()
                .orElse(null);
    }

    /** "Every last one dead" counts none: it is all of them. */
    private static boolean everyOne(Passage passage, NumberSaid number) {
        int before = number.start() - 1;
        boolean led = Set.of("last", "single", "blessed").contains(passage.word(before));
        return passage.word(number.start()).equals("one")
                && Set.of("every", "each").contains(passage.word(led ? before - 1 : before));
    }

    /** "The other 2 had died": of the plants just named, in whatever sentence. */
    static boolean others(Passage passage, Clause clause) {
        int behind = clause.action().lastWord() + 1;
        boolean object = passage.word(behind).equals("the")
                && Set.of("other", "remaining", "last").contains(passage.word(behind + 1))
                && passage.end("n", behind + 2) > 0; // "Planted the other 3 in the heap".
        if (object) {
            return true;
        }
        NumberSaid number = number(passage, clause);
        return number != null
                && Set.of("other", "last", "remaining").contains(passage.word(number.start() - 1))
                && passage.word(number.start() - 2).equals("the");
    }

    /** Whether a number tells by itself that it is of the plants just named: "the other 2 had died", "2 dead already". */
    static boolean pointing(Passage passage, Clause clause) {
        boolean opens = clause.action().action().equals("died") && subject(passage, clause) == clause.sentence()[0];
        return opens || others(passage, clause);
    }

    /** Where such a number begins with the words that lead it, −1 when none is the clause's subject. */
    static int subject(Passage passage, Clause clause) {
        NumberSaid number = number(passage, clause);
        if (number == null) {
            return -1;
        }
        int start = number.start();
        while (start > clause.from() && LEADING.contains(passage.word(start - 1))) {
            start--;
        }
        return start;
    }
}
