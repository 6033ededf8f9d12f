package bothy.garden;

import java.time.LocalDate;

/**
 * One piece of advice, inserted by a rule. What it says is in the wording under its id; why it was given follows from the rule
 * that fired and the facts that it matched.
 *
 * @param id names the wording ("warm-the-seeds")
 * @param planting id of the planting it is about, or {@code null} for the whole plot
 * @param due the first day to act on; a day after today makes it a task to come
 * @param nextCheck when to look again
 * @param trouble the case it is about, where a planting may have several; {@code null} for none
 */
public record Advice(String id, String planting, LocalDate due, LocalDate nextCheck, String trouble) {

    /** Advice about no trouble in particular. */
    public Advice(String id, String planting, LocalDate due, LocalDate nextCheck) {
        this(id, planting, due, nextCheck, null);
    }

    /** Advice to act on at once; {@code due} is left {@code null}. */
    public Advice(String id, String planting, LocalDate nextCheck) {
        this(id, planting, null, nextCheck);
    }

    /** Advice about a trouble, to act on at once. */
    public Advice(String id, String planting, LocalDate nextCheck, String trouble) {
        this(id, planting, null, nextCheck, trouble);
    }
}
