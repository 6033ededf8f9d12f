package bothy.reading.grammar;

import bothy.reading.said.Clause;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.List;
import java.util.Set;

/** "Should have thinned the carrots and netted the kale": what was not done before an "and" was not done after it either. */
final class NotEither {
    private static final Set<String> HELPING = Set.of("should", "would", "could", "might", "must", "meant", "wanted");

    private NotEither() {}

    static void of(Passage passage, List<Clause> clauses) {
        for (int i = 1; i < clauses.size(); i++) {
            Clause before = clauses.get(i - 1);
            Clause next = clauses.get(i);
            int verb = next.action().words().nextSetBit(0);
            boolean goesOn = Set.of("and", "or", "nor").contains(passage.word(verb - 1))
                    && next.action().form() == Form.PAST
                    && before.action().form() == Form.PAST;
            boolean sameSubject = passage.word(verb - 1).equals("and")
                    && next.action().form() != Form.PAST
                    && Tenses.happens(next.action())
                    && next.crops().isEmpty()
                    && before.action().form() == Form.PAST
                    && before.mood() == Mood.NOT_OURS; // "He has his onions lifted and drying".
            boolean notDone = before.mood() == Mood.NOT_OURS || before.mood() == Mood.MEANT;
            // "Neither watered nor fed anything."
            boolean nor = passage.word(verb - 1).equals("nor");
            boolean neither = goesOn && notDone && (nor || helped(passage, before)) || sameSubject;
            if (neither && next.mood() == Mood.DONE) {
                clauses.set(
                        i,
                        new Clause(
                                next.action(),
                                next.from(),
                                next.to(),
                                next.sentence(),
                                next.crops(),
                                before.mood(),
                                next.relative()));
            }
        }
    }

    private static boolean helped(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        for (int at = Math.max(clause.from(), verb - 4); at < verb; at++) {
            if (HELPING.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
