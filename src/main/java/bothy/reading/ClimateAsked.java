package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Questions about what is usual at the grower's place: frosts, rain, warmth. Asked of no crop. */
final class ClimateAsked {
    private static final String FILE = "climate";
    /** What the other phrases may have taken such a question for. */
    private static final Set<Question> OPEN = Set.of(
            Question.OTHER,
            Question.HOW_TO,
            Question.STATUS,
            Question.SAFE,
            Question.HOW_MANY_FIT,
            Question.HOW_MUCH_WATER,
            Question.WHAT_TO_GROW,
            Question.COMPARE);

    private static final int SHORTEST_MONTH = 3;
    /** Asked of a day, not of its month. */
    private static final String FROST_ODDS = "frost-odds";

    private final PhraseBook<String> topics = new PhraseBook<>();

    ClimateAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.names(FILE, "/asked").forEach(topic -> file.into(topics, "/asked/" + topic, topic));
    }

    Set<String> vocabulary() {
        return topics.vocabulary();
    }

    /** The question with its topic, as {@link Question#OTHER}; as it was when it asks of something else. */
    Inquiry in(Inquiry inquiry, Passage passage, int from, int to) {
        boolean another = inquiry.question() == Question.OTHER && inquiry.topic() != null;
        if (!OPEN.contains(inquiry.question()) || inquiry.crop() != null || another) {
            return inquiry;
        }
        return topics.find(passage.tokens(), from, to, passage).stream()
                .max(Comparator.comparingInt(found -> found.place().words().size()))
                .map(found -> about(inquiry.asking(Question.OTHER).withTopic(found.meaning()), passage, from, to))
                .orElse(inquiry);
    }

    /** A month named is asked about as such: any day in it will do. */
    private static Inquiry about(Inquiry inquiry, Passage passage, int from, int to) {
        if (inquiry.on() != null && FROST_ODDS.equals(inquiry.topic())) {
            return inquiry;
        }
        for (int at = from; at < to; at++) {
            String word = passage.word(at);
            for (Month month : Month.values()) {
                String name = month.getDisplayName(TextStyle.FULL, Locale.UK).toLowerCase(Locale.ROOT);
                boolean named = word.equals(name) || word.length() >= SHORTEST_MONTH && name.startsWith(word);
                if (named && !(month == Month.MAY && passage.word(at + 1).matches("i|we|it"))) {
                    return inquiry.on(
                            passage.situation().today().withDayOfMonth(1).with(month));
                }
            }
        }
        return inquiry;
    }
}
