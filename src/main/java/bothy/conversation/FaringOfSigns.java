package bothy.conversation;

import bothy.advice.clinic.OpenCases;
import bothy.garden.Finding;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.reading.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How open troubles fare, told by the names of their signs: "greenfly gone now, but the mildew is worse". */
final class FaringOfSigns {
    private static final Pattern PARTS = Pattern.compile("(?i)[.;,!?\\n]+|\\b(?:but|and|though|while)\\b");

    /** In the order in which they are looked for: "no better" is the same, "still getting worse" is worse. */
    private static final List<Fate> FATES = List.of(
            fate(
                    "same",
                    "no better|not (?:any |much |really )?better|no change|not changed|(?:about |just |still )?the same"),
            fate("worse", "worse|spreading|spread (?:to|all|more|further)|more of (?:it|them)|taking over"),
            fate(
                    "better",
                    "better|clear(?:ed|ing) up|(?:has|have|is|are|all|now) (?:all |now )?clear(?:ed|ing)|stopped|disappeared|"
                            + "vanished|none left|no more|no new|dealt with|under control|going away|gone away|"
                            + "gone(?: now| completely| altogether| today| again| thanks)*\\W*$"),
            fate("same", "still"));

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

    /** How a trouble fares and the words that tell so. */
    private record Fate(String name, Pattern told) {}

    private static Fate fate(String name, String words) {
        return new Fate(name, Pattern.compile("(?i)\\b(?:" + words + ")(?:\\b|$)"));
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
        boolean ofOthers = named.stream()
                .anyMatch(sign -> SignSeen.ofSeed(sign.sign()) || trouble(sign).isEmpty());
        if (ofOthers) {
            // "Still nothing up" is weighed by the days and the warmth since.
            return List.of();
        }
        List<Finding> fared = new ArrayList<>();
        for (String part : PARTS.split(text)) {
            fate(part).ifPresent(fate -> fared.addAll(outcomes(part, fate)));
        }
        return fared;
    }

    /** "No more holes in the leaves": denied, so no sign, and yet of the trouble that showed them. */
    private List<Finding> noMore(String text) {
        Matcher denied = NO_MORE.matcher(text);
        return denied.find() ? outcomes(denied.replaceAll(" "), "better") : List.of();
    }

    /** An outcome of each open trouble whose sign is named. */
    private List<Finding> outcomes(String text, String fate) {
        return reading.read(text, situation).signs().stream()
                .flatMap(sign -> trouble(sign).stream())
                .map(of -> outcome(of, fate))
                .toList();
    }

    /** What became of the trouble spoken of in these days, where a message tells nothing but that. */
    private List<Finding> alone(String text) {
        if (!ALONE.matcher(text).matches()) {
            return List.of();
        }
        return open.lately(true).stream()
                .map(of -> outcome(of, fate(text).orElse("same")))
                .toList();
    }

    private static Optional<String> fate(String part) {
        return FATES.stream()
                .filter(fate -> fate.told().matcher(part).find())
                .map(Fate::name)
                .findFirst();
    }

    /** The trouble of an earlier day that shows a sign. */
    private Optional<SignSeen> trouble(SignSeen sign) {
        return open.showing(sign).filter(one -> one.on().isBefore(open.today()));
    }

    private Finding outcome(SignSeen of, String fate) {
        return new Finding(of.planting(), of.crop(), of.sign(), Finding.OUTCOME, fate, false, open.today());
    }
}
