package bothy.reading;

import bothy.garden.Question;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/**
 * What a question is about by its doing alone, where no phrase fits: "can I …", "shall I …", "is it time to …" ask for the day of what
 * is to be done, "how …" for its way.
 */
final class Framed {
    private static final Set<String> NOT_OF_WAY =
            Set.of("much", "many", "often", "far", "long", "soon", "early", "late", "big", "old", "is", "are");

    private Framed() {}

    /** {@link Question#OTHER} when the stretch names no doing. */
    static Question question(Passage passage, int from, int to) {
        return Passage.within(passage.actions(), from, to).stream()
                .findFirst()
                .map(action -> of(action, passage, from))
                .orElse(Question.OTHER);
    }

    private static Question of(ActionSaid action, Passage passage, int from) {
        boolean way = passage.word(from).equals("how") && !NOT_OF_WAY.contains(passage.word(from + 1));
        return switch (action.action()) {
            case "sown" -> way ? Question.HOW_TO : Question.WHEN_SOW;
            case "planted", "planted-out" -> way ? Question.HOW_TO : Question.WHEN_PLANT_OUT;
            case "watered" -> way ? Question.HOW_TO : Question.WHEN_WATER;
            case "fed" -> way ? Question.HOW_TO : Question.FEED_WHEN;
            case "harvested" -> way ? Question.HOW_HARVEST : Question.READY;
            case "stored", "cured" -> Question.HOW_STORE;
            case "pricked-out", "potted-on", "hardening-started", "thinned", "supported", "protected" ->
                Question.HOW_TO;
            default -> Question.OTHER;
        };
    }
}
