package bothy.replying;

import bothy.garden.Diagnosis;
import bothy.garden.Doubt;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.Stage;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What a reply answers to.
 *
 * @param today the grower's day
 * @param garden the plot with what was just told
 * @param heard what was understood
 * @param written the diary lines that this turn added
 * @param given all advice of the day
 * @param stages the stage of each planting
 * @param doubt what is to be asked back, {@code null} for nothing
 * @param diagnoses the troubles that are being looked into
 */
public record Turn(
        LocalDate today,
        Garden garden,
        Heard heard,
        List<Logged> written,
        List<Given> given,
        Map<String, Stage> stages,
        Doubt doubt,
        List<Diagnosis> diagnoses) {
    public Turn {
        diagnoses = List.copyOf(diagnoses);
        written = List.copyOf(written);
        given = List.copyOf(given);
        stages = Map.copyOf(stages);
    }

    /** A turn in which no trouble is looked into. */
    public Turn(
            LocalDate today,
            Garden garden,
            Heard heard,
            List<Logged> written,
            List<Given> given,
            Map<String, Stage> stages,
            Doubt doubt) {
        this(today, garden, heard, written, given, stages, doubt, List.of());
    }
}
