package bothy.conversation;

import bothy.advice.clinic.OpenCases;
import bothy.garden.Finding;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.reading.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How open troubles fare, told by the names of their signs: "greenfly gone now, but the mildew is worse". */
final class FaringOfSigns {
    private static final Pattern PARTS = Pattern.compile("(?i)[.;,!?\\n]+|\\b(?:but|and|though|while)\\b");

    /** In the order in which they are looked for: "no better" is the same, "still getting worse" is worse. */
    private static final Map<String, Pattern> FATES = Map.of(
            "same",
                    fate(
                            "no better|not (?:any |much |really )?better|no change|not changed|(?:about |just |still )?the same"),
            "worse", fate("worse|spreading|spread (?:to|all|more|further)|more of (?:it|them)|taking over"),
            "better",
                    fate(
                            "better|clear(?:ed|ing)(?: up)?|stopped|disappeared|vanished|none left|no more|no new|dealt with|sorted|"
                                    + "under control|going away|gone away|gone(?: now| completely| altogether| today| again| thanks)*\\W*$"),
            "still", fate("still"));

    private static final List<String> ORDER = List.of("same", "worse", "better", "still");

    private static final Pattern NO_MORE =
            Pattern.compile("(?i)\\b(?:no (?:more|new|further)|not (?:seen )?any more)\\b");

    /** "Bit better", the whole of a message. */
    private static final Pattern ALONE = Pattern.compile(
            "(?i)\\W*(?:(?:much|a|bit|lots?|slightly|little|about|just|still|all|look(?:s|ing)?|it'?s|they'?re|they|are|is) )*"
                    + "(better|worse|the same|same|no change|no better)(?: now| today| thanks| thank you| than before)*\\W*");

    private final Reading reading;
    private final Situation situation;
    private final OpenCases open;

    FaringOfSigns(Reading reading, Situation situation, OpenCases open) {
        this.reading = reading;
        this.situation = situation;
        this.open = open;
    }

    private static Pattern fate(String words) {
        return Pattern.compile("(?i)\\b(?:" + words + ")(?:\\b|$)");
    }

    /**
     * What became of open troubles.
     *
     * @param named the signs that the message names
     * @param asked whether a question about a trouble waits, which a word alone answers
     * @return an outcome for each sign whose fate is told, of the trouble that shows it; empty where some sign is of no open trouble
     */
    List<Finding> told(List<SignSeen> named, String text, boolean asked) {
        if (!named.isEmpty()) {
            return of(named, text);
        }
        List<Finding> over = noMore(text);
        return over.isEmpty() && !asked ? alone(text) : over;
    }

    private List<Finding> of(List<SignSeen> named, String text) {
        List<Finding> fared = new ArrayList<>();
        if (named.stream().anyMatch(sign -> SignSeen.ofSeed(sign.sign()) || !isKnown(sign))) {
            // "Still nothing up" is weighed by the days and the warmth since.
            return fared;
        }
        for (String part : PARTS.split(text)) {
            Optional<String> fate = fate(part, ORDER);
            if (fate.isPresent()) {
                reading.read(part, situation).signs().stream()
                        .filter(this::isKnown)
                        .map(sign -> outcome(sign, fate.get()))
                        .forEach(fared::add);
            }
        }
        return fared;
    }

    /** "No more holes in the leaves": denied, so no sign, and yet of the trouble that showed them. */
    private List<Finding> noMore(String text) {
        Matcher denied = NO_MORE.matcher(text);
        return denied.find()
                ? reading.read(denied.replaceAll(" "), situation).signs().stream()
                        .filter(this::isKnown)
                        .map(sign -> outcome(sign, "better"))
                        .toList()
                : List.of();
    }

    /** What became of the trouble spoken of in these days, where a message tells nothing but that. */
    private List<Finding> alone(String text) {
        if (!ALONE.matcher(text).matches()) {
            return List.of();
        }
        return open.lately(true).stream()
                .map(of -> new Finding(
                        of.planting(),
                        of.crop(),
                        of.sign(),
                        Finding.OUTCOME,
                        fate(text, ORDER).orElse("same"),
                        false,
                        open.today()))
                .toList();
    }

    private static Optional<String> fate(String part, List<String> order) {
        return order.stream()
                .filter(fate -> FATES.get(fate).matcher(part).find())
                .map(fate -> fate.equals("still") ? "same" : fate)
                .findFirst();
    }

    private boolean isKnown(SignSeen sign) {
        return trouble(sign).isPresent();
    }

    private Optional<SignSeen> trouble(SignSeen sign) {
        return open.showing(sign).filter(one -> one.on().isBefore(open.today()));
    }

    private Finding outcome(SignSeen sign, String fate) {
        SignSeen of = trouble(sign).orElseThrow();
        return new Finding(of.planting(), of.crop(), of.sign(), Finding.OUTCOME, fate, false, open.today());
    }
}
