package bothy.replying;

import bothy.almanac.troubles.TroubleBook;
import bothy.almanac.troubles.TroubleWording;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Amendment;
import bothy.garden.Diagnosis;
import bothy.garden.Diagnosis.HowSure;
import bothy.garden.Diagnosis.Likely;
import bothy.garden.Diagnosis.TellTale;
import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Logged;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Words a trouble that is being looked into: what it most likely is, what to do first, and the question that tells most. */
final class Verdicts {
    /** A cause below this chance is not worth naming. By judgement. */
    private static final double WORTH_NAMING = 0.1;
    /** Plants are taken away only from this chance on. By judgement. */
    private static final double SURE_ENOUGH_TO_REMOVE = 0.6;

    private final TroubleBook book;
    private final Names names;
    private final Turn turn;

    Verdicts(TroubleBook book, Names names, Turn turn) {
        this.book = book;
        this.names = names;
        this.turn = turn;
    }

    /** What the signs of trouble are called. */
    TroubleWording words() {
        return book.words();
    }

    /** The trouble that an advice is about, empty for advice about none. */
    Optional<Diagnosis> of(Given given) {
        Object id = given.figures().get(Doubt.CASE);
        return turn.diagnoses().stream()
                .filter(diagnosis -> diagnosis.of().equals(id))
                .findFirst();
    }

    /**
     * The verdict: whole when it is new, another cause leads or there is now something to do; else a line that says whether what was
     * told changes how sure it is, and none where that changes nothing and something else was told with it.
     */
    Optional<String> text(Diagnosis diagnosis, List<String> alsoSaid) {
        if (isSilent(diagnosis)) {
            return Optional.empty();
        }
        if (cannotBeNamed(diagnosis)) {
            boolean again = turn.verdicts().containsKey(diagnosis.of());
            return Optional.of(fill(again ? "still-cannot-name" : "cannot-name", Map.of()));
        }
        return Optional.of(isNews(diagnosis) ? whole(diagnosis, alsoSaid) : still(diagnosis));
    }

    /** No sign is known of it, and no cause stands out: a name would be a guess. */
    private static boolean cannotBeNamed(Diagnosis diagnosis) {
        return diagnosis.said().sure() == HowSure.OPEN
                && diagnosis.signs().stream().allMatch(Troubles.UNNAMED::equals);
    }

    private boolean isNews(Diagnosis diagnosis) {
        Diagnosis.Said before = turn.verdicts().get(diagnosis.of());
        Diagnosis.Said now = diagnosis.said();
        return before == null
                || !before.cause().equals(now.cause()) && !bothOpen(before, now)
                || before.signs() != now.signs()
                || turn.written().stream()
                        .anyMatch(line -> line.entry() instanceof SignSeen sign
                                && diagnosis.signs().contains(sign.sign()))
                || isAskedFor()
                || now.decided() && !before.decided()
                || now.sure().atLeast(HowSure.MOST_LIKELY) && !before.sure().atLeast(HowSure.MOST_LIKELY);
    }

    /** A question that tells nothing new is answered with the whole verdict: there is nothing that could settle it. */
    private boolean isAskedFor() {
        return turn.written().isEmpty() && !turn.heard().inquiries().isEmpty();
    }

    /** "It could be several things" stays that, whichever of them is a little likelier now. */
    private static boolean bothOpen(Diagnosis.Said before, Diagnosis.Said now) {
        return before.sure() == HowSure.OPEN && now.sure() == HowSure.OPEN;
    }

    private boolean asksElse() {
        return turn.heard().inquiries().stream()
                .anyMatch(inquiry -> inquiry.question() != Question.WHY
                        && (inquiry.question() != Question.OTHER || inquiry.topic() != null));
    }

