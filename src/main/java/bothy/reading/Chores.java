package bothy.reading;

import bothy.reading.grammar.GotThenSet;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Work that no diary of a crop needs: "weeded the onions". */
final class Chores {
    private static final Set<String> POINTING = Set.of("rest", "them", "others", "remaining");

    private static final Set<String> SET = Set.of("planted", "planted-out", "potted-on", "sown");

    private Chores() {}

    static boolean is(Clause clause) {
        return clause.action().action().equals("chore");
    }

    /** "Bought watermelon seeds, six of them we put in three holes": how many stands ahead of the doing. */
    private static boolean pointedAhead(Passage passage, Clause before, Clause clause) {
        return GotThenSet.GOT.contains(passage.word(before.action().words().nextSetBit(0)))
                && before.sentence()[0] == clause.sentence()[0]
                && SET.contains(clause.action().action())
                && IntStream.range(before.action().end(), clause.action().start())
                        .anyMatch(at -> POINTING.contains(passage.word(at)));
    }

    /** "Bought 12 kale plants, planted out 8", "… planted in the tunnel": as many of them. */
    private static boolean ofWhatWasGot(Passage passage, Clause before, Clause clause) {
        int verb = clause.action().words().nextSetBit(0) + 1;
        int behind = Set.of("out", "on", "up").contains(passage.word(verb)) ? verb + 1 : verb;
        int number = passage.word(behind).equals("half") ? behind + 1 : Math.max(behind, passage.end("n", behind));
        return GotThenSet.GOT.contains(passage.word(before.action().words().nextSetBit(0)))
                && before.sentence()[0] == clause.sentence()[0]
                && SET.contains(clause.action().action())
                && (number >= clause.to()
                        || passage.tokens().get(number).mark()
                        || passage.end("date", number) > 0
                        || Set.of("of", "in", "into", "out", "on", "so").contains(passage.word(number)));
    }

    /** "Gave 3 tomatoes away and potted up the rest": the rest are tomatoes. */
    static void handOn(Passage passage, List<Clause> said) {
        for (int i = 1; i < said.size(); i++) {
            Clause before = said.get(i - 1);
            Clause clause = said.get(i);
            boolean rest =
                    IntStream.range(clause.from(), clause.to()).anyMatch(at -> POINTING.contains(passage.word(at)));
            if (!is(before) || !clause.crops().isEmpty()) {
                continue;
            }
            if (pointedAhead(passage, before, clause)) {
                said.set(
                        i,
                        new Clause(
                                clause.action(),
                                before.crops().isEmpty()
                                        ? before.action().end()
                                        : before.crops().get(0).end(),
                                clause.to(),
                                clause.sentence(),
                                before.crops(),
                                clause.mood(),
                                clause.relative()));
            } else if (rest || ofWhatWasGot(passage, before, clause)) {
                said.set(i, clause.with(before.crops()));
            }
        }
    }
}
