package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** Few words that ask of the sentence before: "Heaps of green ones left. Any use?", "He says let them grow to ten inches. Is he right?" */
final class PointsBack {
    /** More words than these name what they ask of. */
    private static final int FEW = 7;

    private static final Set<Question> OPEN =
            Set.of(Question.OTHER, Question.STATUS, Question.READY, Question.HOW_TO, Question.TO_DO);

    private final Inquiries inquiries;
    private final MattersAsked matters;

    PointsBack(Inquiries inquiries, MattersAsked matters) {
        this.inquiries = inquiries;
        this.matters = matters;
    }

    /** The question with the matter that it and the sentence before name together; as it was where they name none. */
    List<Inquiry> with(int[] before, List<Inquiry> own, Passage passage, int[] sentence, int begins) {
        if (before == null || !pointsBack(own, passage, sentence)) {
            return own;
        }
        List<Inquiry> both = inquiries.all(passage, new int[] {before[0], sentence[1]}, begins);
        return both.size() == 1 && namesMatter(both.get(0)) ? both : own;
    }

    private boolean pointsBack(List<Inquiry> own, Passage passage, int[] sentence) {
        long words = passage.tokens().subList(sentence[0], sentence[1]).stream()
                .filter(token -> !token.mark())
                .count();
        return own.size() == 1
                && words <= FEW
                && OPEN.contains(own.get(0).question())
                && !namesMatter(own.get(0))
                && Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty();
    }

    private boolean namesMatter(Inquiry inquiry) {
        return matters.known(inquiry.topic())
                && !MattersAsked.SAYS_LITTLE.contains(inquiry.topic())
                && inquiry.question() != Question.WHY;
    }
}
