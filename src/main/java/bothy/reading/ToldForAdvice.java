package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.What;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** What is told, asks nothing and wants advice all the same: "forgot to water for four days". */
final class ToldForAdvice {
    private static final String FILE = "questions";

    private final PhraseBook<String> told;
    private final Set<String> madeGood;

    ToldForAdvice(Words words) {
        told = new PhraseFile(words, FILE, Map.of()).book("/told", "told");
        madeGood = Set.copyOf(words.list(FILE, "/made-good"));
    }

    Set<String> vocabulary() {
        return told.vocabulary();
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
