package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "Did you see the match?", "do you know when the fair starts?": asked of the one who answers, and of nothing in a garden. */
final class OffTopic {
    static final String TOPIC = "off-topic";

    private static final Set<Question> OPEN = Set.of(Question.OTHER, Question.STATUS);
    private static final Set<String> ASKED = Set.of("you", "u", "ya", "ye");
    private static final Set<String> DOING = Set.of("do", "did", "have", "are", "can", "could", "would", "will");
    /** What points to plants or to the plot without naming them, or asks of what the diary holds. */
    private static final Set<String> POINTING = Set.of(
            "they",
            "them",
            "it",
            "these",
            "those",
            "this",
            "that",
            "i",
            "we",
            "my",
            "our",
            "mine",
            "me",
            "us",
            "photo",
            "photos",
            "picture",
            "pictures",
            "message",
            "messages",
            "diary",
            "remember",
            "forget",
            "help",
            "human",
            "bot",
            "robot",
            "real",
            "weather",
            "forecast",
            "advice",
            "tip",
            "tips",
            "idea",
            "ideas",
            "suggestion",
            "suggestions",
            "thoughts",
            "opinion",
            "recommend",
            "anything",
            "something",
            "question",
            "questions");

    private OffTopic() {}

    static List<Inquiry> each(List<Inquiry> all, KindOf kinds, Passage passage, int[] sentence, int begins) {
        boolean garden = kinds.onTopic(passage, begins, sentence[1]);
        return all.stream()
                .map(one -> of(passage, sentence, begins, garden, one))
                .toList();
    }

    /** @param garden whether the sentence names anything of a garden */
    private static Inquiry of(Passage passage, int[] sentence, int begins, boolean garden, Inquiry inquiry) {
        boolean open = OPEN.contains(inquiry.question())
                && inquiry.topic() == null
                && Passage.within(passage.crops(), begins, sentence[1]).isEmpty();
        boolean asked = IntStream.range(begins, sentence[1] - 1)
                .anyMatch(at -> DOING.contains(passage.word(at)) && ASKED.contains(passage.word(at + 1)));
        boolean points = IntStream.range(begins, sentence[1]).anyMatch(at -> POINTING.contains(passage.word(at)));
        return open && asked && !points && !garden
                ? Inquiry.of(Question.OTHER, null, List.of()).withTopic(TOPIC)
                : inquiry;
    }
}
