package bothy.garden;

import java.util.List;

/**
 * What was said in one message, as reading understood it.
 *
 * @param statements what is to go into the diary (also the ones that need asking back first: {@code sure} is false)
 * @param inquiries what was asked
 * @param signs signs of trouble told
 * @param settings settings told
 * @param amendments corrections of earlier diary lines, worked out to the entry that stands from now on
 * @param plans what the grower means to do; a plan is no entry
 * @param doubt what must be asked back before anything unsure is written, {@code null} when nothing
 * @param strange parts that were not understood, as written
 * @param kind what sort of message it was
 * @param corrects whether the grower meant to correct something, even when nothing was found to correct
 */
public record Heard(
        List<Statement> statements,
        List<Inquiry> inquiries,
        List<SignSeen> signs,
        List<SettingChange> settings,
        List<Amendment> amendments,
        List<Plan> plans,
        Doubt doubt,
        List<String> strange,
        Kind kind,
        boolean corrects) {

    public Heard {
        statements = List.copyOf(statements);
        inquiries = List.copyOf(inquiries);
        signs = List.copyOf(signs);
        settings = List.copyOf(settings);
        amendments = List.copyOf(amendments);
        plans = List.copyOf(plans);
        strange = List.copyOf(strange);
    }

    /** Nothing at all. */
    public static Heard nothing(Kind kind) {
        return new Heard(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), null, List.of(), kind, false);
    }

    /** Just these statements. */
    public static Heard of(List<Statement> statements) {
        return new Heard(
                statements, List.of(), List.of(), List.of(), List.of(), List.of(), null, List.of(), Kind.EVENT, false);
    }

    /** The same with these questions. */
    public Heard asking(List<Inquiry> inquiries) {
        return new Heard(statements, inquiries, signs, settings, amendments, plans, doubt, strange, kind, corrects);
    }

    /** The same; where it is off the topic and only an answer to something, it is that. */
    public Heard answering(boolean onlyAnAnswer) {
        return kind == Kind.OFF_TOPIC && onlyAnAnswer
                ? new Heard(
                        statements,
                        inquiries,
                        signs,
                        settings,
                        amendments,
                        plans,
                        doubt,
                        strange,
                        Kind.ANSWER,
                        corrects)
                : this;
    }

    /** A correction: the lines that stand from now on. */
    public static Heard correcting(List<Amendment> amendments) {
        return new Heard(
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                amendments,
                List.of(),
                null,
                List.of(),
                Kind.CORRECTION,
                true);
    }

    /** All these lines taken back. */
    public static Heard takingBack(List<Logged> lines) {
        return correcting(
                lines.stream().map(line -> new Amendment(line.number(), null)).toList());
    }

    public Heard withDoubt(Doubt doubt) {
        return new Heard(statements, inquiries, signs, settings, amendments, plans, doubt, strange, kind, corrects);
    }

    /** The same with these statements instead. */
    public Heard telling(List<Statement> told) {
        return new Heard(told, inquiries, signs, settings, amendments, plans, doubt, strange, kind, corrects);
    }

    /** The same with these settings instead. */
    public Heard with(List<SettingChange> settings) {
        return new Heard(statements, inquiries, signs, settings, amendments, plans, doubt, strange, kind, corrects);
    }

    /** The same without the signs of trouble. */
    public Heard withoutSigns() {
        return new Heard(statements, inquiries, List.of(), settings, amendments, plans, doubt, strange, kind, corrects);
    }
}
