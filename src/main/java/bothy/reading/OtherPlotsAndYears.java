package bothy.reading;

import bothy.reading.grammar.Moods;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What ailed other people's plants or those of earlier years: "caterpillars got the lot last year", "next door has mildew on his". It shows
 * nothing of what grows here now. What such words tell without a complaint ("spuds stood there last year") is kept.
 */
final class OtherPlotsAndYears {
    private static final Set<String> PARTING = Set.of("and", "but", "while", "whereas", "though", "although", "so");

    /** Colours complain of plants, not of what else somebody has: "next door has a yellow kind". */
    private static final Set<String> COLOURS =
            Set.of("yellow", "white", "black", "brown", "grey", "purple", "pale", "reddish", "whitish", "silvery");

    private final Moods moods;
    private final Set<String> complaints;

    OtherPlotsAndYears(Moods moods, Set<String> complaints) {
        this.moods = moods;
        this.complaints = complaints;
    }

    /** The passage with a mark for each word of a clause that complains of them. */
    Passage without(Passage passage) {
        if (passage.words().stream().noneMatch(complaints::contains)) {
            return passage;
        }
        List<Token> tokens = null;
        for (int[] sentence : passage.sentences()) {
            boolean theirs = false;
            for (int from = sentence[0]; from < sentence[1]; ) {
                int to = end(passage, from, sentence[1]);
                // "Eileen is digging hers, balls of flour": who is told of is so until the grower's own come in.
                theirs = moods.ofAnotherGrower(passage, from, to) || theirs && !moods.ofOurs(passage, from, to);
                if (complains(passage, from, to) && (theirs || moods.ofAnotherYear(passage, from, to))) {
                    tokens = tokens == null ? new ArrayList<>(passage.tokens()) : tokens;
                    for (int at = from; at < to; at++) {
                        Token token = tokens.get(at);
                        tokens.set(
                                at,
                                new Token(",", Token.Sort.MARK, Double.NaN, token.from(), token.to(), false, false));
                    }
                }
                from = to;
            }
        }
        return tokens == null ? passage : passage.withTokens(tokens);
    }

    /** Where the clause ends that begins at a word: behind a mark, before an "and". */
    private static int end(Passage passage, int from, int to) {
        int at = from + 1;
        while (at < to && !passage.tokens().get(at - 1).mark() && !PARTING.contains(passage.word(at))) {
            at++;
        }
        return at;
    }

    private boolean complains(Passage passage, int from, int to) {
        for (int at = from; at < to; at++) {
            if (complaints.contains(passage.word(at)) && !COLOURS.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
