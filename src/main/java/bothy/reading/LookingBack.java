package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.SignSeen;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "What would you change next year", "… with these three": of the whole year, not of what was talked about last. */
final class LookingBack {
    private static final String NEXT_YEAR = "next-year";
    private static final Set<String> ONE = Set.of("it", "them", "they", "those", "that");

    /** "What should I write down for next year" asks what is worth a note. */
    private static final Set<String> NOTING = Set.of("write", "note", "record", "jot");

    private static final Set<String> YEARS = Set.of(
            "year", "years", "yr", "season", "time", "different", "differently", "otherwise", "change", "better");

    private LookingBack() {}

    /** @param seen the troubles that the message tells: what went wrong with one crop asks what is done otherwise with that one */
    static Inquiry of(Passage passage, Inquiry inquiry, List<SignSeen> seen) {
        boolean whole = NEXT_YEAR.equals(inquiry.topic())
                && (passage.crops().isEmpty() || seen.isEmpty() && apart(passage))
                && asking(passage)
                        .allMatch(at -> !ONE.contains(passage.word(at)) && !NOTING.contains(passage.word(at)));
        return whole ? inquiry.ofCrop(null).about(List.of()) : inquiry;
    }

    /** "26 kg of tomatoes in all. What would you change next season?": asked in a sentence that names no crop. */
    private static boolean apart(Passage passage) {
        return passage.crops().stream().filter(said -> !said.thing()).noneMatch(said -> asking(passage)
                .anyMatch(said::covers));
    }

    /** The words of the sentences that ask of the year; of all of them where none speaks of it. */
    private static IntStream asking(Passage passage) {
        List<int[]> asking = passage.sentences().stream()
                .filter(sentence ->
                        IntStream.range(sentence[0], sentence[1]).anyMatch(at -> YEARS.contains(passage.word(at))))
                .toList();
        List<int[]> marked = asking.stream()
                .filter(sentence -> passage.word(sentence[1]).equals("?"))
                .toList();
        return asking.isEmpty()
                ? IntStream.range(0, passage.size())
                : (marked.isEmpty() ? asking : marked)
                        .stream().flatMapToInt(sentence -> IntStream.range(sentence[0], sentence[1]));
    }
}
