package bothy.replying;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence of the wording with places to fill in: {@code {name}}, and {@code [parts]} that may be left out. The {@code (s)} of
 * {@code {trays} tray(s)} stays away after a 1 and is an s after any other figure.
 */
final class Sentence {
    private static final Pattern PART = Pattern.compile("\\[([^\\[\\]]*)]");
    private static final Pattern NAME = Pattern.compile("\\{([A-Za-z][A-Za-z.-]*)}");
    private static final Pattern ONE = Pattern.compile("(?<![\\w.,–-])(1 (?:\\p{L}+ )?\\p{L}+)\\(s\\)");
    private final String text;

    Sentence(String text) {
        this.text = text;
    }

    /** A sentence of talk with names filled in; parts in brackets with unknown names are left out. */
    static String talk(Map<String, String> sentences, String id, Map<String, String> words) {
        String sentence = Objects.requireNonNull(sentences.get(id), () -> "no wording talk." + id);
        return new Sentence(sentence)
                .fill(name -> Optional.ofNullable(words.get(name)))
                .orElseThrow(() -> new IllegalStateException("talk." + id + " needs more than " + words.keySet()));
    }

    /**
     * The sentence filled in. A part in brackets with an unknown name is left out; an unknown name elsewhere leaves the whole sentence
     * out, since half a sentence helps nobody.
     */
    Optional<String> fill(Function<String, Optional<String>> words) {
        Matcher parts = PART.matcher(text);
        StringBuilder kept = new StringBuilder();
        while (parts.find()) {
            String filled = names(parts.group(1), words).orElse("");
            parts.appendReplacement(kept, Matcher.quoteReplacement(filled));
        }
        parts.appendTail(kept);
        return names(kept.toString(), words)
                .map(filled -> ONE.matcher(filled).replaceAll("$1").replace("(s)", "s"));
    }

    private static Optional<String> names(String text, Function<String, Optional<String>> words) {
        Matcher names = NAME.matcher(text);
        StringBuilder filled = new StringBuilder();
        while (names.find()) {
            Optional<String> word = words.apply(names.group(1));
            if (word.isEmpty()) {
                return Optional.empty();
            }
            names.appendReplacement(filled, Matcher.quoteReplacement(word.get()));
        }
        names.appendTail(filled);
        return Optional.of(filled.toString());
    }
}
