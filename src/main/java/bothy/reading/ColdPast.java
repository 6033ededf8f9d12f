package bothy.reading;

import bothy.garden.Units;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.told.PlotEvents;
import java.util.Set;

/** A frosty night that has been and is told in degrees: "-4 last night, are my carrots ok?". */
final class ColdPast {
    private static final Set<String> AHEAD = Set.of(
            "tonight",
            "tonite",
            "tomorrow",
            "forecast",
            "forecasting",
            "going",
            "gonna",
            "coming",
            "next",
            "if",
            "expected",
            "supposed",
            "at",
            "to");
    /** Before these "to" tells how far it fell, not what comes. */
    private static final Set<String> FELL = Set.of("down", "dropped", "fell", "got", "went", "dipped", "sank");

    private ColdPast() {}

    /** Whether it is told before the question begins. */
    static boolean told(Passage passage, int begins) {
        boolean freezing = passage.quantities().stream()
                        .filter(Quantity::degrees)
                        .anyMatch(one -> one.start() < begins && celsius(one, passage) <= 0)
                || passage.numbers().stream().anyMatch(number -> number.start() < begins && number.value() < 0);
        boolean ahead = false;
        for (int at = 0; at < passage.size(); at++) {
            ahead |= AHEAD.contains(passage.word(at)) && !fell(passage, at);
        }
        return freezing && !ahead;
    }

    private static boolean fell(Passage passage, int at) {
        return passage.word(at).equals("to") && FELL.contains(passage.word(at - 1));
    }

    private static double celsius(Quantity one, Passage passage) {
        boolean fahrenheit =
                one.unit().equals("°") && passage.situation().grower().units() == Units.US;
        return fahrenheit ? PlotEvents.celsius(one.value()) : one.value();
    }
}
