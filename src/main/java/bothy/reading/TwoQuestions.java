package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;

/** Two questions in one sentence: "What gap should there be, and how much water do they want?" */
final class TwoQuestions {
    private static final Set<String> ASKING = Set.of("how", "what", "when", "why", "which", "where");
    private static final Set<String> INVERTED = Set.of(
            "is", "are", "do", "does", "should", "can", "could", "shall", "will", "would", "must", "am", "may",
            "ought");
    private static final Set<String> SUBJECTS =
            Set.of("i", "we", "it", "they", "you", "the", "this", "that", "these", "those", "there", "my", "our");

    /** Of these two are two questions when they are about different matters: how long it keeps, and how it is frozen. */
    private static final Set<Question> MATTERS = Set.of(Question.HOW_STORE);

    /** Somebody may be hurt where these are left unanswered. */
    private static final Set<String> HURTING = Set.of("canning", "in-oil", "pickling", "insects");

    /** So many words may lead up to the first question word. */
    private static final int LEAD = 4;

    private final Inquiries inquiries;

    TwoQuestions(Inquiries inquiries) {
        this.inquiries = inquiries;
    }

    /** Both, when each by itself asks something known and they differ; else none. */
    List<Inquiry> in(Passage passage, int[] sentence, int begins) {
        boolean inverted = INVERTED.contains(passage.word(begins)) && SUBJECTS.contains(passage.word(begins + 1));
        // "Please advise to what distance they are thinned, and when I may pick."
        boolean led = IntStream.range(begins, Math.min(begins + LEAD, sentence[1]))
                .anyMatch(at -> ASKING.contains(passage.word(at)));
        if (!led && !inverted) {
            return List.of();
        }
        for (int at = begins + 1; at < sentence[1] - 1; at++) {
            if (joins(passage, at)) {
                Inquiry first = inquiries
                        .all(passage, new int[] {sentence[0], at}, begins)
                        .get(0);
                Inquiry second = GoesOnAsking.from(
                        first,
                        inquiries
                                .all(passage, new int[] {at + 1, sentence[1]}, at + 1)
                                .get(0),
                        passage,
                        at + 1);
                first = GoesOnAsking.before(second, first, passage, begins, at);
                boolean known = known(first) && known(second);
                boolean differ = first.question() != second.question()
                        || MATTERS.contains(second.question()) && !Objects.equals(first.topic(), second.topic());
                if (known && differ) {
                    return List.of(first, second);
                }
            }
        }
        return List.of();
    }

    /** "How much is that now, and can I can them in a pot": a matter of the craft is known, whatever kind of question asks of it. */
    private static boolean known(Inquiry inquiry) {
        return inquiry.question() != Question.OTHER || HURTING.contains(String.valueOf(inquiry.topic()));
    }

    private static boolean joins(Passage passage, int at) {
        boolean joint = passage.word(at).equals("and")
                // "When do they go out an how far apart": a slip of the pen.
                || passage.word(at).equals("an")
                || passage.word(at).equals("also")
                || passage.word(at).equals("plus")
                || passage.word(at).equals(",") && !passage.word(at + 1).equals("and");
        String next = passage.word(at + 1);
        boolean withWhat = next.equals("with") && passage.word(at + 2).equals("what");
        return joint
                && (withWhat
                        || ASKING.contains(next)
                        || INVERTED.contains(next) && SUBJECTS.contains(passage.word(at + 2)));
    }
}
