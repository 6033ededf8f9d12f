package bothy.reading.text;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Phrases and what each means. Of phrases that overlap the one with more words counts, of equals the earlier one.
 *
 * @param <T> what a phrase means
 */
public final class PhraseBook<T> {
    private final Map<String, Shelf<T>> byBeginning = new HashMap<>();
    private final Map<String, Shelf<T>> bySlot = new HashMap<>();
    private final Shelf<T> anywhere = new Shelf<>();
    private final Set<String> vocabulary = new HashSet<>();

    private record Meant<T>(Phrase phrase, T meaning) {}

    /** Stands for no word, under which phrases lie that need none. */
    private static final String NOTHING = "";

    /**
     * A phrase found in a message.
     *
     * @param meaning what it means
     * @param place where
     */
    public record Found<T>(T meaning, Phrase.Place place) {
        public int start() {
            return place.start();
        }

        public int end() {
            return place.end();
        }
    }

    /** @throws IllegalArgumentException with what is wrong when the phrase cannot be read */
    public void add(Phrase phrase, T meaning) {
        Meant<T> meant = new Meant<>(phrase, meaning);
        Glance glance = phrase.glance(vocabulary);
        Set<String> beginnings = glance.beginnings();
        if (glance.slot() != null) {
            bySlot.computeIfAbsent(glance.slot(), slot -> new Shelf<>()).add(meant);
        } else if (beginnings.isEmpty()) {
            anywhere.add(meant);
        }
        beginnings.forEach(word ->
                byBeginning.computeIfAbsent(word, first -> new Shelf<>()).add(meant));
    }

    /** Every word in any phrase. */
    public Set<String> vocabulary() {
        return vocabulary;
    }

    /** All phrases that stand in a stretch of tokens, also where they overlap, in order of their beginning. */
    public List<Found<T>> all(List<Token> tokens, int from, int to, Phrase.Slots slots) {
        List<Found<T>> found = new ArrayList<>();
        Set<String> words = new HashSet<>();
        for (int at = from; at < to; at++) {
            words.add(tokens.get(at).word());
        }
        Stretch stretch = new Stretch(tokens, to, slots);
        List<Meant<T>> mayStandAnywhere = anywhere.among(words);
        Map<String, List<Meant<T>>> mayBeginWithSlot = new HashMap<>();
        for (int at = from; at < to; at++) {
            Shelf<T> beginning = byBeginning.get(tokens.get(at).word());
            if (beginning != null) {
                collect(beginning.among(words), stretch, at, found);
            }
            collect(mayStandAnywhere, stretch, at, found);
            for (Map.Entry<String, Shelf<T>> slot : bySlot.entrySet()) {
                if (slots.end(slot.getKey(), at) > 0) {
                    collect(
                            mayBeginWithSlot.computeIfAbsent(
                                    slot.getKey(), name -> slot.getValue().among(words)),
                            stretch,
                            at,
                            found);
                }
            }
        }
        return found;
    }

    /** The phrases that stand in a stretch of tokens without using a word twice. */
    public List<Found<T>> find(List<Token> tokens, int from, int to, Phrase.Slots slots) {
        return withoutShared(all(tokens, from, to, slots));
    }

    /** Those of some phrases found that use no word twice. */
    public List<Found<T>> withoutShared(List<Found<T>> all) {
        List<Found<T>> candidates = new ArrayList<>(all);
        candidates.sort(
                Comparator.comparingInt((Found<T> found) -> -found.place().length())
                        .thenComparingInt(found -> found.end() - found.start()));
        List<Found<T>> kept = new ArrayList<>();
        for (Found<T> candidate : candidates) {
            if (kept.stream()
                    .noneMatch(other ->
                            other.place().words().intersects(candidate.place().words()))) {
                kept.add(candidate);
            }
        }
        kept.sort(Comparator.comparingInt(Found::start));
        return kept;
    }

    /** Tokens up to a limit, and what else was found among them. */
    private record Stretch(List<Token> tokens, int limit, Phrase.Slots slots) {}

    private void collect(List<Meant<T>> may, Stretch stretch, int at, List<Found<T>> into) {
        for (Meant<T> meant : may) {
            Phrase.Place place = meant.phrase().at(stretch.tokens(), at, stretch.limit(), stretch.slots());
            if (place != null) {
                into.add(new Found<>(meant.meaning(), place));
            }
        }
    }

    /** Phrases with one beginning, laid out by the words that they need when they are first looked for. */
    private static final class Shelf<T> {
        private final List<Meant<T>> phrases = new ArrayList<>();
        private volatile Map<String, BitSet> byNeeded;

        void add(Meant<T> meant) {
            phrases.add(meant);
            byNeeded = null;
        }

        /** Those that may stand in a stretch with these words, in the order in which they were added. */
        List<Meant<T>> among(Set<String> words) {
            Map<String, BitSet> laidOut = laidOut();
            BitSet may = (BitSet) laidOut.get(NOTHING).clone();
            for (String word : words) {
                BitSet needing = laidOut.get(word);
                if (needing != null) {
                    may.or(needing);
                }
            }
            List<Meant<T>> among = new ArrayList<>(may.cardinality());
            for (int at = may.nextSetBit(0); at >= 0; at = may.nextSetBit(at + 1)) {
                among.add(phrases.get(at));
            }
            return among;
        }

        private Map<String, BitSet> laidOut() {
            Map<String, BitSet> laidOut = byNeeded;
            if (laidOut == null) {
                laidOut = new HashMap<>();
                laidOut.put(NOTHING, new BitSet());
                for (int at = 0; at < phrases.size(); at++) {
                    Set<String> needed = phrases.get(at).phrase().needed();
                    for (String word : needed.isEmpty() ? Set.of(NOTHING) : needed) {
                        laidOut.computeIfAbsent(word, any -> new BitSet()).set(at);
                    }
                }
                byNeeded = laidOut;
            }
            return laidOut;
        }
    }
}
