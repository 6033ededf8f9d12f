package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.Set;
import java.util.stream.IntStream;

/** "Are they worth keeping?" asks whether that is the end of them, not how they are stored. */
final class WorthKeeping {
    private static final String NORMAL = "normal";
    private static final Set<String> ABOUT_THEM = Set.of("keeping", "saving", "salvaging", "rescuing", "having");

    private WorthKeeping() {}

    static Inquiry of(Passage passage, Inquiry inquiry) {
        boolean worth = inquiry.question() == Question.HOW_STORE
                && IntStream.range(1, passage.size())
                        .anyMatch(at -> ABOUT_THEM.contains(passage.word(at))
                                && passage.word(at - 1).equals("worth"));
        return worth
                ? Inquiry.of(Question.OTHER, inquiry.crop(), inquiry.plantings())
                        .withTopic(NORMAL)
                : inquiry;
    }
}
