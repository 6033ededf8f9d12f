package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Given;
import bothy.garden.Given.Because;
import bothy.garden.Given.Known;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Answers "why?": the rule that fired, what it matched, what lies behind that, how sure it is and the source. */
final class Explaining {
    private static final String CROP_SHEET = "crop sheet";
    private final Wording wording;
    private final Vocabulary vocabulary;

    Explaining(Wording wording, Vocabulary vocabulary) {
        this.wording = wording;
        this.vocabulary = vocabulary;
    }

    String why(Given given) {
        Set<String> rules = new LinkedHashSet<>();
        Set<String> facts = new LinkedHashSet<>();
        Set<String> sources = new LinkedHashSet<>();
        collect(given.because(), rules, facts, sources);
        List<String> lines = new ArrayList<>();
        List<String> ordered = List.copyOf(rules);
        lines.add(fill("why-rule", "rule", ordered.get(0)));
        ordered.stream().skip(1).forEach(rule -> lines.add(fill("why-behind", "rule", rule)));
        if (!facts.isEmpty()) {
            lines.add(fill("why-facts", "facts", String.join("; ", facts)));
        }
        lines.add(fill("why-source", "source", String.join("; ", named(sources, given))));
        lines.add(Objects.requireNonNull(wording.talk()
                .get("sure-"
                        + given.sureness()
                                .name()
                                .toLowerCase(java.util.Locale.ROOT)
                                .replace('_', '-'))));
        return String.join("\n", lines);
    }

    /** "crop sheet" stands for the sources of the figures that were used from it. */
    private Set<String> named(Set<String> sources, Given given) {
        Set<String> named = new LinkedHashSet<>();
        for (String source : sources) {
            boolean ofSheet = source.startsWith(CROP_SHEET);
            Set<String> ofFigures = ofSheet ? vocabulary.sheetSources(given) : Set.of();
            if (ofFigures.isEmpty()) {
                named.add(source);
            } else {
                named.addAll(ofFigures);
                String rest = source.substring(CROP_SHEET.length()).replaceFirst("^; ", "");
                if (!rest.isBlank()) {
                    named.add(rest);
                }
            }
        }
        return named;
    }

    private void collect(Because because, Set<String> rules, Set<String> facts, Set<String> sources) {
        rules.add(because.rule());
        sources.add(because.source());
        for (Known known : because.known()) {
            fact(known).ifPresent(facts::add);
        }
        for (Because behind : because.from()) {
            collect(behind, rules, facts, sources);
        }
    }

    private Optional<String> fact(Known known) {
        String sentence = wording.facts().get(known.kind());
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
        if (name.equals("planting") && value instanceof String id) {
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
