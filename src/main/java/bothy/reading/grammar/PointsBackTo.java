package bothy.reading.grammar;

import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What "them" or "both" of a clause without a crop points back to. */
final class PointsBackTo {
    private PointsBackTo() {}

    /** "Put some peas to soak and sowed them today": "them" are the peas. */
    static boolean said(Passage passage, int from, int to) {
        return says(passage, from, to, Set.of("them", "it", "they", "these"))
                || passage.word(from).equals("both")
                        && Set.of("in", "are", "now", "out").contains(passage.word(from + 1));
    }

    /** The crop named last before the clause, or two where "both" points to the two of the sentence before. */
    static List<CropSaid> crops(Passage passage, int from, int to) {
        List<CropSaid> sentenceBefore = passage.sentences().stream()
                .filter(sentence -> sentence[1] <= from)
                .reduce((first, second) -> second)
                .map(sentence -> Passage.within(passage.crops(), sentence[0], sentence[1]).stream()
                        .filter(crop -> !crop.thing())
                        .toList())
                .orElse(List.of());
        boolean both = sentenceBefore.size() == 2 && says(passage, from, to, Set.of("both"));
        return both ? sentenceBefore : last(passage, from);
    }

    /** The crop named last before a token. */
    static List<CropSaid> last(Passage passage, int before) {
        return passage.crops().stream()
                .filter(crop -> crop.end() <= before && !crop.thing())
                .reduce((first, second) -> second)
                .map(List::of)
                .orElse(List.of());
    }

    private static boolean says(Passage passage, int from, int to, Set<String> words) {
        return IntStream.range(from, to).anyMatch(at -> words.contains(passage.word(at)));
    }
}
