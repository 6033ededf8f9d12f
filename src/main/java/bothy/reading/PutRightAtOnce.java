package bothy.reading;

import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** "Picked 9 squashes, 104 lb. Correction: 8 squashes.": what a message tells wrong and puts right itself is told once. */
final class PutRightAtOnce {
    private static final Pattern CUE = Pattern.compile(
            "(?i)(?:(?:[.!;,\\n…]|\\s-|\\.\\.\\.)\\s*(?:no,? )?(?:correction|oops|whoops|sorry|no wait|wait no|wait|no make that"
                    + "|make that|no hang on|hang on|no hold on|hold on|scratch that|scrap that|i mean|i meant|my mistake)"
                    // Spoken without a pause.
                    + "|\\s(?:no hang on|no hold on|no wait|wait no|no make that|no sorry))\\b[\\s,:;!.…-]*(?=[\\w½¼¾])");
    private static final Pattern ENDS = Pattern.compile("[.!;](?=\\s|$)|\\R|,(?=\\s+[a-z])");
    /** What may stand beside the right figure and the crop. */
    private static final Set<String> BESIDE = Set.of(
            "it",
            "its",
            "'s",
            "was",
            "were",
            "is",
            "they",
            "that",
            "thats",
            "only",
            "just",
            "of",
            "them",
            "the",
            "in",
            "all",
            "total",
            "altogether",
            "and",
            "seeds",
            "plants",
            "sets",
            "cloves",
            "make",
            "no",
            "not",
            "actually",
            "about");

    private PutRightAtOnce() {}

    /** What the message tells with what it puts right, {@code null} when it is not of that kind. */
    static Heard of(String text, Situation situation, Reading reading) {
        Matcher cue = CUE.matcher(text);
        while (cue.find()) {
            Matcher end = ENDS.matcher(text);
            int to = end.find(cue.end()) ? end.start() : text.length();
            Passage right = reading.passage(text.substring(cue.end(), to), situation);
            if (cue.start() == 0 || !onlyFigures(right)) {
                continue;
            }
            Heard told = reading.understood(text.substring(0, cue.start()), situation.withoutPending());
            Heard mended = mended(told, right);
            if (mended == null) {
                continue;
            }
            String rest = text.substring(Math.min(text.length(), to)).replaceFirst("^[\\s.,;!]+", "");
            return rest.isBlank() ? mended : Joined.of(mended, reading.understood(rest, situation.withoutPending()));
        }
        return null;
    }

    private static boolean onlyFigures(Passage right) {
        boolean figure =
                !right.quantities().isEmpty() || !right.counts(0, right.size()).isEmpty();
        return figure
                && right.crops().size() <= 1
                && IntStream.range(0, right.size())
                        .allMatch(at -> right.tokens().get(at).mark()
                                || BESIDE.contains(right.word(at))
                                || right.cropAt(at).isPresent()
                                || right.numbers().stream().anyMatch(number -> number.covers(at))
                                || right.quantities().stream().anyMatch(quantity -> quantity.covers(at)));
    }

    /** The last thing told that has such a figure, with the right one; {@code null} where none has. */
    private static Heard mended(Heard told, Passage right) {
        Integer count = right.counts(0, right.size()).stream()
                .filter(number -> number.value() >= 1 && number.value() % 1 == 0)
                .map(NumberSaid::value)
                .map(Double::intValue)
                .findFirst()
                .orElse(null);
        Quantity amount = right.quantities().stream().findFirst().orElse(null);
        CropSaid crop = right.crops().stream().findFirst().orElse(null);
        List<Statement> statements = new ArrayList<>(told.statements());
        for (int at = statements.size() - 1; at >= 0; at--) {
            Event event = statements.get(at).event();
            boolean ofCrop =
                    crop == null || event.crop() == null || !statements.get(at).sure() || crop.canMean(event.crop());
            boolean figures = (count == null || event.count() != null || amount != null)
                    && (amount == null || amount.unit().equals(event.unit()));
            if (ofCrop && figures) {
                statements.set(at, with(statements.get(at), count, amount, crop));
                Heard mended = told.telling(statements);
                return statements.get(at).sure() ? mended.withDoubt(null) : mended;
            }
        }
        return null;
    }

    private static Statement with(Statement one, Integer count, Quantity amount, CropSaid crop) {
        Event event = count == null ? one.event() : one.event().withCount(count);
        event = amount == null ? event : event.withAmount(amount.value(), amount.unit());
        boolean names = crop != null && crop.single() && !crop.canMean(event.crop());
        event = names ? event.withPlanting(null, crop.crop()) : event;
        return new Statement(
                event, names ? List.of() : one.plantings(), one.sure() || names, one.from(), one.to(), one.assumed());
    }
}
