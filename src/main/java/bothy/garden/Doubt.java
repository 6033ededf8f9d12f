package bothy.garden;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A question back to the grower. It waits, also through a restart, until it is answered, made void by a newer one or let go.
 *
 * @param about what is in doubt
 * @param arguments what its wording needs: "crop", "what", "found", "date" … in the grower's or the sheet's words
 * @param choices the answers offered; each carries what it means; empty when only a written answer will do
 * @param draft what waits for a written answer to be filled in (the statement without its date, crop, count …), {@code null} when
 *     only the choices count
 */
public record Doubt(About about, Map<String, String> arguments, List<Choice> choices, Heard draft) {

    /** Marks a question that is asked a second time. */
    private static final String AGAIN = "again";

    /** Marks a question whether a task is done. */
    public static final String TASK = "task";

    /** The argument that names the case a question is about. */
    public static final String CASE = "case";

    /** The argument that names a sign of the trouble a question is about: a planting may have a case for each of two. */
    public static final String TROUBLE = "trouble";

    /** Marks a question that is asked once more after other talk. */
    private static final String LATER = "later";

    public Doubt {
        arguments = Map.copyOf(arguments);
        choices = List.copyOf(choices);
    }

    /** The same question once more, because what was said to it was no answer. */
    public Doubt again() {
        Map<String, String> marked = new HashMap<>(arguments);
        marked.put(AGAIN, "yes");
        return new Doubt(about, marked, choices, draft);
    }

    /** The same question once more, because the grower spoke of something else meanwhile. */
    public Doubt later() {
        Map<String, String> marked = new HashMap<>(arguments);
        marked.put(LATER, "yes");
        return new Doubt(about, marked, choices, draft);
    }

    /** Whether it is asked whether a task is done. */
    public boolean ofATask() {
        return arguments.containsKey(TASK);
    }

    /** Whether it is asked once more after other talk. */
    public boolean putOff() {
        return arguments.containsKey(LATER);
    }

    /** Whether something told waits for the answer. */
    public boolean draftTells() {
        return draft != null && !draft.statements().isEmpty()
                || choices.stream()
                        .anyMatch(choice -> choice.then() != null
                                && !choice.then().statements().isEmpty());
    }

    /** Whether it is asked a second time. */
    public boolean askedBefore() {
        return arguments.containsKey(AGAIN);
    }

    /** What is in doubt. */
    public enum About {
        /** Several plantings fit. */
        WHICH_PLANTING,
        /** No crop was named and none follows from what went before. */
        WHICH_CROP,
        /** The crop's name is near to one or two that are known. */
        DID_YOU_MEAN,
        /** The date cannot be, or could be two. */
        WHICH_DATE,
        /** The count or amount cannot be. */
        HOW_MANY,
        /** Degrees Celsius or Fahrenheit. */
        WHICH_DEGREES,
        /** It cannot have been so warm or so cold. */
        HOW_WARM,
        /** Whether it was done at all, or is only meant. */
        REALLY_DONE,
        /** Which entry is to be corrected. */
        WHICH_ENTRY,
        /** The place told is none on earth. */
        WHICH_PLACE,
        /** What a cap or scoop of feed holds; the draft asks with a label as if it held 1 ml. */
        CAP_HOLDS,
        /** A place was told by a name that is not known. */
        UNKNOWN_PLACE,
        /** Asked by a rule (see the advice's wording). */
        ADVICE
    }

    /**
     * An answer offered.
     *
     * @param label what stands on the button
     * @param meaning "yes", "no", or a value that a written answer is compared with: a planting id, a crop, an ISO date, "C", "F"
     * @param then what is taken as said when it is chosen
     */
    public record Choice(String label, String meaning, Heard then) {}
}