    /** What is told in passing beside a doing or another question and changes nothing is no matter for a reply. */
    private boolean isSilent(Diagnosis diagnosis) {
        return !isNews(diagnosis)
                && !(isBorneOut(diagnosis) && !asksElse())
                && (turn.verdicts().get(diagnosis.of()).equals(diagnosis.said())
                        || bothOpen(turn.verdicts().get(diagnosis.of()), diagnosis.said()))
                && (turn.written().stream().anyMatch(line -> line.entry() instanceof Event) || asksElse())
                && turn.written().stream()
                        .noneMatch(line -> line.entry() instanceof Finding finding && finding.asked());
    }

    /** What was just found speaks for the likeliest cause, however sure that was before. */
    private boolean isBorneOut(Diagnosis diagnosis) {
        return turn.written().stream()
                .map(Logged::entry)
                .filter(Finding.class::isInstance)
                .map(Finding.class::cast)
                .anyMatch(finding -> diagnosis.causes().get(0).reasons().stream()
                        .anyMatch(reason ->
                                reason.what().equals(finding.about() + "=" + finding.found()) && reason.weight() > 0));
    }

    private String still(Diagnosis diagnosis) {
        int change = diagnosis
                .said()
                .sure()
                .compareTo(turn.verdicts().get(diagnosis.of()).sure());
        String id = change > 0 || change == 0 && isBorneOut(diagnosis)
                ? "speaks-for-it"
                : change < 0
                        ? "speaks-against-it"
                        : isNotKnown()
                                ? "never-mind"
                                : isPutRight()
                                        ? "as-before"
                                        : diagnosis.said().sure() == HowSure.OPEN
                                                ? "does-not-settle"
                                                : "changes-nothing";
        return fill(id, Map.of("verdict", fill(headOf(diagnosis), causes(diagnosis))));
    }

    /** "Only one of them": how many it is changes no verdict, and nobody meant it to. */
    private boolean isPutRight() {
        return !turn.written().isEmpty() && turn.written().stream().allMatch(line -> line.entry() instanceof Amendment);
    }

    private boolean isNotKnown() {
        return turn.written().stream()
                .anyMatch(line -> line.entry() instanceof Finding finding
                        && finding.asked()
                        && finding.found().equals(Finding.UNKNOWN));
    }

    private String whole(Diagnosis diagnosis, List<String> alsoSaid) {
        List<String> lines = new ArrayList<>();
        lines.add(head(diagnosis));
        Likely first = diagnosis.causes().get(0);
        TroubleWording.Cause known = book.words().causes().get(first.cause());
        TroubleWording.Cause cause = known == null ? null : known.at(diagnosis.crop());
        Troubles.Cause settled = book.tables().causes().get(first.cause());
        boolean saidElsewhere = settled != null && settled.saidBy().stream().anyMatch(alsoSaid::contains);
        boolean sure = diagnosis.decided() || HowSure.of(first.chance()).atLeast(HowSure.MOST_LIKELY);
        boolean rash =
                settled != null && settled.remove() && (!diagnosis.decided() || first.chance() < SURE_ENOUGH_TO_REMOVE);
        if (!sure || rash || cause == null) {
            meanwhile(diagnosis).ifPresent(lines::add);
        } else if (!saidElsewhere) {
            lines.add(cause.first());
        }
        if (diagnosis.decided() && cause != null) {
            Optional.ofNullable(cause.not()).ifPresent(lines::add);
            Optional.ofNullable(cause.prevent())
                    .map(text -> say("next-time", text))
                    .ifPresent(lines::add);
            Optional.ofNullable(diagnosis.tellTale()).map(this::turning).ifPresent(lines::add);
        }
        return String.join(" ", lines);
    }

    private String head(Diagnosis diagnosis) {
        Map<String, String> named = causes(diagnosis);
        signs(diagnosis).ifPresent(signs -> named.put("signs", signs));
        if (diagnosis.crop() != null) {
            named.put(
                    "crops",
                    diagnosis.planting() != null ? names.planting(diagnosis.planting()) : names.many(diagnosis.crop()));
        }
        return Phrasing.upper(fill(headOf(diagnosis), named));
    }

    /** How a cause is kept off the next time, empty when nothing is known to. */
    Optional<String> prevention(String cause, String crop) {
        return Optional.ofNullable(book.words().causes().get(cause))
                .map(known -> known.at(crop).prevent());
    }

