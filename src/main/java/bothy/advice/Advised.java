package bothy.advice;

import bothy.garden.Diagnosis;
import bothy.garden.Given;
import bothy.garden.Stage;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What came out of one run of the rules.
 *
 * @param given all advice, most urgent first
 * @param stages the stage of each planting by its id
 * @param fired names of the rules that fired
 * @param diagnoses the troubles that are being looked into
 */
public record Advised(List<Given> given, Map<String, Stage> stages, Set<String> fired, List<Diagnosis> diagnoses) {
    /** Nothing is being looked into. */
    public Advised(List<Given> given, Map<String, Stage> stages, Set<String> fired) {
        this(given, stages, fired, List.of());
    }
}
