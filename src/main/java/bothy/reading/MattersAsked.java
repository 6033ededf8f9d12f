package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Questions about plants that are none of the usual kinds, by their matter: how warm they want it, what to do otherwise next year. */
final class MattersAsked {
    /** What is asked of anything: a matter told beside them says more. */
    static final Set<String> SAYS_LITTLE = Set.of("normal", "remedy", "recovery");

    private static final String FILE = "matters";

    /** What the other phrases may have taken such a question for. */
    private static final Set<Question> OPEN = Set.of(
            Question.OTHER,
            Question.HOW_TO,
            Question.STATUS,
            Question.COMPARE,
            Question.WHAT_TO_GROW,
            Question.TO_DO,
            Question.NEXT);

    /** Dangers stand whatever kind of question their other words make of them. */
    private static final String SAFE = "/safe";

    private static final Map<String, Question> SECTIONS = Map.of(
            "/asked",
            Question.OTHER,
            "/how-to",
            Question.HOW_TO,
            "/when-plant-out",
            Question.WHEN_PLANT_OUT,
            "/when-sow",
            Question.WHEN_SOW,
            "/status",
            Question.STATUS,
            SAFE,
            Question.SAFE);

    /** What was counted or weighed is no guess at what will be. */
    static final String PICKED = "diary-picked";
    /** Of a yield counted rather than weighed. */
    private static final String FRUIT = "fruit-a-plant";

    /** "How many of the seeds should have come up" asks for seedlings, not for seeds to sow. */
    private static final String UP_BY_NOW = "up-by-now";

    private static final String YIELD = "yield";

    private static final String NEXT_YEAR = "next-year";
    private static final String ROTATION_PLAN = "rotation-plan";

    private static final String TOPICS = "/topics";

    private final PhraseBook<Matter> matters = new PhraseBook<>();
    private final Set<String> names = new HashSet<>();
    private final Set<String> strong;
    /** Faults of a crop that are asked about with why: the reason of what was said is not meant. */
    private final Set<String> causes;

    /** @param question what it makes of a question, {@code null} where a question keeps its kind */
    private record Matter(String name, Question question) {}

    MattersAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        SECTIONS.forEach((section, question) -> words.names(FILE, section)
                .forEach(name -> file.into(matters, section + "/" + name, new Matter(name, question))));
        SECTIONS.keySet().forEach(section -> names.addAll(words.names(FILE, section)));
        names.addAll(words.names(FILE, TOPICS));
        words.names(FILE, TOPICS).forEach(name -> file.into(matters, TOPICS + "/" + name, new Matter(name, null)));
        strong = Stream.concat(words.list(FILE, "/strong").stream(), words.names(FILE, SAFE).stream())
                .collect(Collectors.toUnmodifiableSet());
        causes = Set.copyOf(words.list(FILE, "/causes"));
    }

    /** Whether a topic is a matter of the words, not a step or a danger. */
    boolean known(String topic) {
        return topic != null && names.contains(topic);
    }

    Set<String> vocabulary() {
        return matters.vocabulary();
    }

    /** The question with its matter as topic and of the matter's kind; as it was when it asks of something else. */
    Inquiry in(Inquiry inquiry, Passage passage, int[] sentence, int begins) {
        boolean counted = inquiry.question() == Question.HOW_MANY_FIT;
        if (inquiry.question() == Question.OTHER && inquiry.topic() != null) {
            return inquiry;
        }
        if (counted && inquiry.topic() != null) {
            // "How much did I get" is counted from the diary, and fruit by the plant, whatever the sheet expects by
            // weight.
            boolean ofYield = YIELD.equals(inquiry.topic());
            return matters.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                    .filter(found -> found.meaning().name().equals(PICKED)
                            || found.meaning().name().equals(UP_BY_NOW)
                            || ofYield && found.meaning().name().equals(FRUIT))
                    .findFirst()
                    .map(found -> of(inquiry, found.meaning()))
                    .orElse(inquiry);
        }
        boolean open = OPEN.contains(inquiry.question());
        boolean why = inquiry.question() == Question.WHY;
        // "It has gone massive, can I still eat it": a matter may be told before it is asked of.
        return matters.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .filter(found -> !passage.word(found.start() - 1).equals("without")) // "Without pulling the plant up".
                // "Is it too late to sow anything" asks of no plant whether it is normal.
                .filter(found -> inquiry.question() != Question.WHAT_TO_GROW
                        || !SAYS_LITTLE.contains(found.meaning().name()))
                .filter(found -> why
                        ? causes.contains(found.meaning().name())
                        : counted && inquiry.topic() != null
                                ? PICKED.equals(found.meaning().name())
                                : stands(found.meaning()) || open && found.end() > begins)
                .max(Comparator.comparing((Found<Matter> found) ->
                                !SAYS_LITTLE.contains(found.meaning().name()))
                        .thenComparing(found -> found.place().words().cardinality()))
                .map(found -> of(inquiry, found.meaning()))
                .orElse(inquiry);
    }

    /** "What should I do differently, and the rotation for four beds": of a year looked back on the next one's plan may be asked too. */
    List<Inquiry> withThePlan(List<Inquiry> asked, Passage passage, int[] sentence) {
        boolean back = asked.stream().anyMatch(one -> NEXT_YEAR.equals(one.topic()));
        boolean plan = back
                && matters.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                        .anyMatch(found -> ROTATION_PLAN.equals(found.meaning().name()));
        return plan
                ? Stream.concat(
                                asked.stream(),
                                Stream.of(Inquiry.of(Question.OTHER, null, List.of())
                                        .withTopic(ROTATION_PLAN)))
                        .toList()
                : asked;
    }

    private boolean stands(Matter matter) {
        return matter.question() == null || strong.contains(matter.name());
    }

    /** How things stand is no question that a matter could be of. */
    private static Inquiry of(Inquiry inquiry, Matter matter) {
        Question kept = inquiry.question() == Question.STATUS ? Question.OTHER : inquiry.question();
        return inquiry.asking(matter.question() == null ? kept : matter.question())
                .withTopic(matter.name());
    }
}
