package bothy.conversation;

import bothy.garden.Doubt;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What a conversation needs to know next time. It is a convenience, not the truth: the diary stands without it.
 *
 * @param pending the question that waits for an answer, {@code null} for none
 * @param why the reasons of the last advice, worded; empty when there was none
 * @param mentioned ids of the plantings talked about last
 * @param raised until when each advice rests that was raised unasked, by advice and planting
 * @param spokeUnasked the last day on which something was raised unasked, {@code null} for never
 */
public record Memory(
        Doubt pending,
        List<String> why,
        List<String> mentioned,
        Map<String, LocalDate> raised,
        LocalDate spokeUnasked) {

    public Memory {
        why = why == null ? List.of() : List.copyOf(why);
        mentioned = mentioned == null ? List.of() : List.copyOf(mentioned);
        raised = raised == null ? Map.of() : Map.copyOf(raised);
    }

    static Memory blank() {
        return new Memory(null, List.of(), List.of(), Map.of(), null);
    }

    Memory withPending(Doubt pending) {
        return new Memory(pending, why, mentioned, raised, spokeUnasked);
    }
}
