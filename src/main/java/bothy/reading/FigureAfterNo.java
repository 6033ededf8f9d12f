package bothy.reading;

import bothy.almanac.Words;
import bothy.reading.said.Passage;
import java.util.HashSet;
import java.util.Set;

/** "No 18", "sorry no it was 8": a figure or a day right after the "no" puts right what was told. */
final class FigureAfterNo {
    static final Set<String> NOES = Set.of("no", "nope", "nah", "naw");

    private final Set<String> leading;

    FigureAfterNo(Words words) {
        leading = new HashSet<>(Corrections.leading(words, "/leading-unnamed"));
        leading.removeAll(NOES);
        leading.removeAll(Set.of("it", "that", "the", "was")); // "No, it was 8".
    }

    /** Whether a message puts a figure or a day right so; only where something was told lately. */
    boolean in(Passage passage) {
        int no = behindLeading(passage, 0);
        int at = behindLeading(passage, no + 1);
        boolean figure = passage.end("n", at) > 0
                || passage.end("date", at) > 0
                || Set.of("it", "that").contains(passage.word(at))
                        && passage.word(at + 1).equals("was");
        return NOES.contains(passage.word(no))
                && figure
                && !passage.situation().lately().isEmpty();
    }

    private int behindLeading(Passage passage, int from) {
        int at = from;
        while (at < passage.size() && (passage.tokens().get(at).mark() || leading.contains(passage.word(at)))) {
            at++;
        }
        return at;
    }
}
