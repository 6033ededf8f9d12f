package bothy.reading.text;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A phrase as the words files write it. Besides plain words it may hold: {@code word?} (may be missing), {@code (a|b c)} (one of),
 * {@code (a|b)?}, {@code (a|b)*} and {@code (a|b)+} (several times), {@code ..} (a gap of up to {@value #GAP} words within the sentence), {@code @leaf} (one of a named group) and
 * {@code {crop}}, {@code {n}}, {@code {date}}, {@code {word}} (what else was found at that place); {@code {end}} is the end of the
 * sentence or a mark.
 */
public final class Phrase {
    static final int GAP = 6;
    private static final String GAP_MARK = "..";
    private static final int MOST = 4;
    private final List<Part> parts = new ArrayList<>();

    private sealed interface Part permits Words, Gap, Slot {
        boolean optional();
    }

    private record Words(List<List<String>> choices, int least, int most) implements Part {
        @Override
        public boolean optional() {
            return least == 0;
        }
    }

    private record Gap(boolean optional) implements Part {}

    private record Slot(String name, boolean optional) implements Part {}

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
     * @param text the phrase
     * @param groups words of each named group
     * @throws IllegalArgumentException with what is wrong when the phrase cannot be read
     */
    public Phrase(String text, Map<String, List<String>> groups) {
        for (String piece : pieces(text)) {
            char ending = piece.length() > 1 ? piece.charAt(piece.length() - 1) : ' ';
            boolean marked = "?*+".indexOf(ending) >= 0;
            parts.add(part(marked ? piece.substring(0, piece.length() - 1) : piece, ending, groups));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a phrase without words");
        }
    }

    private static List<String> pieces(String text) {
        List<String> pieces = new ArrayList<>();
        int depth = 0;
        StringBuilder piece = new StringBuilder();
        for (char c : (text.toLowerCase(java.util.Locale.ROOT) + " ").toCharArray()) {
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (Character.isWhitespace(c) && depth == 0) {
                if (!piece.isEmpty()) {
                    pieces.add(piece.toString());
                }
                piece.setLength(0);
            } else {
                piece.append(c);
            }
        }
        if (depth != 0) {
            throw new IllegalArgumentException("the brackets in \"" + text + "\" do not close");
        }
        return pieces;
    }

    private static Part part(String bare, char ending, Map<String, List<String>> groups) {
        boolean optional = ending == '?' || ending == '*';
        if (bare.equals(GAP_MARK)) {
            return new Gap(optional);
        }
        if (bare.startsWith("{") && bare.endsWith("}")) {
            return new Slot(bare.substring(1, bare.length() - 1), optional);
        }
        List<List<String>> choices = new ArrayList<>();
        String inside = bare.startsWith("(") ? bare.substring(1, bare.length() - 1) : bare;
        for (String choice : Choices.of(inside)) {
            addChoice(choice, groups, choices);
        }
        choices.sort((a, b) -> b.size() - a.size());
        return new Words(choices, optional ? 0 : 1, ending == '*' || ending == '+' ? MOST : 1);
    }

    private static void addChoice(String choice, Map<String, List<String>> groups, List<List<String>> choices) {
        if (!choice.startsWith("@")) {
            choices.add(words(choice));
            return;
        }
        List<String> group = groups.get(choice.substring(1));
        if (group == null) {
            throw new IllegalArgumentException("there is no group \"" + choice.substring(1) + "\"");
        }
        group.forEach(member -> choices.add(words(member)));
    }

    /** The words of a choice as the scanner would cut them; a slot and a gap are kept as they are. */
    private static List<String> words(String choice) {
        List<String> words = new ArrayList<>();
        for (String part : parts(choice)) {
            if (plain(part) || part.equals(GAP_MARK) || part.charAt(0) == '{') {
                words.add(part);
            } else {
                Scanner.scan(part).forEach(token -> words.addAll(Contractions.apart(token.word())));
            }
        }
        return words;
    }

    private static List<String> parts(String choice) {
        List<String> parts = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= choice.length(); i++) {
            if (i == choice.length() || choice.charAt(i) == ' ') {
                if (i > start) {
                    parts.add(choice.substring(start, i));
                }
                start = i + 1;
            }
        }
        return parts;
    }

    private static boolean plain(String choice) {
        for (int i = 0; i < choice.length(); i++) {
            char c = choice.charAt(i);
            if (c < 'a' || c > 'z') {
                return false;
            }
        }
        return true;
    }

    /** All words that the phrase can hold. */
    public Set<String> vocabulary() {
        Set<String> words = new LinkedHashSet<>();
        for (Part part : parts) {
            if (part instanceof Words choice) {
                choice.choices().forEach(words::addAll);
                words.removeIf(word -> word.charAt(0) == '{' || word.equals(GAP_MARK));
            }
        }
        return words;
    }

    /** The words that the phrase can begin with, or an empty set when it may begin with anything. */
    Set<String> beginnings() {
        Set<String> beginnings = new LinkedHashSet<>();
        for (Part part : parts) {
            if (!(part instanceof Words choice)) {
                return Set.of();
            }
            if (choice.choices().stream().anyMatch(words -> words.get(0).charAt(0) == '{')) {
                return Set.of();
            }
            choice.choices().forEach(words -> beginnings.add(words.get(0)));
            if (!part.optional()) {
                return beginnings;
            }
        }
        return beginnings;
    }

    /** Where the phrase stands when it begins at a token, {@code null} when it does not. */
    Place at(List<Token> tokens, int start, int limit, Slots slots) {
        BitSet words = new BitSet();
        int end = match(0, start, tokens, limit, slots, words);
        return end < 0 || end == start ? null : new Place(start, end, words);
    }

    private int match(int index, int at, List<Token> tokens, int limit, Slots slots, BitSet words) {
        if (index == parts.size()) {
            return at;
        }
        Part part = parts.get(index);
        int end;
        if (part instanceof Words choice) {
            end = matchWords(choice, 0, index, at, tokens, limit, slots, words);
        } else if (part instanceof Slot slot) {
            end = matchSlot(slot, index, at, tokens, limit, slots, words);
        } else {
            end = matchGap(index, at, tokens, limit, slots, words);
        }
        return end < 0 && part.optional() ? match(index + 1, at, tokens, limit, slots, words) : end;
    }

    private int matchWords(
            Words choice, int had, int index, int at, List<Token> tokens, int limit, Slots slots, BitSet words) {
        for (List<String> sequence : choice.choices()) {
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
            if (word.equals(GAP_MARK)) {
                return afterGap(sequence, i + 1, after, tokens, limit, slots, own);
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

    private int matchSlot(Slot slot, int index, int at, List<Token> tokens, int limit, Slots slots, BitSet words) {
        if (slot.name().equals("end")) {
            boolean ends = at == limit || tokens.get(at).mark();
            return ends ? match(index + 1, at, tokens, limit, slots, words) : -1;
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

    private int matchGap(int index, int at, List<Token> tokens, int limit, Slots slots, BitSet words) {
        for (int skip = at; skip <= Math.min(limit, at + GAP); skip++) {
            int end = match(index + 1, skip, tokens, limit, slots, words);
            if (end >= 0) {
                return end;
            }
            if (skip < limit && tokens.get(skip).endsSentence()) {
                return -1;
            }
        }
        return -1;
    }
}
