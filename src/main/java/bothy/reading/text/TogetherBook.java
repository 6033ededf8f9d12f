package bothy.reading.text;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * Patterns of words that stand near each other and what each means. Looked up by the words of the part with fewest of them, since a
 * message holds words of few of the thousands of patterns.
 *
 * @param <T> what a pattern means
 */
public final class TogetherBook<T> {
    private final List<Together> patterns = new ArrayList<>();
    private final List<T> meanings = new ArrayList<>();
    private final Map<String, BitSet> byWord = new HashMap<>();

    public void add(Together pattern, T meaning) {
        int number = patterns.size();
        patterns.add(pattern);
        meanings.add(meaning);
        for (String word : pattern.rarest()) {
            byWord.computeIfAbsent(word, key -> new BitSet()).set(number);
        }
    }

    /** Every word in any pattern. */
    public Set<String> vocabulary() {
        Set<String> all = new HashSet<>();
        patterns.forEach(pattern -> all.addAll(pattern.vocabulary()));
        return all;
    }

    /**
     * The patterns of which every part has words among those of a message, in the order in which they were added.
     *
     * @param words of the message
     */
    public void possible(Set<String> words, BiConsumer<Together, T> take) {
        BitSet candidates = new BitSet(patterns.size());
        for (String word : words) {
            BitSet some = byWord.get(word);
            if (some != null) {
                candidates.or(some);
            }
        }
        candidates.stream()
                .filter(number -> patterns.get(number).possible(words))
                .forEach(number -> take.accept(patterns.get(number), meanings.get(number)));
    }
}
