package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.List;
import java.util.Set;

/** "Note to self, I sowed 20 leeks today": words of a note that only open a telling of something done. */
final class OpeningNote {
    /** "For next year", "for next time", "lesson learned": what follows is a note, whatever was done. */
    private static final Set<String> LATER = Set.of("year", "season", "time", "learned", "learnt");
    /** The grower or a helping verb stands so near before the verb, words. */
    private static final int NEAR = 3;

    private OpeningNote() {}

    static boolean is(ActionSaid note, List<ActionSaid> sentence, Passage passage) {
        return note.action().equals("note")
                && note.detail() == null
                && !LATER.contains(passage.word(note.lastWord()))
                && passage.days().stream().allMatch(DaySaid::known)
                && sentence.stream().anyMatch(next -> next.start() > note.start() && done(passage, next));
    }

    private static boolean done(Passage passage, ActionSaid action) {
        boolean over = action.form() == Form.PAST || action.form() == null && !action.state();
        int verb = action.words().nextSetBit(0);
        boolean told = false;
        for (int at = Math.max(0, verb - NEAR); at < verb; at++) {
            told |= Set.of("i", "we", "been").contains(passage.word(at));
        }
        return over && told;
    }
}
