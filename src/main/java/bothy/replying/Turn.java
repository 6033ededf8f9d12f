package bothy.replying;

import bothy.garden.Diagnosis;
import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.Stage;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a reply answers to.
 *
 * @param today the grower's day
 * @param garden the plot with what was just told
 * @param heard what was understood
 * @param written the diary lines that this turn added
 * @param takenBack the events that this turn took back
 * @param standingAgain the events that stand again as they were, since a correction of them was taken back
 * @param given all advice of the day
 * @param stages the stage of each planting
 * @param doubt what is to be asked back, {@code null} for nothing
 * @param saidToday keys of the advice that was said earlier this day and need not be said again unasked
 * @param diagnoses the troubles that are being looked into
 * @param verdicts what was said last of each case, by the case
 */
public record Turn(
        LocalDate today,
        Garden garden,
        Heard heard,
        List<Logged> written,
        List<Event> takenBack,
        List<Event> standingAgain,
        List<Given> given,
        Map<String, Stage> stages,
        Doubt doubt,
        Set<String> saidToday,
        List<Diagnosis> diagnoses,
        Map<String, Diagnosis.Said> verdicts) {
    public Turn {
        diagnoses = List.copyOf(diagnoses);
        verdicts = Map.copyOf(verdicts);
        written = List.copyOf(written);
        takenBack = List.copyOf(takenBack);
        standingAgain = List.copyOf(standingAgain);
        given = List.copyOf(given);
        stages = Map.copyOf(stages);
        saidToday = Set.copyOf(saidToday);
    }

    /** What makes an advice the same as one said before: its id and its planting. */
    public static String key(Given given) {
        return given.id() + " " + given.planting();
    }
}
