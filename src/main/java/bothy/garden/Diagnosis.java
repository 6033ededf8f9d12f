package bothy.garden;

import java.time.LocalDate;
import java.util.List;

/**
 * What a trouble most likely is, as far as it has been looked into.
 *
 * @param of names the case: its planting, its crop when no planting is known, or the plot; a second trouble of the same with its sign
 * @param planting id of the planting, {@code null} when it is not known which
 * @param crop name of the crop, {@code null} when not told
 * @param signs the signs of the case, the first told first
 * @param causes the causes that can be, likeliest first
 * @param question id of the question that would tell most, {@code null} when none is worth asking
 * @param answers ids of its answers
 * @param decided whether the likeliest cause is taken as the cause for now
 * @param tellTale what would turn the verdict, {@code null} when nothing would
 * @param opened the day the case was opened
 * @param nextCheck when to look again
 * @param justTold whether the message at hand told something of it
 */
public record Diagnosis(
        String of,
        String planting,
        String crop,
        List<String> signs,
        List<Likely> causes,
        String question,
        List<String> answers,
        boolean decided,
        TellTale tellTale,
        LocalDate opened,
        LocalDate nextCheck,
        boolean justTold) {

    public Diagnosis {
        signs = List.copyOf(signs);
        causes = List.copyOf(causes);
        answers = List.copyOf(answers);
    }

    /**
     * A cause that can be.
     *
     * @param cause short trade term in plain words ("downy mildew")
     * @param chance between 0 and 1; what is left over to 1 is something else
     * @param harmless whether nothing needs doing when it is so
     * @param reasons what speaks for it and against it
     */
    public record Likely(String cause, double chance, boolean harmless, List<Reason> reasons) {
        public Likely {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * What speaks for a cause or against it.
     *
     * @param kind "sign" (how often it is behind that sign), "found" (told), "words" (of the description), or "rule"
     * @param what the sign, the question's id and answer ("fur-beneath=yes"), or the rule's sentence
     * @param weight log-odds, above 0 for the cause, below 0 against it
     * @param source where it is from
     */
    public record Reason(String kind, String what, double weight, String source) {}

    /**
     * A finding that would turn the verdict.
     *
     * @param about id of the question
     * @param found the answer
     * @param cause what it would be then
     */
    public record TellTale(String about, String found, String cause) {}

    /** How sure a cause is, in steps that are worded differently. */
    public enum HowSure {
        OPEN(0),
        PERHAPS(0.35),
        MOST_LIKELY(0.6),
        ALMOST_CERTAIN(0.85);

        private final double from;

        HowSure(double from) {
            this.from = from;
        }

        /** The step of a chance between 0 and 1. The bounds are by judgement. */
        public static HowSure of(double chance) {
            HowSure sure = OPEN;
            for (HowSure step : values()) {
                sure = chance >= step.from ? step : sure;
            }
            return sure;
        }

        public boolean atLeast(HowSure other) {
            return compareTo(other) >= 0;
        }
    }

    /**
     * What was said of a case last.
     *
     * @param cause the likeliest cause
     * @param sure how sure
     * @param decided whether it was taken as the cause
     * @param signs how many signs it had
     */
    public record Said(String cause, HowSure sure, boolean decided, int signs) {}

    /** What is to be said of it now. */
    public Said said() {
        Likely first = causes.get(0);
        return new Said(first.cause(), HowSure.of(first.chance()), decided, signs.size());
    }
}
