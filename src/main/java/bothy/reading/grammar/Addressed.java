package bothy.reading.grammar;

import bothy.reading.said.Passage;
import java.util.Set;

/** Who is spoken to does nothing: "mate, the tomatoes are in", "they are up, mate", "mate it was 41 degrees". */
final class Addressed {
    private static final Set<String> FRIENDS = Set.of("mate", "pal", "buddy", "man", "friend");
    private static final Set<String> HAILING =
            Set.of("hey", "hi", "oh", "yeah", "well", "alright", "g'day", "gday", "ok", "ah", "morning", "sorry");
    /** With these something new begins behind a friend's name, although no comma parts them. */
    private static final Set<String> BEGINNING = Set.of(
            "i",
            "we",
            "it",
            "the",
            "my",
            "our",
            "this",
            "today",
            "yesterday",
            "just",
            "finally",
            "there",
            "they",
            "that",
            "what",
            "no",
            "last",
            "so",
            "some",
            "all",
            "these",
            "those");

    private Addressed() {}

    static boolean is(Passage passage, int from, int to, int words) {
        boolean hailed = from > 0 && HAILING.contains(passage.word(from - 1));
        boolean opens = from == 0 || passage.tokens().get(from - 1).mark();
        boolean friend = FRIENDS.contains(passage.word(from)) && BEGINNING.contains(passage.word(to));
        return words == 1 && (opens && Set.of(",", "!").contains(passage.word(to)) || (opens || hailed) && friend);
    }
}
