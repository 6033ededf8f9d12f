package bothy.reading;

import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** "Yellow flowers on the squash. They are all falling off": puts the part of the plant named last in the place of "they". */
final class PartsMeant {
    private static final Set<String> PARTS = Set.of(
            "flower",
            "flowers",
            "blossom",
            "blossoms",
            "blooms",
            "leaf",
            "leaves",
            "fruit",
            "fruits",
            "pods",
            "stems",
            "seedlings",
            "roots",
            "bulbs",
            "cobs");
    /** How far into its sentence "they" stands for what was named before it, in words. */
    private static final int NEAR_HEAD = 3;

    private PartsMeant() {}

    /** The passage with the part named, or as it is when the sentence points to none. */
    static Passage named(Passage passage, int[] sentence) {
        int last = Math.min(sentence[1], sentence[0] + NEAR_HEAD);
        for (int at = sentence[0]; at < last; at++) {
            if (Set.of("they", "them", "these", "it").contains(passage.word(at))) {
                String part = before(passage, sentence[0]);
                return part == null ? passage : with(passage, at, part);
            }
        }
        return passage;
    }

    private static String before(Passage passage, int start) {
        for (int at = start - 1; at >= 0; at--) {
            if (PARTS.contains(passage.word(at))) {
                return passage.word(at);
            }
        }
        return null;
    }

    private static Passage with(Passage passage, int at, String part) {
        List<Token> tokens = new ArrayList<>(passage.tokens());
        Token old = tokens.get(at);
        tokens.set(at, new Token(part, old.sort(), old.number(), old.from(), old.to(), old.capital(), old.mended()));
        return passage.withTokens(tokens);
    }
}
