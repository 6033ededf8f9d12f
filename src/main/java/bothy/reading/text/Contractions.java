package bothy.reading.text;

import java.util.List;
import java.util.Set;

/** Writes "haven't" and "what's" out, so that phrases need only the full form. */
final class Contractions {
    private static final Set<String> BEFORE_IS = Set.of(
            "what",
            "how",
            "when",
            "where",
            "it",
            "that",
            "there",
            "who",
            "here",
            "why",
            "he",
            "she",
            "everything",
            "nothing");

    private Contractions() {}

    static List<String> apart(String word) {
        int mark = word.lastIndexOf('\'');
        if (mark <= 0) {
            return List.of(word);
        }
        String start = word.substring(0, mark);
        return switch (word.substring(mark + 1)) {
            case "t" -> negated(word);
            case "re" -> List.of(start, "are");
            case "ve" -> List.of(start, "have");
            case "ll" -> List.of(start, "will");
            case "m" -> List.of(start, "am");
            case "d" -> List.of(start, "had");
            case "s" ->
                BEFORE_IS.contains(start)
                        ? List.of(start, "is")
                        : start.equals("let") ? List.of("let", "us") : List.of(start, "'s");
            default -> List.of(word);
        };
    }

    private static List<String> negated(String word) {
        return switch (word) {
            case "can't" -> List.of("can", "not");
            case "won't" -> List.of("will", "not");
            case "ain't" -> List.of("is", "not");
            case "shan't" -> List.of("shall", "not");
            default -> word.endsWith("n't") ? List.of(word.substring(0, word.length() - 3), "not") : List.of(word);
        };
    }
}
