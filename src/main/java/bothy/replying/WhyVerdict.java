package bothy.replying;

import bothy.almanac.troubles.TroubleWording;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Diagnosis;
import bothy.garden.Diagnosis.Likely;
import bothy.garden.Diagnosis.Reason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;

/** Answers "why?" about a trouble: for each likely cause what speaks for it and what against it, with the sources. */
final class WhyVerdict {
    private static final int MOST_CAUSES = 3;
    private static final int MOST_REASONS = 4;
    /** Log-odds below which a reason is no reason worth telling. By judgement. */
    private static final double WORTH_TELLING = 0.2;

    private final TroubleWording words;
    private final BiFunction<String, Map<String, String>, String> talk;

    WhyVerdict(TroubleWording words, BiFunction<String, Map<String, String>, String> talk) {
        this.words = words;
        this.talk = talk;
    }

    String why(Diagnosis diagnosis) {
        List<String> lines = new ArrayList<>();
        diagnosis.causes().stream().limit(MOST_CAUSES).forEach(likely -> lines.add(cause(likely)));
        lines.add(talk.apply("why-method", Map.of()));
        return String.join("\n\n", lines);
    }

    private String cause(Likely likely) {
        List<String> lines = new ArrayList<>();
        lines.add(talk.apply(
                "why-cause",
                Map.of("cause", likely.cause(), "percent", String.valueOf(Math.round(likely.chance() * 100)))));
        side(likely, "why-for", true).ifPresent(lines::add);
        side(likely, "why-against", false).ifPresent(lines::add);
        Set<String> sources = new LinkedHashSet<>();
        likely.reasons().stream()
                .map(Reason::source)
                .filter(java.util.Objects::nonNull)
                .forEach(sources::add);
        if (!sources.isEmpty()) {
            lines.add(talk.apply("why-sources", Map.of("sources", String.join("; ", sources))));
        }
        return Phrasing.upper(String.join("\n", lines));
    }

    private java.util.Optional<String> side(Likely likely, String id, boolean speaksFor) {
        List<String> told = likely.reasons().stream()
                .filter(reason -> speaksFor ? reason.weight() > WORTH_TELLING : reason.weight() < -WORTH_TELLING)
                .sorted(Comparator.comparingDouble((Reason reason) -> -Math.abs(reason.weight())))
                .limit(MOST_REASONS)
                .map(this::told)
                .distinct()
                .toList();
        return told.isEmpty()
                ? java.util.Optional.empty()
                : java.util.Optional.of(talk.apply(id, Map.of("reasons", String.join("; ", told))));
    }

    private String told(Reason reason) {
        return switch (reason.kind()) {
            case "sign" -> talk.apply(sign(reason), Map.of("sign", signName(reason.what())));
            case Troubles.WORDS ->
                reason.what().isEmpty()
                        ? talk.apply("why-words-none", Map.of())
                        : talk.apply(
                                "why-words",
                                Map.of("words", reason.what().replace(" ", ", ").replace(Troubles.DENIED, "no ")));
            case "found" -> talk.apply("why-found", Map.of("found", found(reason.what())));
            default -> reason.what();
        };
    }

    /** A cause that words or an answer brought in is known at the crop, not for the sign. */
    private static String sign(Reason reason) {
        return reason.weight() > 0 && reason.source() == null
                ? "why-at-crop"
                : reason.weight() > 1
                        ? "why-sign-common"
                        : reason.weight() > 0 ? "why-sign-occasional" : "why-sign-rare";
    }

    private String signName(String sign) {
        TroubleWording.Sign known = words.signs().get(sign);
        return known == null || known.name() == null ? sign.replace('-', ' ') : known.name();
    }

    private String found(String aboutAndAnswer) {
        String[] parts = aboutAndAnswer.split("=", 2);
        TroubleWording.Asked asked = words.questions().get(parts[0]);
        return asked == null ? aboutAndAnswer.replace('-', ' ') : asked.shows(parts[1]);
    }
}
