package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.Set;

/** "Where do I start?" of somebody who names no crop and grows none asks what to begin with. */
final class StartsOut {
    private static final Set<String> STARTS = Set.of("start", "begin", "started", "starting", "beginning");
    private static final Set<Question> OPEN = Set.of(Question.WHEN_SOW, Question.HOW_TO, Question.OTHER);

    /** More words name what is started. */
    private static final int FEW_WORDS = 6;

    private StartsOut() {}

    static Inquiry asked(Inquiry inquiry, Passage passage, int begins, int end) {
        boolean starts = false;
        for (int at = begins; at < end; at++) {
            starts |= STARTS.contains(passage.word(at));
        }
        boolean nothingNamed = inquiry.crop() == null
                && inquiry.plantings().isEmpty()
                && passage.crops().isEmpty()
                && passage.situation().crops().isEmpty()
                && passage.situation().plantings().stream().noneMatch(planting -> !planting.over());
        boolean where = Set.of("where", "how").contains(passage.word(begins));
        return starts && where && nothingNamed && OPEN.contains(inquiry.question()) && end - begins <= FEW_WORDS
                ? Inquiry.of(Question.WHAT_TO_GROW, null, inquiry.plantings())
                : inquiry;
    }
}
