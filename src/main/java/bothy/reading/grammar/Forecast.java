package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** Tells weather to come from weather that was. */
final class Forecast {
    /** Who tells of weather that is still to come. */
    private static final Set<String> FORETELLING =
            Set.of("office", "bbc", "app", "weatherman", "forecasters", "radio", "telly", "weather");

    private Forecast() {}

    /** Weather that is only forecast has not been. */
    static boolean only(Passage passage, int[] sentence, ActionSaid action) {
        boolean weather = Set.of("rain", "frost", "temperature").contains(action.action());
        for (int at = sentence[0]; weather && at < sentence[1]; at++) {
            if (Set.of(
                            "forecast",
                            "predicted",
                            "forecasting",
                            "forecasted",
                            "expected",
                            "expecting",
                            "tomorrow",
                            "due",
                            "coming",
                            "later",
                            "promised",
                            "threatening",
                            "threatened",
                            "predicting")
                    .contains(passage.word(at))) {
                return true;
            }
        }
        return weather && foretold(passage, sentence);
    }

    /** "The met office has 5 degrees for tonight". */
    private static boolean foretold(Passage passage, int[] sentence) {
        boolean teller = false;
        for (int at = sentence[0]; at < sentence[1]; at++) {
            teller |= FORETELLING.contains(passage.word(at));
            boolean tonight = Set.of("tonight", "overnight").contains(passage.word(at));
            if (tonight && (teller || passage.word(at - 1).equals("for"))) {
                return true;
            }
        }
        return false;
    }
}
