package bothy.reading;

import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** Verbs before their subject that ask elsewhere and only tell where they stand: "so am I", "my sister will do the watering". */
final class SoundsAsking {
    /** "Will do the rounds", "we do the watering": after these "do" is a verb like any other. */
    private static final Set<String> BEFORE_A_PLAIN_DO = Set.of(
            "will",
            "shall",
            "can",
            "cannot",
            "could",
            "would",
            "should",
            "must",
            "might",
            "may",
            "not",
            "to",
            "gonna",
            "let",
            "lets",
            "i",
            "we",
            "you",
            "they",
            "who",
            "always",
            "usually",
            "normally",
            "mostly",
            "just",
            "neighbours",
            "neighbors",
            "kids",
            "children");
    /** "My sister does the watering": of the household and beyond. */
    private static final Set<String> BEFORE_A_PLAIN_DOES = Set.of(
            "he",
            "she",
            "who",
            "someone",
            "somebody",
            "everyone",
            "nobody",
            "sister",
            "brother",
            "wife",
            "husband",
            "partner",
            "half",
            "missus",
            "mum",
            "mom",
            "mam",
            "dad",
            "son",
            "daughter",
            "lad",
            "girl",
            "boy",
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
            "niece");
    /** What "do" may be done to; "do I" and "do they" ask wherever they stand. */
    private static final Set<String> DONE_TO = Set.of("it", "the", "my", "our", "these", "those", "them");

    private static final Set<String> LIKEWISE = Set.of("so", "neither", "nor");
    private static final Set<String> VERBS = Set.of(
            "am", "is", "are", "was", "were", "do", "does", "did", "have", "has", "had", "will", "would", "can",
            "could", "should");
    private static final Set<String> PERSONS = Set.of("i", "we", "they", "he", "she", "it", "you");
    private static final Set<String> OF = Set.of("the", "my", "our", "his", "her", "their", "your");
    private static final Set<String> CLOSES = Set.of("", ",", ".", "!", ";", "-", "and", "but", "too", ")");

    private SoundsAsking() {}

    /**
     * Whether the verb at a place only tells.
     *
     * @param marked whether the sentence ends in a question mark: then "do" is a plain verb only where it names what is done
     */
    static boolean only(Passage passage, int verb, boolean marked) {
        return plainDo(passage, verb) && (!marked || namesWhatIsDone(passage, verb + 1)) || likewise(passage, verb);
    }

    private static boolean plainDo(Passage passage, int verb) {
        String before = passage.word(verb - 1);
        return switch (passage.word(verb)) {
            case "do" -> BEFORE_A_PLAIN_DO.contains(before);
            case "does" -> BEFORE_A_PLAIN_DOES.contains(before);
            default -> false;
        };
    }

    private static boolean namesWhatIsDone(Passage passage, int at) {
        return DONE_TO.contains(passage.word(at)) || passage.cropAt(at).isPresent();
    }

    /** "Canola's happy, so am I.": with nothing behind its subject it says the same of another. */
    private static boolean likewise(Passage passage, int verb) {
        if (!LIKEWISE.contains(passage.word(verb - 1)) || !VERBS.contains(passage.word(verb))) {
            return false;
        }
        int subject = verb + 1;
        if (PERSONS.contains(passage.word(subject))) {
            return CLOSES.contains(passage.word(subject + 1));
        }
        int named = OF.contains(passage.word(subject)) ? subject + 1 : subject;
        int behind = passage.cropAt(named).map(CropSaid::end).orElse(named + 1);
        return (named > subject || passage.cropAt(named).isPresent()) && CLOSES.contains(passage.word(behind));
    }
}
