package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.What;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** What is told, asks nothing and wants advice all the same: "forgot to water for four days". */
final class ToldForAdvice {
    private static final String FILE = "matters";
    private static final String WATERING_MISSED = "watering-missed";

    private final PhraseBook<String> told = new PhraseBook<>();
    private final Set<String> madeGood;

    ToldForAdvice(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.list(FILE, "/told").forEach(matter -> file.into(told, "/asked/" + matter, matter));
        madeGood = Set.copyOf(words.list(FILE, "/made-good"));
    }

    /** What is told is asked of; of a watering that was missed it is known that it was only told. */
    static List<Inquiry> asked(List<Inquiry> inquiries) {
        return inquiries.stream()
                .map(one -> WATERING_MISSED.equals(one.topic()) ? one.withTopic(Inquiry.WATERING_MISSED_TOLD) : one)
                .toList();
    }

    /** Not where anything else is told in the sentence, nor "nearly forgot to water but did it". */
    boolean in(Passage passage, int[] sentence) {
        boolean toldElse = Passage.within(passage.actions(), sentence[0], sentence[1]).stream()
                .anyMatch(action -> !action.action().equals(What.WATERED.word()));
        boolean good = IntStream.range(sentence[0], sentence[1]).anyMatch(at -> madeGood.contains(passage.word(at)));
        return !toldElse
                && !good
                && !told.find(passage.tokens(), sentence[0], sentence[1], passage)
                        .isEmpty();
    }
}
