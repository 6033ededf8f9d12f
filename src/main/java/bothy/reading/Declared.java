package bothy.reading;

import bothy.reading.said.Passage;
import java.util.Set;

/** "My sister will do the watering", "we can do potatoes there": a doing behind its subject is told, not asked. */
final class Declared {
    private static final Set<String> BEFORE_DO = Set.of(
            "will",
            "shall",
            "can",
            "could",
            "would",
            "should",
            "must",
            "might",
            "may",
            "to",
            "i",
            "we",
            "they",
            "you",
            "he",
            "she",
            "who",
            "not",
            "always",
            "usually",
            "normally",
            "gonna",
            "let",
            "lets",
            "cannot");
    /** Of the household and beyond: "my sister does the watering". */
    private static final Set<String> PEOPLE = Set.of(
            "sister",
            "brother",
            "wife",
            "husband",
            "partner",
            "mum",
            "mom",
            "mam",
            "dad",
            "son",
            "daughter",
            "neighbour",
            "neighbor",
            "friend",
            "mate",
            "gran",
            "granny",
            "grandad",
            "grandpa",
            "nan",
            "aunt",
            "uncle",
            "cousin",
            "nephew",
            "niece",
            "missus",
            "other",
            "half",
            "lad",
            "girl",
            "boy",
            "he",
            "she",
            "who",
            "someone",
            "somebody",
            "it",
            "that",
            "this",
            "everyone",
            "nobody");

    private Declared() {}

    static boolean does(Passage passage, int[] sentence, int at) {
        String before = at > sentence[0] ? passage.word(at - 1) : "";
        return switch (passage.word(at)) {
            case "do" -> BEFORE_DO.contains(before);
            case "does" -> PEOPLE.contains(before);
            default -> false;
        };
    }
}
