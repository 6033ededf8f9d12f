package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.PhraseBook.Found;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Tells signs that were seen from signs that are only asked about, and doings that are only named: "can I eat green potatoes?" */
final class InQuestion {
    private static final Set<Question> OF_WATER = EnumSet.of(
            Question.WHEN_WATER,
            Question.HOW_MUCH_WATER,
            Question.WHEN_STOP_WATERING,
            Question.READY,
            Question.HOW_STORE,
            Question.WHEN_PLANT_OUT,
            Question.WHEN_SOW);
    private static final Set<String> OWN =
            Set.of("my", "our", "the", "these", "those", "this", "mine", "they", "have", "got", "them", "it");
    private static final Set<String> KEPT_FROM = Set.of("from", "stop", "prevent");
    private static final Set<String> OF_SOIL = Set.of("overwatering", "underwatering", "wilting");

    private static final Set<String> NO_FAULTS = Set.of("scapes", "canning", "will-split", "will-bolt", "blight-risk");

    /** What is told with these is the matter itself: long stems with plantlets are runners, no thin seedlings. */
    private static final Set<String> THE_MATTER_ITSELF = Set.of(
            "runners",
            "flowers-off",
            "green-at-the-end",
            "frost-sweetens",
            "curd-leaves",
            "cut-again",
            "past-its-best",
            "store-place",
            "two-needed",
            "too-hot-to-sow");

    private InQuestion() {}

    static List<Found<String>> seen(Passage passage, List<Found<String>> troubles, Inquiry inquiry, int begins) {
        if (THE_MATTER_ITSELF.contains(String.valueOf(inquiry.topic()))) {
            return List.of();
        }
        return troubles.stream()
                .filter(trouble -> trouble.start() < begins || !asked(passage, trouble, inquiry, begins))
                .toList();
    }

    /** "Storing spuds what temp": a doing named at the head of a question, neither counted nor dated, is what is asked of. */
    static boolean onlyNamed(Passage passage, int[] sentence, Clause clause) {
        return clause.action().form() == Form.ING
                && clause.action().start() == sentence[0]
                && Passage.within(passage.days(), sentence[0], sentence[1]).isEmpty()
                && passage.counts(sentence[0], clause.to()).isEmpty();
    }

    private static boolean asked(Passage passage, Found<String> trouble, Inquiry inquiry, int begins) {
        if (OF_SOIL.contains(trouble.meaning()) && OF_WATER.contains(inquiry.question())) {
            return true;
        }
        if (KEPT_FROM.contains(passage.word(trouble.start() - 1))) {
            return true; // "How do I keep my cat from eating my plants?"
        }
        if ("hole".equals(passage.word(trouble.start())) && "planting-out".equals(inquiry.topic())) {
            return true; // "How big a hole do the pumpkins want?" asks of no hole in a leaf.
        }
        if (NO_FAULTS.contains(String.valueOf(inquiry.topic()))) {
            return true; // "The curly flower thing" is no misshapen fruit, "beans without a canner" no want of beans,
            // and what may come has not come.
        }
        if (inquiry.question() == Question.SAFE && supposed(passage, begins, trouble.start())) {
            return true;
        }
        boolean meaning = inquiry.topic() != null && inquiry.topic().startsWith(MeaningsAsked.TOPIC);
        boolean general = inquiry.question() == Question.SAFE
                || inquiry.question() == Question.HOW_TO
                || inquiry.question() == Question.COMPARE
                || meaning;
        // "Is it safe to eat green ones": that "it" is nothing of the grower's.
        int from = passage.word(begins + 1).equals("it") ? begins + 2 : begins;
        return general && !says(passage, from, trouble.end());
    }

    /** "Would the spuds be safe to eat if the tops got blight": nothing of it has been seen. */
    private static boolean supposed(Passage passage, int begins, int trouble) {
        boolean would = false;
        boolean provided = false;
        for (int at = begins; at <= trouble; at++) {
            would |= Set.of("would", "could").contains(passage.word(at));
            provided |= would && passage.word(at).equals("if");
        }
        return provided;
    }

    private static boolean says(Passage passage, int from, int to) {
        for (int at = from; at < to; at++) {
            if (OWN.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
