package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Event;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.What;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a message tells of the signs that a crop is ready: "the tops have flopped over, shall I lift them?" */
final class CuesTold {
    private static final String FILE = "cues";
    private static final Set<Question> OF_HARVEST = EnumSet.of(Question.READY, Question.HOW_HARVEST);
    /** How many words before a cue a "not" may stand to take it back. */
    private static final int REACH = 3;

    private final PhraseBook<String> cues = new PhraseBook<>();
    private final Set<String> notYet;
    private final Map<String, Set<String>> noTrouble = new HashMap<>();

    /** "Cauliflower flower coming, size of a lemon": what comes there is the head that is eaten. */
    static boolean curd(Passage passage, Event event) {
        return event.what() == What.FLOWERING
                && "cauliflower".equals(event.crop())
                && passage.words().stream()
                        .anyMatch(word -> Set.of("size", "curd", "coming", "forming", "head", "button", "white")
                                .contains(word));
    }

    CuesTold(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.names(FILE, "/told").forEach(cue -> file.into(cues, "/told/" + cue, cue));
        notYet = Set.copyOf(words.list(FILE, "/not-yet"));
        words.lists(FILE, "/no-trouble").forEach((cue, crops) -> noTrouble.put(cue, Set.copyOf(crops)));
    }

    Set<String> vocabulary() {
        return cues.vocabulary();
    }

    /** The question with the cues that the message tells, wherever in it. */
    Inquiry in(Inquiry inquiry, Passage passage) {
        return inquiry.telling(
                found(passage).stream().map(Found::meaning).distinct().toList());
    }

    private List<Found<String>> found(Passage passage) {
        return cues.all(passage.tokens(), 0, passage.size(), passage).stream()
                .filter(cue -> !takenBack(passage, cue))
                .toList();
    }

    private boolean takenBack(Passage passage, Found<String> cue) {
        for (int at = Math.max(0, cue.start() - REACH); at < cue.end(); at++) {
            if (notYet.contains(passage.word(at)) && !cue.place().words().get(at)) {
                return true;
            }
        }
        return false;
    }

    /** The troubles among those found that are no ripeness. */
    List<Found<String>> noTroubles(Passage passage, Inquiry inquiry, List<Found<String>> troubles) {
        return troubles.stream()
                .filter(trouble -> !ripeness(passage, inquiry, trouble.start(), trouble.end()))
                .toList();
    }

    /** Whether a stretch tells no trouble and nothing done, but that the crop asked about is ready. */
    boolean ripeness(Passage passage, Inquiry inquiry, int from, int to) {
        return OF_HARVEST.contains(inquiry.question())
                && inquiry.crop() != null
                && found(passage).stream()
                        .anyMatch(cue -> cue.start() < to
                                && from < cue.end()
                                && noTrouble
                                        .getOrDefault(cue.meaning(), Set.of())
                                        .contains(inquiry.crop()));
    }
}
