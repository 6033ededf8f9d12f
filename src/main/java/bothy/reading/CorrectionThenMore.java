package bothy.reading;

import bothy.garden.Heard;
import bothy.garden.Situation;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** "Correction: 15 beans. And the pak choi is bolting, what now?": something put right first, then something new. */
final class CorrectionThenMore {
    private static final Pattern SENTENCE_ENDS = Pattern.compile("[.!;](?=\\s)|\\R");

    private static final Pattern REST =
            Pattern.compile("(?i)(and )?(the )?(others?|rest|remaining|spares?|remainder)\\b");

    private CorrectionThenMore() {}

    /** Both together, {@code null} when the message is not of that kind. */
    static Heard of(String text, Situation situation, Reading reading) {
        Matcher end = SENTENCE_ENDS.matcher(text);
        if (!end.find() || text.substring(end.end()).isBlank()) {
            return null;
        }
        Heard first = reading.correction(text.substring(0, end.start()), situation);
        if (first == null || first.amendments().isEmpty()) {
            return null;
        }
        Heard more = reading.understood(text.substring(end.end()).strip(), situation.withoutPending());
        // "No, 30 beans. The other 10 I gave away": what became of the rest puts nothing right.
        boolean ofTheRest = REST.matcher(text.substring(end.end()).strip()).lookingAt();
        return more.inquiries().isEmpty() && more.signs().isEmpty() ? ofTheRest ? first : null : Joined.of(first, more);
    }
}
