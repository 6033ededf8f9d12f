package bothy.reading;

import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** "Limp like boiled spinach", "bumps the size of peas": a crop that something is likened to is none of the grower's. */
final class Likened {
    /** So many words at most stand between: "like a bag of potatoes". */
    private static final int NEAR = 4;

    private static final Set<String> LIKENING = Set.of("like", "resembling", "resembles", "size");
    /** "Things like carrots and beets" names them; "like a wet lettuce" likens. */
    private static final Set<String> OF_ONE = Set.of(
            "a", "an", "the", "of", "boiled", "cooked", "wet", "soggy", "mushy", "burnt", "dried", "old", "tinned",
            "frozen", "tiny", "little", "baby", "giant", "stewed", "mashed");

    private Likened() {}

    static boolean is(Passage passage, CropSaid crop) {
        boolean grows = passage.situation().plantings().stream()
                .anyMatch(planting -> !planting.over() && crop.canMean(planting.crop()));
        for (int at = crop.start() - 1; !grows && at >= Math.max(0, crop.start() - NEAR); at--) {
            if (passage.tokens().get(at).mark()) {
                return false;
            }
            if (LIKENING.contains(passage.word(at))) {
                return OF_ONE.contains(passage.word(at + 1));
            }
        }
        return false;
    }
}
