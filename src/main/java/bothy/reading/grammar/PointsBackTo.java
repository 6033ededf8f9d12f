package bothy.reading.grammar;

import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What "them" or "both" of a clause without a crop points back to. */
final class PointsBackTo {
    /** So many words of a clause may stand before its "both". */
    private static final int BOTH_REACH = 6;

    private PointsBackTo() {}

    /** "Put some peas to soak and sowed them today": "them" are the peas. */
    static boolean said(Passage passage, int from, int to) {
        return says(passage, from, to, Set.of("them", "it", "they", "these"))
                        && !LaterSentences.ofAnother(passage, from)
                || passage.word(from).equals("both")
                        && Set.of("in", "are", "now", "out").contains(passage.word(from + 1))
                || IntStream.range(from + 1, Math.min(to, from + BOTH_REACH))
                        .anyMatch(at -> passage.word(at).equals("both") && closes(passage, at + 1, to));
    }

    /** "Watered both.", "fed both this morning", "staked both of them". */
    private static boolean closes(Passage passage, int behind, int to) {
        return behind >= to
                || passage.tokens().get(behind).mark()
                || passage.end("date", behind) > 0
                || passage.word(behind).equals("of")
                        && Set.of("them", "em", "those", "these").contains(passage.word(behind + 1))
                || Set.of("well", "in", "too", "now", "up", "and", "with", "after")
                        .contains(passage.word(behind));
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
        if (!says(passage, from, to, Set.of("both"))) {
            return last(passage, from);
        }
        if (sentenceBefore.size() == 2) {
            return sentenceBefore;
        }
        List<CropSaid> lastTwo = lastTwo(passage, from);
        return lastTwo.isEmpty() ? last(passage, from) : lastTwo;
    }

    /** "Corn up. Caged the tomatoes. Watered both.": the two crops named last, each alone in one of the two sentences before. */
    private static List<CropSaid> lastTwo(Passage passage, int from) {
        List<int[]> before = passage.sentences().stream()
                .filter(sentence -> sentence[1] <= from)
                .toList();
        List<CropSaid> two = before.stream()
                .skip(Math.max(0, before.size() - 2))
                .flatMap(sentence -> Passage.within(passage.crops(), sentence[0], sentence[1]).stream())
                .filter(crop -> !crop.thing())
                .toList();
        return two.size() == 2 && !two.get(0).crop().equals(two.get(1).crop()) ? two : List.of();
    }

    /** The crop named last before a token. */
    static List<CropSaid> last(Passage passage, int before) {
        if (LaterSentences.ofAnother(passage, before)) {
            return List.of();
        }
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
