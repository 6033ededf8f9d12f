package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.Map;
import java.util.Set;

/** "What do I feed them, and how often?": a question that names nothing of its own goes on from the one before it. */
final class GoesOnAsking {
    private static final Set<Question> OPEN = Set.of(Question.OTHER, Question.HOW_TO);
    private static final Set<String> OFTEN = Set.of("often", "frequently", "regularly", "soon", "early");
    private static final Set<String> AMOUNT = Set.of("much", "many", "strong", "big");

    private static final Map<Question, Question> WHEN = Map.of(
            Question.FEED_WHAT, Question.FEED_WHEN,
            Question.FEED_DOSE, Question.FEED_WHEN,
            Question.HOW_MUCH_WATER, Question.WHEN_WATER,
            Question.HOW_HARVEST, Question.READY,
            Question.SPACING, Question.WHEN_PLANT_OUT);
    private static final Map<Question, Question> HOW_MUCH = Map.of(
            Question.FEED_WHAT, Question.FEED_DOSE,
            Question.FEED_WHEN, Question.FEED_DOSE,
            Question.WHEN_WATER, Question.HOW_MUCH_WATER);
    /** "How much garlic did I get, and how much corn?" */
    private static final String FROM_DIARY = "diary-picked";

    private static final Set<String> OF_SOWING = Set.of("sowing", "sowing-depth", "depth");

    /** "How often", "when": so many words at most name nothing. */
    private static final int BARE = 2;

    /** "How often do I feed, and what with?" */
    private static final Map<Question, Question> WITH_WHAT =
            Map.of(Question.FEED_WHEN, Question.FEED_WHAT, Question.FEED_DOSE, Question.FEED_WHAT);

    private static final Map<Question, Question> HOW = Map.of(Question.READY, Question.HOW_HARVEST);

    private GoesOnAsking() {}

    /** The question as one about the matter of the one before; as it was when it asks of something known or goes on from nothing. */
    static Inquiry from(Inquiry before, Inquiry own, Passage passage, int begins) {
        if (!OPEN.contains(own.question()) || own.topic() != null) {
            return own;
        }
        if (FROM_DIARY.equals(before.topic()) && own.crop() != null) {
            return own.asking(before.question()).withTopic(FROM_DIARY);
        }
        Question onward = by(passage, begins).get(before.question());
        return onward == null ? own : own.asking(onward);
    }

    /** "How often and how much water?": nothing but its question word, so it asks about the matter of the one after it. */
    static Inquiry before(Inquiry after, Inquiry own, Passage passage, int begins, int end) {
        if (!OPEN.contains(own.question()) || own.topic() != null || end - begins > BARE) {
            return own;
        }
        if (passage.word(begins).equals("when") && OF_SOWING.contains(String.valueOf(after.topic()))) {
            return Inquiry.of(Question.WHEN_SOW, after.crop(), after.plantings());
        }
        Question back = by(passage, begins).get(after.question());
        return back == null ? own : after.asking(back);
    }

    private static Map<Question, Question> by(Passage passage, int begins) {
        String next = passage.word(begins + 1);
        boolean how = passage.word(begins).equals("how");
        if (passage.word(begins).equals("when") || how && OFTEN.contains(next)) {
            return WHEN;
        }
        if (how && AMOUNT.contains(next)) {
            return HOW_MUCH;
        }
        boolean with = next.equals("with") && passage.word(begins).equals("what")
                || next.equals("what") && passage.word(begins).equals("with");
        return how ? HOW : with ? WITH_WHAT : Map.of();
    }
}
