package bothy.reading.said;

import java.util.List;

/**
 * One doing with what is told of it.
 *
 * @param action the doing
 * @param from first token of its clause
 * @param to the one after its last
 * @param sentence the stretch of its sentence
 * @param crops the crops it is about, in order; empty when none is named in the clause
 * @param mood whether it was done
 * @param relative where a doing starts that only says which plants are meant ("the beans I sowed in May are up"), −1 for none
 */
public record Clause(
        ActionSaid action, int from, int to, int[] sentence, List<CropSaid> crops, Mood mood, int relative) {
    public Clause {
        crops = List.copyOf(crops);
    }

    /** Whether a token belongs to the part that only says which plants are meant. */
    public boolean inRelative(int token) {
        boolean trails = relative > action.start();
        return relative >= 0 && token >= relative && (trails || token < action.start());
    }

    public Clause with(List<CropSaid> others) {
        return new Clause(action, from, to, sentence, others, mood, relative);
    }
}
