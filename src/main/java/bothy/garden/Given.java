package bothy.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * Advice as it came out of one run of the rules, with its reasons.
 *
 * @param id names the wording
 * @param planting id of the planting, {@code null} for the whole plot
 * @param crop name of the crop, {@code null} for the whole plot
 * @param due the first day to act on
 * @param nextCheck when to look again
 * @param occasion what called for it
 * @param sureness how sure it is
 * @param neglect what is lost when it is left undone
 * @param figures what its wording may show, by name; the name's ending tells the unit (C, Mm, Cm, M, Litres, Kg, Days, Percent)
 * @param because the reasons, the rule that gave it first
 */
public record Given(
        String id,
        String planting,
        String crop,
        LocalDate due,
        LocalDate nextCheck,
        Occasion occasion,
        Sureness sureness,
        Neglect neglect,
        Map<String, Object> figures,
        Because because) {

    /** What called for an advice: the strongest of the facts that its rule matched. */
    public enum Occasion {
        /** Something the grower asked. */
        ASKED,
        /** A sign of trouble just told. */
        SIGN,
        /** Something just told as done or seen. */
        TOLD,
        /** Something the grower means to do. */
        PLANNED,
        /** It is so today, whatever was said. */
        STANDING
    }

    /** How sure an advice is. */
    public enum Sureness {
        /** Published figures and told facts. */
        SURE,
        /** Published figures with something assumed, or common practice with told facts. */
        FAIRLY_SURE,
        /** A rule of thumb. */
        RULE_OF_THUMB
    }

    /** What is lost when an advice is not followed; the order is the order of urgency. */
    public enum Neglect {
        PERSON_HURT,
        PLANTS_LOST,
        CROP_LOST,
        CROP_LESS,
        NOTHING_MUCH
    }

    /**
     * Why: a rule that fired, what it matched, and the rules behind what it matched.
     *
     * @param rule the rule's name, a sentence
     * @param source its source, or "common practice"
     * @param known what it matched, each as kind ("Happened", "Sheet" …) and values
     * @param from the rules that inferred what it matched
     */
    public record Because(String rule, String source, List<Known> known, List<Because> from) {}

    /**
     * A matched fact.
     *
     * @param kind the fact's simple name
     * @param values its components by name, those that are known
     */
    public record Known(String kind, Map<String, Object> values) {}
}
