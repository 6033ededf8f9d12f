package bothy.replying;

import bothy.almanac.troubles.TroubleBook;
import bothy.almanac.troubles.TroubleWording;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Diagnosis;
import bothy.garden.Diagnosis.Likely;
import bothy.garden.Diagnosis.TellTale;
import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Finding;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Words a trouble that is being looked into: what it most likely is, what to do first, and the question that tells most. */
final class Verdicts {
    static final String CASE = "case";
    /** The chances from which a cause is called almost certain, most likely and perhaps. By judgement. */
    private static final double ALMOST_CERTAIN = 0.85;

    private static final double MOST_LIKELY = 0.6;
    private static final double PERHAPS = 0.35;
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

    /** The trouble that an advice is about, empty for advice about none. */
    Optional<Diagnosis> of(Given given) {
        Object id = given.figures().get(CASE);
        return turn.diagnoses().stream()
                .filter(diagnosis -> diagnosis.of().equals(id))
                .findFirst();
    }

    /** The whole verdict; while it is open only what does no harm. */
    String text(Diagnosis diagnosis, List<String> alsoSaid) {
        List<String> lines = new ArrayList<>();
        lines.add(head(diagnosis));
        Likely first = diagnosis.causes().get(0);
        TroubleWording.Cause cause = book.words().causes().get(first.cause());
        Troubles.Cause settled = book.tables().causes().get(first.cause());
        boolean saidElsewhere = settled != null && settled.saidBy().stream().anyMatch(alsoSaid::contains);
        boolean sure = diagnosis.decided() || first.chance() >= MOST_LIKELY;
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
        Likely first = diagnosis.causes().get(0);
        List<String> others = diagnosis.causes().stream()
                .skip(1)
                .filter(likely -> likely.chance() >= WORTH_NAMING)
                .limit(2)
                .map(Likely::cause)
                .toList();
        String id = first.harmless() && first.chance() >= MOST_LIKELY
                ? "head-harmless"
                : first.chance() >= ALMOST_CERTAIN
                        ? "head-almost-certain"
                        : first.chance() >= MOST_LIKELY
                                ? "head-most-likely"
                                : first.chance() >= PERHAPS ? "head-perhaps" : "head-open";
        Map<String, String> named = new HashMap<>();
        named.put("cause", first.cause());
        if (!others.isEmpty()) {
            named.put("others", String.join(" or ", others));
        }
        signs(diagnosis).ifPresent(signs -> named.put("signs", signs));
        if (diagnosis.crop() != null) {
            named.put(
                    "crops",
                    diagnosis.planting() != null ? names.planting(diagnosis.planting()) : names.many(diagnosis.crop()));
        }
        return Phrasing.upper(fill(id, named));
    }

    /** The signs as understood, so that a grower sees what the verdict is about. */
    private Optional<String> signs(Diagnosis diagnosis) {
        List<String> signs = diagnosis.signs().stream()
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
        if (diagnosis.question() == null) {
            return Optional.empty();
        }
        TroubleWording.Asked asked = book.words().questions().get(diagnosis.question());
        List<Choice> choices = new ArrayList<>();
        for (String answer : diagnosis.answers()) {
            choices.add(choice(asked.label(answer), diagnosis.question() + "=" + answer));
        }
        choices.add(choice(book.words().talk().get("do-not-know"), diagnosis.question() + "=" + Finding.UNKNOWN));
        return Optional.of(
                new Doubt(Doubt.About.ADVICE, Map.of("question", asked.ask(), CASE, diagnosis.of()), choices, null));
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
        String sentence = Objects.requireNonNull(book.words().talk().get(id), () -> "no wording talk." + id);
        return new Sentence(sentence)
                .fill(name -> Optional.ofNullable(named.get(name)))
                .orElseThrow(() -> new IllegalStateException("talk." + id + " needs more than " + named.keySet()));
    }
}
