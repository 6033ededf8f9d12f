package bothy.reading;

import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** The crops that a question lists, or that were listed before it: "Got beans, peas and a packet of kale. When do they go in?" */
final class CropsListed {
    private static final Set<String> JOINING = Set.of(
            "and", "or", "n", "&", "plus", "some", "the", "my", "our", "also", "as", "well", "a", "few", "seed",
            "seeds", "packet", "packets", "of");
    /** One of these stands between the crops of a list, whatever else is told of each. */
    private static final Set<String> LISTING = Set.of("and", "or", "n", "&", "plus", ",", "\n", ";", "maybe", "also");

    /** Buying seed is a chore and nothing that is done to plants. */
    private static final String BUYING = "chore";

    private CropsListed() {}

    static List<CropSaid> of(Passage passage, int[] sentence, int begins) {
        List<CropSaid> inside = first(crops(passage, begins, sentence[1]), passage);
        if (!inside.isEmpty()) {
            return inside;
        }
        List<CropSaid> before = crops(passage, 0, begins);
        if (before.isEmpty()) {
            return List.of();
        }
        return last(before, passage, onlyNamed(before.get(before.size() - 1), passage, sentence, begins));
    }

    private static List<CropSaid> crops(Passage passage, int from, int to) {
        return Passage.within(passage.crops(), from, to).stream()
                .filter(said -> !said.thing())
                .toList();
    }

    private static List<CropSaid> first(List<CropSaid> crops, Passage passage) {
        List<CropSaid> listed = new ArrayList<>();
        for (CropSaid said : crops) {
            if (!listed.isEmpty()
                    && !joined(passage, listed.get(listed.size() - 1).end(), said.start())) {
                break;
            }
            listed.add(said);
        }
        return listed;
    }

    /** The last list. Where nothing is done to its crops, kinds and makes told of each break no list. */
    private static List<CropSaid> last(List<CropSaid> crops, Passage passage, boolean loose) {
        int first = crops.size() - 1;
        while (first > 0) {
            int from = crops.get(first - 1).end();
            int to = crops.get(first).start();
            if (!joined(passage, from, to) && !(loose && parted(passage, from, to))) {
                break;
            }
            first--;
        }
        return crops.subList(first, crops.size());
    }

    /** Whether the sentence that names a crop, up to the question, tells of no doing. */
    private static boolean onlyNamed(CropSaid said, Passage passage, int[] asking, int begins) {
        int[] sentence = passage.sentences().stream()
                .filter(one -> one[0] <= said.start() && said.end() <= one[1])
                .findFirst()
                .orElse(asking);
        int end = Math.min(sentence[1], begins);
        return passage.actions().stream()
                .filter(action -> !action.action().equals(BUYING))
                .noneMatch(action -> action.start() >= sentence[0] && action.end() <= end);
    }

    private static boolean parted(Passage passage, int from, int to) {
        return IntStream.range(from, to).anyMatch(at -> LISTING.contains(passage.word(at)))
                && IntStream.range(from, to)
                        .noneMatch(at -> passage.tokens().get(at).endsSentence()
                                && !passage.word(at).equals("\n"));
    }

    /** With nothing between them but "and", marks, counts, "some", what seed comes in, and what stands in brackets. */
    private static boolean joined(Passage passage, int from, int to) {
        boolean aside = false;
        for (int at = from; at < to; at++) {
            int here = at;
            String word = passage.word(at);
            aside |= word.equals("(");
            boolean counted = passage.numbers().stream().anyMatch(number -> number.covers(here));
            if (!aside && !counted && !passage.tokens().get(at).mark() && !JOINING.contains(word)) {
                return false;
            }
            aside &= !word.equals(")");
        }
        return to > from;
    }
}
