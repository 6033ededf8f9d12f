package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Few words that ask of the sentence before: "Heaps of green ones left. Any use?", "He says let them grow to ten inches. Is he right?" */
final class PointsBack {
    /** More words than these name what they ask of. */
    private static final int FEW = 7;

    private static final Set<Question> OPEN =
            Set.of(Question.OTHER, Question.STATUS, Question.READY, Question.HOW_TO, Question.TO_DO, Question.SAFE);
    private static final String OVERGROWN = "overgrown";
    private static final String EATING = "eating";

    /** "They say it is too early to sow. True?" asks nothing but whether it is so. */
    private static final Set<String> WHETHER = Set.of(
            "true",
            "right",
            "correct",
            "real",
            "is",
            "that",
            "it",
            "so",
            "this",
            "he",
            "she",
            "they",
            "are",
            "or",
            "not",
            "bs",
            "rubbish",
            "nonsense",
            "myth",
            "a",
            "false",
            "really",
            "there",
            "any",
            "truth",
            "in");

    private static final Set<String> TRUE = Set.of("true", "right", "correct", "real", "truth", "myth", "really");

    private static final Map<String, Question> STEPS =
            Map.of("planting-out", Question.WHEN_PLANT_OUT, "sowing", Question.WHEN_SOW);
    private static final Set<String> TIMES =
            Set.of("before", "until", "till", "til", "after", "by", "early", "soon", "late", "wait");

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
        Passage joined = joined(passage, before[0], sentence[0]);
        int[] both = {before[0], sentence[1]};
        List<Inquiry> meant = inquiries.all(joined, both, begins);
        boolean ofSize = own.get(0).question() != Question.SAFE
                || OVERGROWN.equals(meant.get(0).topic()) && sized(joined, both);
        if (meant.size() == 1 && namesMatter(meant.get(0)) && ofSize) {
            return meant;
        }
        return whether(passage, sentence) ? hearsay(own, joined, both) : own;
    }

    /** "The size of my arm. Edible?" */
    private static boolean sized(Passage passage, int[] both) {
        return IntStream.range(both[0], both[1])
                .anyMatch(at -> Set.of("size", "big", "massive", "huge", "enormous", "giant")
                        .contains(passage.word(at)));
    }

    /** What is told before the asking, asked as it stands. */
    private List<Inquiry> hearsay(List<Inquiry> own, Passage joined, int[] both) {
        List<Inquiry> told = inquiries.all(joined, both, both[0]).stream()
                .map(one -> timed(joined, both) ? when(one) : one)
                .toList();
        boolean known = told.stream().noneMatch(one -> one.question() == Question.OTHER && one.topic() == null);
        return known ? told : own;
    }

    /** "Never plant them before Cup Day" tells when, not how. */
    private static Inquiry when(Inquiry inquiry) {
        Question when = inquiry.question() == Question.HOW_TO ? STEPS.get(String.valueOf(inquiry.topic())) : null;
        return when == null ? inquiry : inquiry.asking(when).withTopic(null);
    }

    private static boolean timed(Passage passage, int[] both) {
        return IntStream.range(both[0], both[1]).anyMatch(at -> TIMES.contains(passage.word(at)));
    }

    private static boolean whether(Passage passage, int[] sentence) {
        return IntStream.range(sentence[0], sentence[1]).anyMatch(at -> TRUE.contains(passage.word(at)))
                && IntStream.range(sentence[0], sentence[1])
                        .allMatch(at -> passage.tokens().get(at).mark() || WHETHER.contains(passage.word(at)));
    }

    /** The message with the sentences from one to another joined, since a phrase ends with its sentence. */
    private static Passage joined(Passage passage, int from, int to) {
        List<Token> tokens = new ArrayList<>(passage.tokens());
        for (int at = from; at < to; at++) {
            if (tokens.get(at).endsSentence()) {
                tokens.set(at, tokens.get(at).as(","));
            }
        }
        return passage.withTokens(tokens);
    }

    private boolean pointsBack(List<Inquiry> own, Passage passage, int[] sentence) {
        long words = passage.tokens().subList(sentence[0], sentence[1]).stream()
                .filter(token -> !token.mark())
                .count();
        return own.size() == 1
                && words <= FEW
                && OPEN.contains(own.get(0).question())
                && (own.get(0).question() != Question.SAFE
                        || EATING.equals(own.get(0).topic()))
                && !namesMatter(own.get(0))
                && !OffTopic.TOPIC.equals(own.get(0).topic())
                && Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty();
    }

    private boolean namesMatter(Inquiry inquiry) {
        return matters.known(inquiry.topic())
                && !MattersAsked.SAYS_LITTLE.contains(inquiry.topic())
                && inquiry.question() != Question.WHY;
    }

    /** "3 lb 9 oz." between what is told and what is asked of it. */
    static boolean weighsOnly(Passage passage, int[] sentence) {
        return IntStream.range(sentence[0], sentence[1])
                .allMatch(at -> passage.tokens().get(at).mark()
                        || passage.quantities().stream().anyMatch(amount -> amount.covers(at))
                        || passage.numbers().stream().anyMatch(number -> number.covers(at)));
    }
}
