package bothy.reading;

import bothy.garden.What;
import bothy.reading.said.Passage;
import bothy.reading.told.Told;
import java.util.List;
import java.util.Set;

/** "Sowed 20 peppers at 22 degrees. How long?": until they show, which is said of every sowing. */
final class HowLongAlone {
    private static final Set<String> BESIDE = Set.of(
            "and", "so", "ok", "now", "then", "roughly", "about", "do", "i", "wait", "will", "it", "they", "take",
            "be");

    private HowLongAlone() {}

    /** Whether the question of a sentence says no more, in a message that tells of a sowing. */
    static boolean is(Passage passage, List<Told> told) {
        boolean sown = told.stream().anyMatch(one -> one.event().what() == What.SOWN);
        return sown && passage.sentences().stream().anyMatch(sentence -> alone(passage, sentence));
    }

    private static boolean alone(Passage passage, int[] sentence) {
        boolean asks = false;
        for (int at = sentence[0]; at < sentence[1]; at++) {
            boolean how = passage.word(at).equals("how") && passage.word(at + 1).equals("long");
            asks |= how;
            boolean word = at > sentence[0] && passage.word(at).equals("long");
            if (!how && !word && !passage.tokens().get(at).mark() && !BESIDE.contains(passage.word(at))) {
                return false;
            }
        }
        return asks;
    }
}
