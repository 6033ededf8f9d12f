package bothy.reading;

import bothy.almanac.Words;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What somebody else takes a trouble for: "my neighbour reckons it is blight but it has not rained". It shows nothing of the plants.
 * What somebody saw ("my lad says the radishes are bulletproof") names the crop and is kept.
 */
final class Hearsay {
    private static final String FILE = "findings";
    /** So many words at most stand between who says it and that it is said: "everyone at the plot shouted". */
    private static final int NEAR = 4;

    private static final Set<String> ENDING = Set.of("but", "though", "although", "yet", "because", "since");
    private static final Set<String> OWN = Set.of("my", "the", "our", "a", "his", "her", "some", "next", "old", "dear");

    private final Set<String> people;
    private final Set<String> claiming;

    Hearsay(Words words) {
        people = Set.copyOf(words.list(FILE, "/hearsay/people"));
        claiming = Set.copyOf(words.list(FILE, "/hearsay/claiming"));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(people);
        all.addAll(claiming);
        return all;
    }

    /** The passage with a mark for each word of what others take the trouble for. */
    Passage without(Passage passage) {
        List<Token> tokens = null;
        for (int at = 0; at < passage.size(); at++) {
            int from = claimed(passage, at);
            if (from < 0) {
                continue;
            }
            int end = end(passage, at);
            if (!namesACrop(passage, at, end)) {
                tokens = tokens == null ? new ArrayList<>(passage.tokens()) : tokens;
                for (int word = from; word < end; word++) {
                    Token token = tokens.get(word);
                    tokens.set(
                            word, new Token(",", Token.Sort.MARK, Double.NaN, token.from(), token.to(), false, false));
                }
            }
            at = end;
        }
        return tokens == null ? passage : passage.withTokens(tokens);
    }

    /** Where who claims is named whose claiming word stands at a place, −1 when none is. */
    private int claimed(Passage passage, int at) {
        if (!claiming.contains(passage.word(at))) {
            return -1;
        }
        for (int before = at - 1; before >= Math.max(0, at - NEAR); before--) {
            if (passage.tokens().get(before).mark()) {
                return -1;
            }
            if (people.contains(passage.word(before))) {
                return before > 0 && OWN.contains(passage.word(before - 1)) ? before - 1 : before;
            }
        }
        return -1;
    }

    private static int end(Passage passage, int from) {
        int end = from;
        while (end < passage.size() && !passage.tokens().get(end).mark() && !ENDING.contains(passage.word(end))) {
            end++;
        }
        return end;
    }

    private static boolean namesACrop(Passage passage, int from, int to) {
        return Passage.within(passage.crops(), from, to).stream().anyMatch(crop -> !crop.thing());
    }
}
