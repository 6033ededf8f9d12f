package bothy.reading;

import bothy.garden.Heard;
import bothy.garden.Situation;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** "Celeriac showing in 17 cells. The leeks were 56, not 65.": something new first, then something told long before put right. */
final class MoreThenCorrection {
    private static final Pattern SENTENCE_ENDS = Pattern.compile("[.!;?](?=\\s)|\\R");

    private MoreThenCorrection() {}

    /** Both together, {@code null} when the message is not of that kind. */
    static Heard of(String text, Situation situation, Reading reading) {
        if (!text.toLowerCase(java.util.Locale.ROOT).contains("not")) {
            return null;
        }
        Matcher end = SENTENCE_ENDS.matcher(text.strip());
        while (end.find()) {
            String rest = text.strip().substring(end.end()).strip();
            Heard corrected = rest.isEmpty() ? null : reading.refutation(rest, situation);
            if (corrected != null) {
                Heard first = reading.understood(text.strip().substring(0, end.end()), situation);
                return Joined.of(first, corrected);
            }
        }
        return null;
    }
}
