package bothy.reading;

import java.util.Set;

/** Whether a "no" answers: "no, they are fine" does, "no frost here since April" tells that there was none. */
public final class PlainNo {
    private static final Set<String> ANSWERED_FURTHER = Set.of(
            "i",
            "im",
            "ive",
            "it",
            "its",
            "they",
            "theyre",
            "we",
            "weve",
            "he",
            "she",
            "that",
            "there",
            "not",
            "but",
            "just",
            "only",
            "still",
            "never",
            "none",
            "nothing",
            "thanks",
            "thank",
            "sorry",
            "because",
            "cos",
            "the",
            "all",
            "and",
            "no",
            "nope",
            "as",
            "too",
            "way",
            "definitely",
            "this",
            "these",
            "those",
            "my",
            "mine",
            "did",
            "have",
            "has",
            "was",
            "is",
            "are",
            "why");

    private PlainNo() {}

    /** @param next the word behind the "no", empty or a mark when none follows at once */
    public static boolean before(String next) {
        return next.isEmpty() || !Character.isLetter(next.charAt(0)) || ANSWERED_FURTHER.contains(next);
    }
}
