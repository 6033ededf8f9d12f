package bothy.advice;

import bothy.almanac.Range;
import java.time.temporal.Temporal;
import java.util.List;

/** What may stand in a sentence: numbers, spans, dates, words. Facts themselves may not. */
final class Figures {
    private Figures() {}

    static boolean isFigure(Object value) {
        return value instanceof Number
                || value instanceof String
                || value instanceof Enum<?>
                || value instanceof Temporal
                || value instanceof Range
                || value instanceof List<?>;
    }
}
