package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;

/** What a doing is compared with: "more than last year", "the way Dad always did". It is neither when nor by whom it was done. */
final class Comparisons {
    private final PhraseBook<String> book;

    Comparisons(PhraseBook<String> book) {
        this.book = book;
    }

    /** Where something seen is first compared behind a word; the end when it is not. */
    int behind(Passage passage, int from, int end) {
        return book.all(passage.tokens(), from, end, passage).stream()
                .mapToInt(Found::start)
                .min()
                .orElse(end);
    }

    /** Whether words stand in what a doing is compared with, and the doing itself does not. */
    boolean hold(Found<String> words, ActionSaid action, Passage passage, int[] sentence) {
        int verb = action.words().nextSetBit(0);
        return book.all(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .anyMatch(one -> {
                    int end = part(passage, one.start(), sentence[1]);
                    return one.start() <= words.start() && words.start() < end && (verb < one.start() || verb >= end);
                });
    }

    /** Where the part of a sentence ends that begins at a word. */
    private static int part(Passage passage, int from, int end) {
        int at = from;
        while (at < end && !passage.tokens().get(at).mark()) {
            at++;
        }
        return at;
    }
}
