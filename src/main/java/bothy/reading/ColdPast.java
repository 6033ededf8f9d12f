package bothy.reading;

import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;

/** A frosty night that has been and is told in degrees: "-4 last night, are my carrots ok?". What is to come tells of no doing. */
final class ColdPast {
    private ColdPast() {}

    /** Whether it is told before the question begins. */
    static boolean told(Passage passage, int begins) {
        boolean been = passage.actions().stream()
                .anyMatch(action -> action.action().equals("temperature") && action.start() < begins);
        boolean freezing = passage.quantities().stream()
                        .filter(Quantity::degrees)
                        .anyMatch(one -> one.start() < begins && ColdNight.celsius(one, passage) <= 0)
                || passage.numbers().stream().anyMatch(number -> number.start() < begins && number.value() < 0);
        return been && freezing && !passage.words().contains("if");
    }
}
