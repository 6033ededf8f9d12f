package bothy.conversation;

import bothy.garden.Diagnosis;
import bothy.garden.Doubt;
import bothy.garden.Inquiry;
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
 * @param crops the crops talked about last
 * @param unasked what was raised unasked and is to be
 * @param said the advice said on the day {@code saidOn}, by advice and planting
 * @param saidOn the day, {@code null} for never
 * @param lastSaid the advice that the last message with any gave, by advice and planting
 * @param verdicts what was said last of each trouble that is being looked into, by its case
 * @param asked what the last message that said anything asked, empty when it told something
 */
public record Memory(
        Doubt pending,
        List<String> why,
        List<String> mentioned,
        List<String> crops,
        Raised unasked,
        Set<String> said,
        LocalDate saidOn,
        Set<String> lastSaid,
        Map<String, Diagnosis.Said> verdicts,
        List<Inquiry> asked) {

    /** A question is gone on from on its own day and the next. */
    private static final int DAYS_ASKED = 1;

    public Memory {
        why = why == null ? List.of() : List.copyOf(why);
        mentioned = mentioned == null ? List.of() : List.copyOf(mentioned);
        crops = crops == null ? List.of() : List.copyOf(crops);
        unasked = unasked == null ? Raised.nothing() : unasked;
        said = said == null ? Set.of() : Set.copyOf(said);
        lastSaid = lastSaid == null ? Set.of() : Set.copyOf(lastSaid);
        verdicts = verdicts == null ? Map.of() : Map.copyOf(verdicts);
        asked = asked == null ? List.of() : List.copyOf(asked);
    }

    static Memory blank() {
        return new Memory(null, List.of(), List.of(), List.of(), null, Set.of(), null, Set.of(), Map.of(), List.of());
    }

    /** The same with another question that waits, {@code null} for none. */
    Memory waitingFor(Doubt doubt) {
        return new Memory(doubt, why, mentioned, crops, unasked, said, saidOn, lastSaid, verdicts, asked);
    }

    Memory with(Raised raised) {
        return new Memory(pending, why, mentioned, crops, raised, said, saidOn, lastSaid, verdicts, asked);
    }

    /** What was asked last and may be gone on from on a day. */
    List<Inquiry> askedBy(LocalDate day) {
        return saidOn == null || saidOn.isBefore(day.minusDays(DAYS_ASKED)) ? List.of() : asked;
    }

    /** What was said on a day already. */
    Set<String> saidOn(LocalDate day) {
        return day.equals(saidOn) ? said : Set.of();
    }
}
