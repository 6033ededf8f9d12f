package bothy.reading;

import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Work that no diary of a crop needs: "weeded the onions". */
final class Chores {
    private static final Set<String> POINTING = Set.of("rest", "them", "others", "remaining");

    private Chores() {}

    static boolean is(Clause clause) {
        return clause.action().action().equals("chore");
    }

    /** "Gave 3 tomatoes away and potted up the rest": the rest are tomatoes. */
    static void handOn(Passage passage, List<Clause> said) {
        for (int i = 1; i < said.size(); i++) {
            Clause before = said.get(i - 1);
            Clause clause = said.get(i);
            boolean rest =
                    IntStream.range(clause.from(), clause.to()).anyMatch(at -> POINTING.contains(passage.word(at)));
            if (is(before) && clause.crops().isEmpty() && rest) {
                said.set(i, clause.with(before.crops()));
            }
        }
    }
}
