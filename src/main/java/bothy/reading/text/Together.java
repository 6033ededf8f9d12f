package bothy.reading.text;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Words that mean something when they stand near each other in a sentence, in any order and with anything between: {@code
 * "stem~ vine~ & split~ burst & !fruit"}. Each part between the "&amp;" is one of several words; {@code ~} after a word takes in its
 * forms ("split", "splits", "splitting"), {@code _} joins words that follow each other ("soil_line"), {@code @} takes in a named group,
 * and a part that begins with {@code !} must not be there.
 */
public final class Together {
    /** Further apart than so many tokens words of one sentence hardly belong together. By judgement. */
    public static final int IN_A_SENTENCE = 20;
    /** The same over the sentences of a message. By judgement. */
    public static final int IN_A_MESSAGE = 40;

    private static final Conjugation FORMS = new Conjugation(Map.of());
    private final List<Set<List<String>>> parts = new ArrayList<>();
    private final Set<List<String>> without = new HashSet<>();
    private final List<Set<String>> firsts = new ArrayList<>();

    /**
     * @param text the pattern
     * @param groups words of each named group
     * @throws IllegalArgumentException when it has fewer than two parts that must be there, or a group is not known
     */
    public Together(String text, Map<String, List<String>> groups) {
        for (String part : text.toLowerCase(java.util.Locale.ROOT).split("&")) {
            String bare = part.strip();
            if (bare.startsWith("!")) {
                without.addAll(words(bare.substring(1).strip(), groups));
            } else {
                parts.add(words(bare, groups));
            }
        }
        if (parts.size() < 2 || parts.stream().anyMatch(Set::isEmpty)) {
            throw new IllegalArgumentException("two parts of words or more are wanted around \"&\"");
        }
        for (Set<List<String>> part : parts) {
            Set<String> first = new HashSet<>();
            part.forEach(words -> first.add(words.get(0)));
            firsts.add(first);
        }
    }

    /** Whether a text is such a pattern rather than a phrase. */
    public static boolean isOne(String text) {
        return text.contains("&");
    }

    private static Set<List<String>> words(String part, Map<String, List<String>> groups) {
        Set<List<String>> words = new HashSet<>();
        for (String word : part.split("\\s+")) {
            if (word.startsWith("@")) {
                List<String> group = groups.get(word.substring(1));
                if (group == null) {
                    throw new IllegalArgumentException("there is no group \"" + word.substring(1) + "\"");
                }
                group.forEach(member -> words.addAll(words(member.replace(' ', '_'), Map.of())));
            } else if (word.endsWith("~")) {
                forms(word.substring(0, word.length() - 1)).forEach(form -> words.add(List.of(form)));
            } else if (!word.isEmpty()) {
                words.add(List.of(word.split("_")));
            }
        }
        return words;
    }

    /** The forms of a word; both "shriveled" and "shrivelled", "splitting" too. */
    private static Set<String> forms(String word) {
        Set<String> forms = new HashSet<>(FORMS.forms(word).keySet());
        if (word.matches(".*[^aeiou][aeiou][bdgklmnprt]")) {
            String doubled = word + word.charAt(word.length() - 1);
            forms.add(doubled + "ing");
            forms.add(doubled + "ed");
        }
        return forms;
    }

    /**
     * Whether words of every part are among those of a message at all: a quick look before the search.
     *
     * @param words of the message
     */
    public boolean possible(Set<String> words) {
        for (Set<String> first : firsts) {
            if (Collections.disjoint(first, words)) {
                return false;
            }
        }
        return true;
    }

    /** The words with which the part of fewest words may begin: at least one of them stands where the pattern does. */
    Set<String> rarest() {
        return firsts.stream().min(Comparator.comparingInt(Set::size)).orElseThrow();
    }

    /** All words that the pattern can hold. */
    public Set<String> vocabulary() {
        Set<String> all = new HashSet<>();
        parts.forEach(part -> part.forEach(all::addAll));
        return all;
    }

    /**
     * Where the words stand near each other, {@code null} when they do not.
     *
     * @param apart how many tokens they may take up
     */
    public Phrase.Place in(List<Token> tokens, int from, int to, int apart) {
        for (Set<List<String>> part : parts) {
            if (first(part, tokens, from, to, from) < 0) {
                return null;
            }
        }
        for (int start = from; start < to; start++) {
            int end = Math.min(to, start + apart);
            Phrase.Place place = window(tokens, start, end);
            if (place != null && first(without, tokens, Math.max(from, start - 2), end, from) < 0) {
                return place;
            }
        }
        return null;
    }

    private Phrase.Place window(List<Token> tokens, int start, int end) {
        BitSet words = new BitSet();
        for (Set<List<String>> part : parts) {
            int at = start - 1;
            int length = 0;
            do {
                at = first(part, tokens, at + 1, end, start);
                length = at < 0 ? 0 : length(part, tokens, at, end);
            } while (at >= 0 && words.get(at));
            if (at < 0) {
                return null;
            }
            words.set(at, at + length);
        }
        return words.get(start) ? new Phrase.Place(start, words.length(), words) : null;
    }

    private static int first(Set<List<String>> part, List<Token> tokens, int from, int to, int least) {
        for (int at = Math.max(from, least); at < to; at++) {
            if (length(part, tokens, at, to) > 0) {
                return at;
            }
        }
        return -1;
    }

    private static int length(Set<List<String>> part, List<Token> tokens, int at, int to) {
        if (part.contains(List.of(tokens.get(at).word()))) {
            return 1;
        }
        if (at + 1 < to
                && part.contains(
                        List.of(tokens.get(at).word(), tokens.get(at + 1).word()))) {
            return 2;
        }
        return at + 2 < to
                        && part.contains(List.of(
                                tokens.get(at).word(),
                                tokens.get(at + 1).word(),
                                tokens.get(at + 2).word()))
                ? 3
                : 0;
    }
}
