package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Doubt.About;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Statement;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What becomes of something told that waits for an answer when the next message is about something else: it is not lost. Where only the
 * planting was in doubt the likeliest is taken, and said; else it is asked once more.
 */
final class Waiting {
    private static final Set<About> ASKED_ONCE_MORE =
            EnumSet.of(About.WHICH_DATE, About.WHICH_CROP, About.DID_YOU_MEAN, About.HOW_MANY, About.REALLY_DONE);

    private static final Set<What> OF_PLANTS =
            EnumSet.of(What.EMERGED, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT, What.MOVED);
    /** So long a question is asked once more. By judgement. */
    private static final int ASKED_DAYS = 2;

    private final LocalDate today;
    private final Doubt pending;
    private final Garden garden;
    private final Memory memory;
    private Choice taken;

    Waiting(Memory memory, Garden garden, LocalDate today) {
        this.today = today;
        this.pending = memory.pending();
        this.garden = garden;
        this.memory = memory;
    }

    /** What was taken for granted, {@code null} when nothing was. */
    Choice taken() {
        return taken;
    }

    /** The message with what waited, where it answers nothing and tells, asks or shows something of its own. */
    Heard kept(Heard heard) {
        boolean other = pending != null
                && pending.about() == About.WHICH_PLANTING
                && ofOneCrop()
                && hasItsOwn(heard)
                && !heard.corrects()
                && !answers(heard)
                && !tellsAgain(heard);
        if (!other) {
            return heard;
        }
        Optional<Choice> likeliest = likeliest();
        if (likeliest.isEmpty()) {
            return heard;
        }
        taken = likeliest.get();
        return withWaiting(taken.then(), heard);
    }

    /** The question once more, when the reply would otherwise ask nothing. */
    Doubt stillAsked(Heard heard) {
        boolean still = pending != null
                && (ASKED_ONCE_MORE.contains(pending.about())
                        || pending.about() == About.WHICH_PLANTING && !ofOneCrop())
                && pending.draftTells()
                && !pending.putOff()
                && !pending.askedBefore()
                && askedLately()
                && heard.doubt() == null
                && hasItsOwn(heard)
                && !heard.corrects()
                && !answers(heard)
                && !tellsAgain(heard);
        return still ? pending.later() : null;
    }

    /** Peas of one row or another may be taken for granted, peas for peppers never. */
    private boolean ofOneCrop() {
        return pending.choices().stream()
                        .flatMap(choice -> garden.planting(choice.meaning()).stream())
                        .map(planting -> planting.crop())
                        .distinct()
                        .count()
                <= 1;
    }

    /** After some days nobody knows what "have you done that" was about. */
    private boolean askedLately() {
        return memory.saidOn() != null && !memory.saidOn().isBefore(today.minusDays(ASKED_DAYS));
    }

    private static boolean hasItsOwn(Heard heard) {
        return heard.kind() != Kind.LET_GO
                && !(heard.statements().isEmpty()
                        && heard.inquiries().isEmpty()
                        && heard.signs().isEmpty()
                        && heard.settings().isEmpty()
                        && heard.plans().isEmpty());
    }

    private boolean answers(Heard heard) {
        boolean chosen = pending.choices().stream()
                .map(Choice::then)
                .filter(Objects::nonNull)
                .anyMatch(then ->
                        !then.statements().isEmpty() && heard.statements().containsAll(then.statements())
                                || !then.plans().isEmpty() && heard.plans().containsAll(then.plans()));
        return chosen
                || waiting().stream()
                        .anyMatch(one -> heard.statements().stream().anyMatch(told -> filled(one, told)));
    }

    private static boolean filled(Statement waits, Statement told) {
        return told.from() == waits.from()
                && told.to() == waits.to()
                && told.event().what() == waits.event().what();
    }

    private List<Statement> waiting() {
        return pending.draft() == null
                ? List.of()
                : pending.draft().statements().stream()
                        .filter(one -> !one.sure())
                        .toList();
    }

    /** "All the spuds are up" once more, said in another way. */
    private boolean tellsAgain(Heard heard) {
        return waiting().stream().map(Statement::event).anyMatch(waits -> heard.statements().stream()
                .map(Statement::event)
                .anyMatch(told -> told.what() == waits.what()
                        && (waits.crop() == null || waits.crop().equals(told.crop()))));
    }

    /** The planting talked about last, else the one that the diary told of last. */
    private Optional<Choice> likeliest() {
        List<Choice> fitting = pending.choices().stream().filter(this::enough).toList();
        List<Choice> mentioned = fitting.stream()
                .filter(choice -> memory.mentioned().contains(choice.meaning()))
                .toList();
        return mentioned.size() == 1
                ? Optional.of(mentioned.get(0))
                : fitting.stream()
                        .filter(choice -> choice.then() != null && grows(choice.meaning()))
                        .max(Comparator.comparing(choice -> lastTold(choice.meaning())));
    }

    /** Of six that were sown no nine come up. */
    private boolean enough(Choice choice) {
        Integer sown = garden.planting(choice.meaning()).map(one -> one.sown()).orElse(null);
        return sown == null
                || choice.then() == null
                || choice.then().statements().stream()
                        .map(Statement::event)
                        .noneMatch(event ->
                                OF_PLANTS.contains(event.what()) && event.count() != null && event.count() > sown);
    }

    private boolean grows(String planting) {
        return garden.planting(planting).filter(one -> !one.over()).isPresent();
    }

    private Integer lastTold(String planting) {
        List<Event> events = garden.events();
        int last = -1;
        for (int at = 0; at < events.size(); at++) {
            last = planting.equals(events.get(at).planting()) ? at : last;
        }
        return last;
    }

    private static Heard withWaiting(Heard waited, Heard heard) {
        List<Statement> statements = new ArrayList<>(waited.statements());
        statements.addAll(heard.statements());
        return new Heard(
                statements,
                heard.inquiries(),
                heard.signs(),
                heard.settings(),
                heard.amendments(),
                heard.plans(),
                heard.doubt() != null ? heard.doubt() : waited.doubt(),
                heard.strange(),
                heard.kind(),
                heard.corrects());
    }
}
