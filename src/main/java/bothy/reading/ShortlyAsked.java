package bothy.reading;

import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** A crop and hardly a word: "peas ok?", "methi and palak time?", "beans yet?" ask of what is not begun whether its time has come. */
final class ShortlyAsked {
    private static final Set<String> ASKS =
            Set.of("ok", "okay", "fine", "alright", "time", "yet", "now", "soon", "early", "wait", "possible");
    private static final Set<String> BESIDE = Set.of(
            "and", "or", "the", "my", "our", "some", "for", "is", "are", "it", "they", "too", "to", "be", "will",
            "would", "go", "in", "now", "then", "so", "still", "already", "seed", "seeds", "sets", "this", "week",
            "weekend", "that", "at", "here", "not", "no");

    private ShortlyAsked() {}

    /** The kind of a question that says so little; as it was of any other and of a crop that grows. */
    static Question kind(Question question, Passage passage, int[] sentence, int begins) {
        List<CropSaid> named = CropsListed.of(passage, sentence, begins).stream()
                .filter(said -> said.start() >= begins)
                .toList();
        boolean open = question == Question.OTHER
                && !named.isEmpty()
                && named.stream().noneMatch(said -> grows(said, passage));
        boolean asks = IntStream.range(begins, sentence[1]).anyMatch(at -> ASKS.contains(passage.word(at)));
        boolean more = IntStream.range(begins, sentence[1]).anyMatch(at -> !little(passage, at));
        return open && asks && !more ? Question.WHEN_SOW : question;
    }

    private static boolean little(Passage passage, int at) {
        String word = passage.word(at);
        return passage.tokens().get(at).mark()
                || ASKS.contains(word)
                || BESIDE.contains(word)
                || passage.crops().stream().anyMatch(said -> said.covers(at));
    }

    static boolean grows(CropSaid said, Passage passage) {
        return passage.situation().plantings().stream()
                .filter(planting -> !planting.over())
                .map(Planting::crop)
                .anyMatch(said::canMean);
    }
}
