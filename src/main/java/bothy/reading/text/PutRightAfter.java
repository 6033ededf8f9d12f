package bothy.reading.text;

import java.util.List;
import java.util.function.Predicate;

/** "Cut 2 lovely lattice for lunch. Lettuce!!! this phone": a word that stands by itself puts right the one before that was mistaken for it. */
final class PutRightAfter {
    /** So far apart may the two be in letters, and how long the word must be for it. */
    private static final int SLIPS = 2;

    private static final int SHORTEST = 5;

    private PutRightAfter() {}

    /**
     * @param wanted whether a word is one of the trade
     */
    static void in(List<Token> tokens, Predicate<String> wanted) {
        for (int at = tokens.size() - 1; at > 1; at--) {
            Token right = tokens.get(at);
            boolean alone = tokens.get(at - 1).endsSentence()
                    && (at + 1 >= tokens.size()
                            || tokens.get(at + 1).mark() && !tokens.get(at + 1).is(":"));
            int wrong = alone && right.aWord() && right.word().length() >= SHORTEST && wanted.test(right.word())
                    ? mistaken(tokens, at, wanted)
                    : -1;
            if (wrong >= 0) {
                tokens.set(wrong, tokens.get(wrong).spelled(right.word()));
                tokens.remove(at);
            }
        }
    }

    private static int mistaken(List<Token> tokens, int right, Predicate<String> wanted) {
        String meant = tokens.get(right).word();
        for (int at = right - 2; at >= 0; at--) {
            String word = tokens.get(at).word();
            boolean near = tokens.get(at).aWord()
                    && !wanted.test(word)
                    && word.length() >= SHORTEST - 1
                    && word.charAt(0) == meant.charAt(0)
                    && Nearness.slips(word, meant, SLIPS) <= SLIPS;
            if (near) {
                return at;
            }
        }
        return -1;
    }
}
