package bothy.reading;

import bothy.garden.Inquiry;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** "What would you change next year", "… with these three": of the whole year, not of what was talked about last. */
final class LookingBack {
    private static final String NEXT_YEAR = "next-year";
    private static final Set<String> ONE = Set.of("it", "them", "they", "those", "that");

    /** "What should I write down for next year" asks what is worth a note. */
    private static final Set<String> NOTING = Set.of("write", "note", "record", "jot");

    private LookingBack() {}

    static Inquiry of(Passage passage, Inquiry inquiry) {
        boolean whole = NEXT_YEAR.equals(inquiry.topic())
                && passage.crops().isEmpty()
                && passage.words().stream().noneMatch(word -> ONE.contains(word) || NOTING.contains(word));
        return whole ? inquiry.ofCrop(null).about(List.of()) : inquiry;
    }
}