    private static String headOf(Diagnosis diagnosis) {
        Likely first = diagnosis.causes().get(0);
        HowSure sure = HowSure.of(first.chance());
        return first.harmless() && sure.atLeast(HowSure.MOST_LIKELY)
                ? "head-harmless"
                : switch (sure) {
                    case ALMOST_CERTAIN -> "head-almost-certain";
                    case MOST_LIKELY -> "head-most-likely";
                    case PERHAPS -> "head-perhaps";
                    case OPEN -> "head-open";
                };
    }

    private static Map<String, String> causes(Diagnosis diagnosis) {
        Likely first = diagnosis.causes().get(0);
        List<String> others = diagnosis.causes().stream()
                .skip(1)
                .filter(likely -> likely.chance() >= WORTH_NAMING)
                .limit(2)
                .map(Likely::cause)
                .toList();
        Map<String, String> named = new HashMap<>();
        named.put("cause", first.cause());
        if (!others.isEmpty()) {
            named.put("others", String.join(" or ", others));
        }
        return named;
    }

    /**
     * The signs as understood, so that a grower sees what the verdict is about. Beside a cause that is fairly sure only those that it is
     * known for: it was told in other words than the rest.
     */
    private Optional<String> signs(Diagnosis diagnosis) {
        Likely first = diagnosis.causes().get(0);
        boolean sure = HowSure.of(first.chance()).atLeast(HowSure.MOST_LIKELY);
        List<String> signs = diagnosis.signs().stream()
                .filter(sign -> !sure
                        || book.tables().rows(sign, diagnosis.crop()).stream()
                                .anyMatch(row -> row.cause().equals(first.cause())))
                .map(book.words().signs()::get)
                .filter(Objects::nonNull)
                .map(TroubleWording.Sign::name)
                .filter(Objects::nonNull)
                .toList();
        return signs.isEmpty() ? Optional.empty() : Optional.of(Names.list(signs));
    }

    private Optional<String> meanwhile(Diagnosis diagnosis) {
        return diagnosis.signs().stream()
                .map(book.words().signs()::get)
                .filter(Objects::nonNull)
                .map(TroubleWording.Sign::meanwhile)
                .filter(Objects::nonNull)
                .findFirst();
    }

    private String turning(TellTale tellTale) {
        TroubleWording.Asked asked = book.words().questions().get(tellTale.about());
        return fill("turning", Map.of("found", asked.shows(tellTale.found()), "cause", tellTale.cause()));
    }

    /** The question that would tell most, with its answers and "don't know". */
    Optional<Doubt> question(Diagnosis diagnosis) {
        if (diagnosis.question() == null || isSilent(diagnosis) || cannotBeNamed(diagnosis)) {
            return Optional.empty();
        }
        TroubleWording.Asked asked = book.words().questions().get(diagnosis.question());
        List<Choice> choices = new ArrayList<>();
        for (String answer : diagnosis.answers()) {
            choices.add(choice(asked.label(answer), diagnosis.question() + "=" + answer));
        }
        choices.add(choice(book.words().talk().get("do-not-know"), diagnosis.question() + "=" + Finding.UNKNOWN));
        return Optional.of(new Doubt(Doubt.About.ADVICE, arguments(asked.ask(), diagnosis), choices, null));
    }

    private static Map<String, String> arguments(String question, Diagnosis diagnosis) {
        return Map.of(
                "question",
                question,
                Doubt.CASE,
                diagnosis.of(),
                Doubt.TROUBLE,
                diagnosis.signs().get(0));
    }

    private static Choice choice(String label, String meaning) {
        return new Choice(label, meaning, Heard.nothing(Kind.CHAT));
    }

    String why(Diagnosis diagnosis) {
        return new WhyVerdict(book.words(), this::fill).why(diagnosis);
    }

    private String say(String id, String text) {
        return fill(id, Map.of("text", text));
    }

    private String fill(String id, Map<String, String> named) {
        return Sentence.talk(book.words().talk(), id, named);
    }
}
