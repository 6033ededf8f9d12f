package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.List;
import java.util.Set;

/** "Helped me sow the beans and plant out the kale": a plain verb behind "and" was done where the plain verb before it was. */
final class CarriedOn {
    private static final Set<String> JOINING = Set.of("and", "&", "then", ",");
    /** Their plain form is that of the past too and says nothing of the verb behind it. */
    private static final Set<String> PAST_TOO = Set.of("put", "set", "cut", "broadcast", "spread", "come", "run");

    private CarriedOn() {}

    /** The mood of a doing beside the clauses before it in its sentence. */
    static Mood of(Mood mood, ActionSaid action, Passage passage, List<Clause> before) {
        if (mood != Mood.UNCLEAR || action.form() != Form.PLAIN || before.isEmpty()) {
            return mood;
        }
        Clause last = before.get(before.size() - 1);
        int verb = action.words().nextSetBit(0);
        boolean alike = last.action().form() == Form.PLAIN
                && !PAST_TOO.contains(passage.word(last.action().words().nextSetBit(0)));
        return alike && last.mood() == Mood.DONE && JOINING.contains(passage.word(verb - 1)) ? Mood.DONE : mood;
    }
}
