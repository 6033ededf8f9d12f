package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.Set;
import java.util.stream.IntStream;

/** "Lost my good trowel in the beans", "lost the roof of the shed": what is lost there is no plant. */
final class LostThings {
    private static final Set<String> BEFORE = Set.of(
            ":", "-", "my", "the", "a", "our", "all", "another", "one", "two", "three", "1", "2", "3", "half", "of",
            "his", "her", "bit", "part", "both", "some", "few", "couple");

    private static final Set<String> THINGS = Set.of(
            "trowel",
            "glove",
            "gloves",
            "fork",
            "spade",
            "hoe",
            "secateurs",
            "dibber",
            "label",
            "labels",
            "keys",
            "key",
            "phone",
            "glasses",
            "specs",
            "hat",
            "boot",
            "boots",
            "welly",
            "wellies",
            "bucket",
            "knife",
            "patience",
            "temper",
            "will",
            "plot",
            "count",
            "track",
            "interest",
            "heart",
            "hope",
            "sleep",
            "marbles",
            "rag",
            "way",
            "voice",
            "bet",
            "match",
            "weight",
            "ring",
            "watch",
            "wallet",
            "cat",
            "dog",
            "hen",
            "hens",
            "chicken",
            "chickens",
            "roof",
            "gate",
            "fence",
            "panel",
            "panels",
            "shed",
            "door",
            "doors",
            "lid",
            "lids",
            "tarp",
            "tarpaulin",
            "netting",
            "fleece",
            "cloche",
            "cloches",
            "tile",
            "tiles",
            "slate",
            "slates",
            "gutter",
            "chimney",
            "trampoline",
            "bin",
            "bins",
            "chair",
            "chairs",
            "table",
            "wheelbarrow",
            "barrow",
            "hose",
            "rake",
            "shears",
            "scissors",
            "purse",
            "notebook",
            "diary",
            "pen",
            "pencil",
            "power",
            "electricity",
            "signal",
            "internet",
            "pane",
            "panes",
            "glass",
            "packet",
            "packets",
            "sheeting",
            "polythene",
            "post",
            "posts",
            "shovel",
            "pruners",
            "snips",
            "tools",
            "tool",
            "torch",
            "umbrella",
            "earring",
            "tooth",
            "kneeler",
            "stakes",
            "canes",
            "bamboo");
    /** "Lost my good old trowel", "lost a fence panel": so many words may stand before what was lost. */
    private static final int DESCRIBING = 2;

    private LostThings() {}

    static boolean are(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        if (!passage.word(verb).equals("lost")) {
            return false;
        }
        int at = verb + 1;
        while (BEFORE.contains(passage.word(at))) {
            at++;
        }
        for (int noun = at; noun <= at + DESCRIBING && noun < passage.size(); noun++) {
            if (passage.tokens().get(noun).mark() || passage.cropAt(noun).isPresent()) {
                return false;
            }
            if (THINGS.contains(passage.word(noun))) {
                return !plantsToo(passage, clause, noun + 1);
            }
        }
        return false;
    }

    /** "Lost the fence and three tomatoes", "lost a bucket of beans". */
    private static boolean plantsToo(Passage passage, Clause clause, int from) {
        return clause.crops().stream()
                .filter(crop -> crop.start() >= from && !crop.thing())
                .anyMatch(crop -> passage.word(from).equals("of")
                        || IntStream.range(from, crop.start())
                                .anyMatch(at -> Set.of("and", "plus", "&", ",").contains(passage.word(at))));
    }
}
