package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Given;
import bothy.garden.Given.Because;
import bothy.garden.Given.Known;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Answers "why?": the rule that fired, what it matched, what lies behind that, how sure it is and the source. */
final class Explaining {
    private static final String CROP_SHEET = "crop sheet";
    /** The kind of fact that a crop's sheet is. */
    private static final String SHEET = "Sheet";

    private static final String PLANTING = "Planting";

    private final Wording wording;
    private final Vocabulary vocabulary;

    Explaining(Wording wording, Vocabulary vocabulary) {
        this.wording = wording;
        this.vocabulary = vocabulary;
    }

    /** @param alike the same advice by the same rules, of one planting or several */
    String why(List<Given> alike) {
        Set<String> rules = new LinkedHashSet<>();
        Set<String> facts = new LinkedHashSet<>();
        Set<String> sources = new LinkedHashSet<>();
        for (Given given : alike) {
            Set<String> named = new LinkedHashSet<>();
            List<SheetFigures.Figure> figures = vocabulary.sheetFigures(given);
            collect(given.because(), rules, facts, named);
            planting(given, facts).ifPresent(facts::add);
            if (given.crop() != null) {
                sheet(given.crop(), figures).ifPresent(facts::add);
            }
            sources.addAll(named(named, figures));
        }
        List<String> lines = new ArrayList<>();
        List<String> ordered = List.copyOf(rules);
        lines.add(fill("why-rule", "rule", ordered.get(0)));
        ordered.stream().skip(1).forEach(rule -> lines.add(fill("why-behind", "rule", rule)));
        if (!facts.isEmpty()) {
            lines.add(fill("why-facts", "facts", String.join("; ", facts)));
        }
        lines.add(fill("why-source", "source", String.join("; ", sources)));
        lines.add(Objects.requireNonNull(wording.talk().get("sure-" + word(alike.get(0)))));
        return String.join("\n", lines);
    }

    /** What must be the same of advice to several plantings for it to be explained once. */
    static String kind(Given given) {
        Set<String> rules = new LinkedHashSet<>();
        rules(given.because(), rules);
        return given.id() + " " + word(given) + " " + rules;
    }

    private static String word(Given given) {
        return given.sureness().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void rules(Because because, Set<String> rules) {
        rules.add(because.rule());
        because.from().forEach(behind -> rules(behind, rules));
    }

    /** Which planting it is of, where no other fact tells it. */
    private Optional<String> planting(Given given, Set<String> facts) {
        if (given.planting() == null || !vocabulary.begun(given.planting())) {
            return Optional.empty();
        }
        String name = vocabulary.names().planting(given.planting());
        return facts.stream().anyMatch(fact -> fact.contains(name))
                ? Optional.empty()
                : Optional.ofNullable(wording.facts().get(PLANTING))
                        .flatMap(sentence -> new Sentence(sentence).fill(asked -> Optional.of(name)));
    }

    /** What the sheet says of the crop that the advice goes by, figure by figure. */
    private Optional<String> sheet(String crop, List<SheetFigures.Figure> used) {
        List<String> figures = used.stream()
                .filter(figure -> figure.value() != null)
                .map(figure -> Optional.ofNullable(wording.figures().get(figure.path()))
                        .flatMap(sentence -> new Sentence(sentence)
                                .fill(name -> Optional.of(vocabulary.write(figure.leaf(), figure.value())))))
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        String said = String.join(", ", figures);
        return new Sentence(wording.facts().get(SHEET))
                .fill(name ->
                        Optional.of(name.equals("crop") ? vocabulary.names().many(crop) : said));
    }

    /** "crop sheet" stands for the sources of the figures that were used from it. */
    private static Set<String> named(Set<String> sources, List<SheetFigures.Figure> figures) {
        Set<String> named = new LinkedHashSet<>();
        for (String source : sources) {
            for (String part : source.split("; ")) {
                if (part.equals(CROP_SHEET) && !figures.isEmpty()) {
                    figures.forEach(figure -> named.add(figure.source().source()));
                } else {
                    named.add(part);
                }
            }
        }
        return named;
    }

    private void collect(Because because, Set<String> rules, Set<String> facts, Set<String> sources) {
        rules.add(because.rule());
        sources.add(because.source());
        for (Known known : because.known()) {
            if (!known.kind().equals(SHEET) && !known.kind().equals(PLANTING)) {
                fact(known).ifPresent(facts::add);
            }
        }
        for (Because behind : because.from()) {
            collect(behind, rules, facts, sources);
        }
    }

    private Optional<String> fact(Known known) {
        boolean assumed = Boolean.FALSE.equals(known.values().get("told"));
        String sentence = wording.facts().get(known.kind());
        if (assumed) {
            sentence = wording.facts().getOrDefault(known.kind() + "-assumed", sentence);
        }
        if (sentence == null) {
            return Optional.empty();
        }
        return new Sentence(sentence).fill(name -> value(known, name));
    }

    private Optional<String> value(Known known, String name) {
        Object value = known.values().get(name);
        if (value == null) {
            return Optional.empty();
        }
        boolean planting =
                name.equals("planting") || name.equals("id") && known.kind().equals("Planting");
        if (planting && value instanceof String id) {
            return Optional.of(vocabulary.names().planting(id));
        }
        if (name.equals("crop") && value instanceof String id) {
            return Optional.of(vocabulary.names().many(id));
        }
        boolean begun = "SOWN".equals(String.valueOf(value)) && known.values().get("planting") instanceof String;
        if (begun && vocabulary.planted((String) known.values().get("planting"))) {
            return Optional.of(vocabulary.write(name, "set"));
        }
        return Optional.of(vocabulary.write(name, value));
    }

    private String fill(String id, String name, String value) {
        return new Sentence(Objects.requireNonNull(wording.talk().get(id), () -> "no wording talk." + id))
                .fill(asked -> asked.equals(name) ? Optional.of(value) : Optional.empty())
                .orElseThrow();
    }
}
