package bothy.reading;

import bothy.reading.said.Passage;
import bothy.reading.told.Told;
import java.util.List;
import java.util.Set;

/** A message that only points at plants: "the cherry ones", "the greenhouse ones". */
final class Pointing {
    private static final int LONGEST = 7;
    private static final Set<String> POINTERS = Set.of("ones", "one", "lot", "those");

    private Pointing() {}

    static boolean only(Passage passage, List<Told> told) {
        boolean pointer = passage.tokens().stream().anyMatch(token -> POINTERS.contains(token.word()));
        boolean starts = Set.of("the", "just", "only", "those", "that").contains(passage.word(0));
        boolean quiet = told.isEmpty() && passage.actions().isEmpty();
        return quiet
                && starts
                && pointer
                && passage.size() <= LONGEST
                && !passage.situation().lately().isEmpty();
    }
}
