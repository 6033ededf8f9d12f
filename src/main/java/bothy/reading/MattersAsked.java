package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.Comparator;
import java.util.Map;
import java.util.Set;

/** Questions about plants that are none of the usual kinds, by their matter: how warm they want it, what to do otherwise next year. */
final class MattersAsked {
    private static final String FILE = "matters";

    /** What the other phrases may have taken such a question for. */
    private static final Set<Question> OPEN = Set.of(
            Question.OTHER,
            Question.HOW_TO,
            Question.STATUS,
            Question.COMPARE,
            Question.WHAT_TO_GROW,
            Question.TO_DO,
            Question.NEXT,
            Question.WHY);

    private final PhraseBook<String> matters = new PhraseBook<>();
    /** Matters of how a thing is done. */
    private final Set<String> ways;

    MattersAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.names(FILE, "/asked").forEach(matter -> file.into(matters, "/asked/" + matter, matter));
        words.names(FILE, "/how-to").forEach(matter -> file.into(matters, "/how-to/" + matter, matter));
        ways = Set.copyOf(words.names(FILE, "/how-to"));
    }

    Set<String> vocabulary() {
        return matters.vocabulary();
    }

    /** The question with its matter as topic, as {@link Question#OTHER} or {@link Question#HOW_TO}; as it was when it asks of something else. */
    Inquiry in(Inquiry inquiry, Passage passage, int from, int to) {
        boolean settled = inquiry.question() == Question.OTHER && inquiry.topic() != null;
        if (settled || !OPEN.contains(inquiry.question())) {
            return inquiry;
        }
        return matters.find(passage.tokens(), from, to, passage).stream()
                .max(Comparator.comparingInt(found -> found.place().words().size()))
                .map(found -> inquiry.asking(ways.contains(found.meaning()) ? Question.HOW_TO : Question.OTHER)
                        .withTopic(found.meaning()))
                .orElse(inquiry);
    }
}
