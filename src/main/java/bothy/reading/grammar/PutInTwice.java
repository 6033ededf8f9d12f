package bothy.reading.grammar;

import bothy.reading.said.Clause;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.List;
import java.util.Set;

/** "Garlic's in, 25 cloves, planted it Saturday": what stands in the ground and when it was put there are one doing. */
final class PutInTwice {
    private static final Set<String> PUT = Set.of("planted", "planted-out", "sown");
    private static final Set<String> POINTING = Set.of("it", "them", "em", "those", "these", "all");

    private PutInTwice() {}

    static void of(Passage passage, List<Clause> clauses) {
        for (int at = clauses.size() - 2; at >= 0; at--) {
            Clause put = clauses.get(at);
            Clause dated = clauses.get(at + 1);
            if (once(passage, put, dated)) {
                Mood mood = dated.mood() == Mood.DONE ? Mood.DONE : put.mood();
                clauses.set(
                        at,
                        new Clause(
                                put.action(),
                                put.from(),
                                dated.to(),
                                put.sentence(),
                                put.crops(),
                                mood,
                                put.relative()));
                clauses.remove(at + 1);
            }
        }
    }

    private static boolean once(Passage passage, Clause put, Clause dated) {
        return PUT.contains(put.action().action())
                && PUT.contains(dated.action().action())
                && put.action().form() == null
                && dated.action().form() == Form.PAST
                && put.crops().size() == 1
                && dated.crops().isEmpty()
                && put.mood() != Mood.MEANT
                && Passage.within(passage.days(), put.from(), put.to()).isEmpty()
                && !Passage.within(passage.days(), dated.from(), dated.to()).isEmpty()
                && passage.counts(dated.from(), dated.to()).isEmpty()
                && onlyDated(passage, dated);
    }

    /** Whether no more stands between the verb and its day than what points back. */
    private static boolean onlyDated(Passage passage, Clause dated) {
        int at = dated.action().lastWord() + 1;
        while (POINTING.contains(passage.word(at))
                || Set.of("on", "in", "out", "back", "last").contains(passage.word(at))) {
            at++;
        }
        return passage.end("date", at) > 0;
    }
}
