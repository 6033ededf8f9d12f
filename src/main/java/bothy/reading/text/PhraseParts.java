package bothy.reading.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads the text of a phrase into its parts. */
final class PhraseParts {
    static final String GAP_MARK = "..";
    private static final String WIDE_GAP_MARK = "...";
    private static final int MOST = 4;

    private PhraseParts() {}

    /** Whether a piece of a phrase leaves room for words of any kind. */
    static boolean gap(String piece) {
        return piece.equals(GAP_MARK) || piece.equals(WIDE_GAP_MARK);
    }

    /** Whether a piece of a phrase only tells what must not come next. */
    static boolean unless(String piece) {
        return piece.charAt(0) == '!';
    }

    private static String inside(String bare) {
        return bare.startsWith("(") ? bare.substring(1, bare.length() - 1) : bare;
    }

    /** One part of a phrase. */
    sealed interface Part permits Words, Gap, Slot, Unless {
        boolean optional();
    }

    /**
     * One of several words or sequences of words, from {@code least} to {@code most} times.
     *
     * @param byFirst the choices by the word with which they begin, {@code null} when one may begin with anything
     */
    record Words(List<List<String>> choices, Map<String, List<List<String>>> byFirst, int least, int most)
            implements Part {
        Words(List<List<String>> choices, int least, int most) {
            this(choices, byFirst(choices), least, most);
        }

        private static Map<String, List<List<String>>> byFirst(List<List<String>> choices) {
            Map<String, List<List<String>>> byFirst = new HashMap<>();
            for (List<String> choice : choices) {
                String first = choice.get(0);
                if (first.charAt(0) == '{' || first.equals(GAP_MARK)) {
                    return null;
                }
                byFirst.computeIfAbsent(first, word -> new ArrayList<>(1)).add(choice);
            }
            return byFirst;
        }

        /** The choices that may begin with a word. */
        List<List<String>> beginningWith(String word) {
            return byFirst == null ? choices : byFirst.getOrDefault(word, List.of());
        }

        @Override
        public boolean optional() {
            return least == 0;
        }
    }

    /**
     * A few words of any kind.
     *
     * @param wide whether many words may stand there, none of them beginning something else
     */
    record Gap(boolean optional, boolean wide) implements Part {}

    /** What else was found at that place. */
    record Slot(String name, boolean optional) implements Part {}

    /** Words of which none may come next: "sick !of". */
    record Unless(Set<String> next) implements Part {
        @Override
        public boolean optional() {
            return false;
        }
    }

    static List<Part> of(String text, Map<String, List<String>> groups) {
        List<Part> parts = new ArrayList<>();
        for (String piece : pieces(text)) {
            char ending = ending(piece);
            parts.add(part(bare(piece), ending, groups));
        }
        return parts;
    }

    /** The mark at the end of a piece, a blank when it has none. */
    static char ending(String piece) {
        char last = piece.length() > 1 ? piece.charAt(piece.length() - 1) : ' ';
        return "?*+".indexOf(last) >= 0 ? last : ' ';
    }

    static String bare(String piece) {
        return ending(piece) == ' ' ? piece : piece.substring(0, piece.length() - 1);
    }

    /** The text cut at its blanks, those within brackets left alone. */
    static List<String> pieces(String phrase) {
        String text = phrase.toLowerCase(Locale.ROOT);
        List<String> pieces = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            char c = i == text.length() ? ' ' : text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth == 0 && Character.isWhitespace(c)) {
                if (i > start) {
                    pieces.add(text.substring(start, i));
                }
                start = i + 1;
            }
        }
        if (depth != 0) {
            throw new IllegalArgumentException("the brackets in \"" + phrase + "\" do not close");
        }
        return pieces;
    }

    private static Part part(String bare, char ending, Map<String, List<String>> groups) {
        boolean optional = ending == '?' || ending == '*';
        if (gap(bare)) {
            return new Gap(optional, bare.equals(WIDE_GAP_MARK));
        }
        if (unless(bare)) {
            return new Unless(Set.copyOf(Choices.of(inside(bare.substring(1)))));
        }
        if (bare.startsWith("{") && bare.endsWith("}")) {
            return new Slot(bare.substring(1, bare.length() - 1), optional);
        }
        List<List<String>> choices = new ArrayList<>();
        for (String choice : Choices.of(inside(bare))) {
            if (choice.startsWith("@")) {
                groups.get(choice.substring(1)).forEach(member -> choices.add(words(member)));
            } else {
                choices.add(words(choice));
            }
        }
        choices.sort((a, b) -> b.size() - a.size());
        return new Words(choices, optional ? 0 : 1, ending == '*' || ending == '+' ? MOST : 1);
    }

    /** The words of a choice as the scanner would cut them; a slot and a gap are kept as they are. */
    static List<String> words(String choice) {
        List<String> words = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= choice.length(); i++) {
            if (i == choice.length() || choice.charAt(i) == ' ') {
                if (i > start) {
                    addWords(choice.substring(start, i), words);
                }
                start = i + 1;
            }
        }
        return words;
    }

    private static void addWords(String part, List<String> into) {
        if (plain(part) || part.equals(GAP_MARK) || part.charAt(0) == '{') {
            into.add(part);
        } else {
            Scanner.scan(part).forEach(token -> into.addAll(Contractions.apart(token.word())));
        }
    }

    static boolean plain(String choice) {
        for (int i = 0; i < choice.length(); i++) {
            char c = choice.charAt(i);
            if (c < 'a' || c > 'z') {
                return false;
            }
        }
        return true;
    }
}
