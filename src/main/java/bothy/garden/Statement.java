package bothy.garden;

import java.util.List;

/**
 * One thing told that belongs into the diary.
 *
 * @param event what was told; its planting is left {@code null} here
 * @param plantings ids of the plantings it is about; empty when it begins a new planting or is about the whole plot
 * @param sure whether it may be written without asking
 * @param from where its words start in the message, counted from 0
 * @param to where they end, exclusive
 * @param assumed what was taken for granted: "date" (no day told, today taken), "planting", "crop", "unit", "year";
 *     "count" and "day" where a number or a day stood beside that was given to nothing
 */
public record Statement(Event event, List<String> plantings, boolean sure, int from, int to, List<String> assumed) {
    public Statement {
        plantings = List.copyOf(plantings);
        assumed = List.copyOf(assumed);
    }

    /** A statement that is sure and took nothing for granted. */
    public static Statement sure(Event event, List<String> plantings) {
        return new Statement(event, plantings, true, 0, 0, List.of());
    }
}
