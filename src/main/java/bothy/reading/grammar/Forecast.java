package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** Tells weather to come from weather that was. */
final class Forecast {
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
        return false;
    }
}
