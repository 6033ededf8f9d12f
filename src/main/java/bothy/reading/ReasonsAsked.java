package bothy.reading;

import bothy.almanac.Words;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells for which doing a reason is asked: "why does corn go in a block", "what is the point of chitting". */
final class ReasonsAsked {
    private static final String FILE = "reasons";
    private static final String TOPIC = "reason-";
    /** With one of these and no crop a question points back to what was said before. */
    private static final Set<String> POINTING =
            Set.of("that", "this", "it", "them", "they", "then", "so", "those", "these", "now", "yet", "not");

    private final PhraseBook<String> leads;
    private final PhraseBook<String> doings = new PhraseBook<>();

    ReasonsAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        leads = file.book("/asked", TOPIC);
        words.names(FILE, "/doings").forEach(doing -> file.into(doings, "/doings/" + doing, doing));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(leads.vocabulary());
        all.addAll(doings.vocabulary());
        return all;
    }

    /** The topic of the doing that fits best, empty where no reason is asked or none is known for it. */
    Optional<String> in(Passage passage, int[] sentence) {
        return leads.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .findFirst()
                .flatMap(lead -> doings.all(passage.tokens(), lead.start(), sentence[1], passage).stream()
                        .max(Comparator.comparingInt(
                                found -> found.place().words().cardinality())))
                .map(found -> TOPIC + found.meaning());
    }

    static boolean points(Passage passage, int from, int to) {
        return says(passage, from, to, POINTING);
    }

    /** "Why do you say so", "why would you tell me to". */
    static boolean ofWhatWasSaid(Passage passage, int from, int to) {
        return says(passage, from, to, Set.of("you"))
                && says(
                        passage,
                        from,
                        to,
                        Set.of(
                                "say",
                                "said",
                                "saying",
                                "tell",
                                "told",
                                "think",
                                "recommend",
                                "advise",
                                "suggest",
                                "want"));
    }

    private static boolean says(Passage passage, int from, int to, Set<String> words) {
        for (int at = from; at < to; at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
