package bothy.reading;

import bothy.almanac.Words;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tells of which words of the craft the meaning is asked: "what is pricking out", "it says F1, what does that mean". */
final class MeaningsAsked {
    private static final String FILE = "meanings";
    static final String TOPIC = "meaning-";

    private final PhraseBook<String> terms = new PhraseBook<>();
    private final PhraseBook<String> asked;

    MeaningsAsked(Words words) {
        PhraseFile plain = new PhraseFile(words, FILE, Map.of());
        List<String> spellings = new ArrayList<>();
        words.names(FILE, "/terms").forEach(term -> {
            plain.into(terms, "/terms/" + term, term);
            spellings.addAll(words.list(FILE, "/terms/" + term));
        });
        asked = new PhraseFile(words, FILE, Map.of("term", spellings)).book("/asked", TOPIC);
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(terms.vocabulary());
        all.addAll(asked.vocabulary());
        return all;
    }

    /** A topic for each word asked about, in the order in which they stand; none where no meaning is asked. */
    List<String> in(Passage passage, int[] sentence) {
        return asked.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .flatMap(question -> terms.find(passage.tokens(), question.start(), question.end(), passage).stream())
                .map(found -> TOPIC + found.meaning())
                .distinct()
                .toList();
    }
}
