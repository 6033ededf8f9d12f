package bothy.reading.text;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A phrase as the words files write it. Besides plain words it may hold: {@code word?} (may be missing), {@code (a|b c)} (one of),
 * {@code (a|b)?}, {@code (a|b)*} and {@code (a|b)+} (several times), {@code !word} and {@code !(a|b)} (none of them comes next),
 * {@code ..} (a gap of up to {@value #GAP} words within the sentence), {@code ...} (one of up to {@value #WIDE_GAP} words, over no comma,
 * "and" or "then"), {@code @leaf} (one of a named group) and
 * {@code {crop}}, {@code {n}}, {@code {date}}, {@code {word}} (what else was found at that place); {@code {end}} is the end of the
 * sentence or a mark.
 */
public final class Phrase {
    static final int GAP = 6;
    static final int WIDE_GAP = 14;
    /** Behind these something else is told. */
    private static final Set<String> NEXT = Set.of("and", ",", "then", "but", "(", "-");

    private final String text;
    private final Map<String, List<String>> groups;
    private final boolean whole;
    private volatile Read read;

    /**
     * A phrase read into its parts.
     *
     * @param needed words of which one must stand in whatever the phrase is found in, empty when any may
     */
    private record Read(List<PhraseParts.Part> parts, Set<String> needed) {
        static Read of(List<PhraseParts.Part> parts) {
            Set<String> needed = Set.of();
            // The words of the part behind the first are looked at: by its first the phrase was come upon.
            for (PhraseParts.Part part : parts.subList(1, parts.size())) {
                if (part instanceof PhraseParts.Words words
                        && words.least() > 0
                        && words.byFirst() != null
                        && (needed.isEmpty() || words.byFirst().size() < needed.size())) {
                    needed = words.byFirst().keySet();
                }
            }
            return new Read(parts, needed);
        }
    }

    /** What stands at a place besides words: the end of a crop's name, a number, a date; −1 when there is none. */
    public interface Slots {
        int end(String slot, int at);
    }

    /** Where a phrase was found. Words in a gap and a crop's name are between start
     * and end but not among {@code words}. */
    public record Place(int start, int end, BitSet words) {
        public int length() {
            return words.cardinality();
        }
    }

    /**
     * @param text the phrase; whether it can be read shows when it is put into a book
     * @param groups words of each named group
     */
    public Phrase(String text, Map<String, List<String>> groups) {
        this(text, groups, true);
    }

    private Phrase(String text, Map<String, List<String>> groups, boolean whole) {
        this.text = text;
        this.groups = groups;
        this.whole = whole;
    }

    /** The same phrase in other words at its head ("sowed .. in" of "sow .. in"), of which only the head is new. */
    public Phrase inForm(String form) {
        return new Phrase(form, groups, false);
    }

    /**
     * @param vocabulary takes the words that the phrase can hold; of another form of a phrase those of its head
     * @throws IllegalArgumentException with what is wrong when the phrase cannot be read
     */
    Glance glance(Set<String> vocabulary) {
        return whole ? Glance.at(text, groups, vocabulary) : Glance.atHead(text, groups, vocabulary);
    }

    /** Read when the phrase is first looked for: most of the thousands of phrases are not in a day. */
    private Read parsed() {
        Read parsed = read;
        if (parsed == null) {
            parsed = Read.of(PhraseParts.of(text, groups));
            read = parsed;
        }
        return parsed;
    }

    private List<PhraseParts.Part> parts() {
        return parsed().parts();
    }

    /** Words of which one must stand in whatever the phrase is found in, empty when any may. */
    Set<String> needed() {
        return parsed().needed();
    }

    /** Where the phrase stands when it begins at a token, {@code null} when it does not. */
    Place at(List<Token> tokens, int start, int limit, Slots slots) {
        BitSet words = new BitSet();
        int end = match(0, start, tokens, limit, slots, words);
        return end < 0 || end == start ? null : new Place(start, end, words);
    }

    private int match(int index, int at, List<Token> tokens, int limit, Slots slots, BitSet words) {
        if (index == parts().size()) {
            return at;
        }
        PhraseParts.Part part = parts().get(index);
        int end;
        if (part instanceof PhraseParts.Words choice) {
            end = matchWords(choice, 0, index, at, tokens, limit, slots, words);
        } else if (part instanceof PhraseParts.Slot slot) {
            end = matchSlot(slot, index, at, tokens, limit, slots, words);
        } else if (part instanceof PhraseParts.Unless unless) {
            boolean comes = at < limit && unless.next().contains(tokens.get(at).word());
            end = comes ? -1 : match(index + 1, at, tokens, limit, slots, words);
        } else {
            end = matchGap((PhraseParts.Gap) part, index, at, tokens, limit, slots, words);
        }
        return end < 0 && part.optional() ? match(index + 1, at, tokens, limit, slots, words) : end;
    }

    private int matchWords(
            PhraseParts.Words choice,
            int had,
            int index,
            int at,
            List<Token> tokens,
            int limit,
            Slots slots,
            BitSet words) {
        List<List<String>> choices =
                at < limit ? choice.beginningWith(tokens.get(at).word()) : choice.choices();
        for (List<String> sequence : choices) {
            BitSet own = new BitSet();
            int after = after(sequence, 0, at, tokens, limit, slots, own);
            if (after >= 0) {
                int end = had + 1 < choice.most()
                        ? matchWords(choice, had + 1, index, after, tokens, limit, slots, words)
                        : -1;
                end = end < 0 ? match(index + 1, after, tokens, limit, slots, words) : end;
                if (end >= 0) {
                    words.or(own);
                    return end;
                }
            }
        }
        return -1;
    }

    /** Where a choice's words and slots end, those from {@code item} on; −1 when they do not stand here. */
    private static int after(
            List<String> sequence, int item, int at, List<Token> tokens, int limit, Slots slots, BitSet own) {
        int after = at;
        for (int i = item; i < sequence.size(); i++) {
            String word = sequence.get(i);
            if (word.equals(PhraseParts.GAP_MARK)) {
                return afterGap(sequence, i + 1, after, tokens, limit, slots, own);
            }
            if (word.equals("{end}") && ends(tokens, after, limit, slots)) {
                continue;
            }
            int next = after < limit ? afterOne(word, after, tokens, slots) : -1;
            if (next < 0 || next > limit) {
                return -1;
            }
            if (!word.equals("{crop}")) {
                own.set(after, next);
            }
            after = next;
        }
        return after;
    }

    /** "Leeks in 👍": a picture that is no crop closes what is told. */
    private static boolean ends(List<Token> tokens, int at, int limit, Slots slots) {
        return at == limit || tokens.get(at).mark() || tokens.get(at).picture() && slots.end("crop", at) < 0;
    }

    private static int afterOne(String word, int at, List<Token> tokens, Slots slots) {
        if (word.charAt(0) == '{') {
            return slots.end(word.substring(1, word.length() - 1), at);
        }
        return tokens.get(at).is(word) ? at + 1 : -1;
    }

    private static int afterGap(
            List<String> sequence, int item, int at, List<Token> tokens, int limit, Slots slots, BitSet own) {
        for (int skip = at; skip <= Math.min(limit, at + GAP); skip++) {
            BitSet behind = new BitSet();
            int end = after(sequence, item, skip, tokens, limit, slots, behind);
            if (end >= 0) {
                own.or(behind);
                return end;
            }
            if (skip < limit && tokens.get(skip).endsSentence()) {
                return -1;
            }
        }
        return -1;
    }

    private int matchSlot(
            PhraseParts.Slot slot, int index, int at, List<Token> tokens, int limit, Slots slots, BitSet words) {
        if (slot.name().equals("end")) {
            return ends(tokens, at, limit, slots) ? match(index + 1, at, tokens, limit, slots, words) : -1;
        }
        int after = at < limit ? slots.end(slot.name(), at) : -1;
        if (after < 0 || after > limit) {
            return -1;
        }
        int end = match(index + 1, after, tokens, limit, slots, words);
        if (end >= 0 && !slot.name().equals("crop")) {
            words.set(at, after);
        }
        return end;
    }

    private int matchGap(
            PhraseParts.Gap gap, int index, int at, List<Token> tokens, int limit, Slots slots, BitSet words) {
        int last = Math.min(limit, at + (gap.wide() ? WIDE_GAP : GAP));
        for (int skip = at; skip <= last; skip++) {
            int end = match(index + 1, skip, tokens, limit, slots, words);
            if (end >= 0) {
                return end;
            }
            boolean ends = skip < limit
                    && (tokens.get(skip).endsSentence()
                            || gap.wide() && NEXT.contains(tokens.get(skip).word()));
            if (ends) {
                return -1;
            }
        }
        return -1;
    }
}
