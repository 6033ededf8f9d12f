package bothy.conversation;

import bothy.garden.Doubt;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a conversation needs to know next time. It is a convenience, not the truth: the diary stands without it.
 *
 * @param pending the question that waits for an answer, {@code null} for none
 * @param why the reasons of the last advice, worded; empty when there was none
 * @param mentioned ids of the plantings talked about last
 * @param raised until when each advice rests that was raised unasked, by advice and planting
 * @param lookedUnasked the last day on which it was looked whether anything should be raised, {@code null} for never
 * @param said the advice said on the day {@code saidOn}, by advice and planting
 * @param saidOn the day, {@code null} for never
 */
public record Memory(
        Doubt pending,
        List<String> why,
        List<String> mentioned,
        Map<String, LocalDate> raised,
        LocalDate lookedUnasked,
        Set<String> said,
        LocalDate saidOn) {

    public Memory {
        why = why == null ? List.of() : List.copyOf(why);
        mentioned = mentioned == null ? List.of() : List.copyOf(mentioned);
        raised = raised == null ? Map.of() : Map.copyOf(raised);
        said = said == null ? Set.of() : Set.copyOf(said);
    }

    static Memory blank() {
        return new Memory(null, List.of(), List.of(), Map.of(), null, Set.of(), null);
    }

    Memory withLookedUnasked(LocalDate day) {
        return new Memory(pending, why, mentioned, raised, day, said, saidOn);
    }

    /** What was said on a day already. */
    Set<String> saidOn(LocalDate day) {
        return day.equals(saidOn) ? said : Set.of();
    }
}
