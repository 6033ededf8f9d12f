package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.SettingChange;
import bothy.reading.said.Passage;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** What is asked beside a journey that is told: "going to Wales for nine days, nobody to water. what do i do". */
final class AwayAsked {
    private static final String BEFORE_GOING = "before-going-away";
    private static final String FOR_THE_HELPER = "for-the-helper";

    /** Whoever asks for the jobs gets the list, away or not. */
    private static final Set<Question> OPEN =
            Set.of(Question.OTHER, Question.HOW_TO, Question.HOW_MUCH_WATER, Question.WHEN_WATER);
    /** What is asked of the plants in general, or of their water. */
    private static final Set<String> PLAIN_TOPICS = Set.of("normal", "remedy", "recovery", "watering", "protecting");

    private static final Set<String> HELPERS = Set.of(
            "neighbour",
            "neighbours",
            "neighbor",
            "neighbors",
            "friend",
            "mate",
            "sitter",
            "son",
            "daughter",
            "sister",
            "brother",
            "mum",
            "mom",
            "dad",
            "nan",
            "grandad",
            "wife",
            "husband",
            "partner",
            "him",
            "her",
            "he",
            "she",
            "somebody",
            "someone");
    private static final Set<String> NOBODY = Set.of("no", "nobody", "without", "none");

    private AwayAsked() {}

    /** The question, about what is done before going, or by whoever helps, where a journey is told and nothing else is asked. */
    static Inquiry of(Passage passage, List<SettingChange> told, Inquiry inquiry) {
        if (FOR_THE_HELPER.equals(inquiry.topic())) {
            return inquiry.ofCrop(null).about(List.of()); // A helper waters all there is.
        }
        LocalDate today = passage.situation().today();
        boolean away = told.stream()
                .anyMatch(one -> one.setting().equals("awayUntil")
                        && LocalDate.parse(one.value()).isAfter(today));
        boolean open = OPEN.contains(inquiry.question())
                && (inquiry.topic() == null || PLAIN_TOPICS.contains(inquiry.topic()));
        boolean named = passage.crops().stream().anyMatch(said -> !said.thing());
        if (!away || !open || named) {
            return inquiry;
        }
        boolean helper = passage.words().stream().anyMatch(HELPERS::contains)
                && passage.words().stream().noneMatch(NOBODY::contains);
        return Inquiry.of(Question.OTHER, null, List.of()).withTopic(helper ? FOR_THE_HELPER : BEFORE_GOING);
    }
}
