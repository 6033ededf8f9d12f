package bothy.reading.grammar;

import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Span;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Whether a sentence only goes on with a list: crops with their counts, places and days, and nothing told of them. */
final class GoingOnList {
    private static final Set<String> TELLING = Set.of(
            "is",
            "staying",
            "stay",
            "stays",
            "stayed",
            "sitting",
            "standing",
            "growing",
            "happy",
            "fine",
            "slow",
            "struggling",
            "sulking",
            "are",
            "was",
            "were",
            "be",
            "has",
            "have",
            "had",
            "'s",
            "still",
            "none",
            "not",
            "no",
            "never",
            "look",
            "looks",
            "looking",
            "seem",
            "seems",
            "need",
            "needs",
            "want",
            "wants",
            "got",
            "get",
            "getting",
            "going",
            "gone",
            "will",
            "would",
            "should",
            "can",
            "next",
            "later",
            "tomorrow",
            "left",
            "nothing",
            "nowt",
            "waiting",
            "ready",
            "due",
            "same",
            "why",
            "when",
            "if",
            "i",
            "we",
            "they",
            "you",
            "he",
            "she",
            "behind",
            "high",
            "tall",
            "climbing",
            "knee",
            "yet",
            "coming",
            "doing",
            "did",
            "do");

    private static final Set<String> REASONS = Set.of("because", "cause", "cos", "coz", "cuz", "as");

    private GoingOnList() {}

    static boolean only(Passage passage, int[] sentence) {
        for (int at = sentence[0]; at < reason(passage, sentence); at++) {
            if (TELLING.contains(passage.word(at)) && !covered(passage.places(), at) && !covered(passage.days(), at)) {
                return false;
            }
        }
        return true;
    }

    /** Where a list that is counted begins to say why: "12 lettuces because there was room". */
    private static int reason(Passage passage, int[] sentence) {
        int counted = passage.counts(sentence[0], sentence[1]).stream()
                .mapToInt(NumberSaid::end)
                .min()
                .orElse(sentence[1]);
        return IntStream.range(counted, sentence[1])
                .filter(at -> REASONS.contains(passage.word(at)))
                .findFirst()
                .orElse(sentence[1]);
    }

    private static boolean covered(List<? extends Span> spans, int at) {
        return spans.stream().anyMatch(span -> span.covers(at));
    }
}
