package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "How do I keep the onions over winter? In nets or in boxes?": a choice that only narrows down the question before it. */
final class NarrowsDown {
    private static final int LONGEST = 9;
    /** Before one of these a question stands on its own. */
    private static final Set<String> ON_ITS_OWN = Set.of(
            "is", "are", "do", "does", "did", "can", "could", "should", "shall", "will", "would", "may", "what",
            "which", "when", "where", "why", "how", "who", "am", "have", "has");

    private NarrowsDown() {}

    static boolean only(List<Inquiry> before, List<Inquiry> own, Passage passage, int[] sentence) {
        Inquiry asked = own.size() == 1 ? own.get(0) : null;
        return !before.isEmpty()
                && asked != null
                && asked.question() == Question.OTHER
                && asked.topic() == null
                && sentence[1] - sentence[0] <= LONGEST
                && IntStream.range(sentence[0] + 1, sentence[1])
                        .anyMatch(at -> passage.word(at).equals("or"))
                && IntStream.range(sentence[0], sentence[1]).noneMatch(at -> ON_ITS_OWN.contains(passage.word(at)));
    }
}
