package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;
import java.util.stream.IntStream;

/** Doings of what is no plant of the grower's: weather and animals that pass, seed that is put away, fruit that is picked already. */
final class NotThePlants {
    private static final Set<String> PASSING = Set.of(
            "hail",
            "hailstorm",
            "storm",
            "storms",
            "thunderstorm",
            "wind",
            "winds",
            "gale",
            "gales",
            "squall",
            "front",
            "rain",
            "shower",
            "showers",
            "frost",
            "cold",
            "heat",
            "heatwave",
            "flood",
            "tornado",
            "twister",
            "hurricane",
            "cyclone",
            "typhoon",
            "monsoon",
            "snow",
            "blizzard",
            "deer",
            "cow",
            "cows",
            "sheep",
            "goats",
            "pigs",
            "hogs",
            "rabbits",
            "elk",
            "moose",
            "kangaroos",
            "roos",
            "wallabies",
            "foxes",
            "badgers",
            "dogs",
            "cattle",
            "locusts");
    private static final Set<String> PUTTING =
            Set.of("put", "stuck", "popped", "chucked", "bunged", "moved", "laid", "tucked", "left", "shoved", "got");
    private static final Set<String> KEEPING_SEED = Set.of(
            "cellar",
            "loft",
            "attic",
            "larder",
            "pantry",
            "fridge",
            "freezer",
            "drawer",
            "tin",
            "envelope",
            "envelopes",
            "jar",
            "jars",
            "shoebox");
    /** So many words lie between putting seed away and where. */
    private static final int SEED_REACH = 4;
    /** So many words may stand between the picking and the first of what is picked. */
    private static final int PICK_REACH = 3;

    /** So many words may stand between the bringing and what is still to be set. */
    private static final int SET_REACH = 6;

    private NotThePlants() {}

    /** "Hail came through Saturday", "the deer came up from the wood": weather and animals that pass are no seedlings, nor what came through the frost. */
    static boolean passedThrough(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        int before = verb - 1;
        while (Set.of("just", "then", "have", "had", "has", "all", "suddenly", "finally")
                .contains(passage.word(before))) {
            before--;
        }
        boolean came = action.action().equals("emerged")
                && Set.of("came", "come", "comes", "coming", "broke", "popped").contains(passage.word(verb));
        int behind = action.lastWord() + 1;
        behind += Set.of("the", "that", "this", "a", "all", "our", "last", "it").contains(passage.word(behind)) ? 1 : 0;
        boolean outlived = passage.word(action.lastWord()).equals("through")
                && (PASSING.contains(passage.word(behind))
                        || Set.of(
                                        "winter",
                                        "night",
                                        "night's",
                                        "unscathed",
                                        "drought",
                                        "okay",
                                        "fine",
                                        "ok",
                                        "unharmed")
                                .contains(passage.word(behind)));
        return came && (outlived || PASSING.contains(passage.word(before)));
    }

    /** "Picked the first courgettes on 3 July": what is picked has set long before. */
    static boolean firstPicked(Passage passage, ActionSaid action) {
        return action.action().equals("fruit-set")
                && action.form() == null
                && passage.cropAt(action.lastWord() - 1).isPresent()
                && passage.actions().stream()
                        .anyMatch(other -> other.action().equals("harvested")
                                && other.form() != null
                                && other.start() < action.start()
                                && action.start() - other.start() <= PICK_REACH);
    }

    /** "Stuck the seed in the cellar", "mixed it with the seed in dry sand": nothing is sown and no crop stored. */
    static boolean seedKept(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        boolean seed = action.form() != null
                && IntStream.rangeClosed(verb + 1, action.lastWord() + 1)
                        .anyMatch(at ->
                                Set.of("seed", "seeds", "sowing", "packets").contains(passage.word(at)));
        boolean put = Set.of("planted", "sown", "moved").contains(action.action())
                && PUTTING.contains(passage.word(verb))
                && IntStream.rangeClosed(verb + 1, action.lastWord() + SEED_REACH)
                        .takeWhile(at ->
                                at < passage.size() && !passage.tokens().get(at).mark())
                        .anyMatch(at -> KEEPING_SEED.contains(passage.word(at)));
        return seed && (put || action.action().equals("stored"));
    }

    /** "Ate the last ripened tomato": tells which tomato, and of none that turns now. */
    static boolean calledSo(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        return action.action().equals("colour-turned")
                && action.form() == Form.PAST
                && passage.cropAt(verb + 1).isPresent()
                && Set.of("the", "last", "first", "a", "some", "my", "few", "fully", "freshly", "final")
                        .contains(passage.word(verb - 1));
    }

    /** "Took a squash casserole to the homecoming". */
    static boolean dish(Passage passage, ActionSaid action) {
        return action.action().equals("moved")
                && passage.crops().stream()
                        .filter(crop -> crop.start() > action.start() && crop.end() <= action.end())
                        .findFirst()
                        .filter(CropSaid::thing)
                        .isPresent();
    }

    /** "Came home with a bag of seed spuds": what is still to be set. */
    static boolean toBeSet(Passage passage, ActionSaid action) {
        return action.action().equals("harvested")
                && passage.crops().stream()
                        .filter(crop -> crop.start() >= action.start() && crop.start() <= action.end() + SET_REACH)
                        .findFirst()
                        .filter(crop -> (passage.word(crop.start()).equals("seed")
                                        || passage.word(crop.start() - 1).equals("seed"))
                                && (crop.crop().equals("potato") || crop.crop().equals("garlic")))
                        .isPresent();
    }

    /** "Picked the beans and they were lovely with a bit of mint": what is eaten with them was not picked. */
    static boolean eatenWith(Passage passage, CropSaid crop) {
        int at = crop.start() - 1;
        while (Set.of("of", "bit", "a", "some", "little", "the", "fresh", "butter", "and")
                .contains(passage.word(at))) {
            at--;
        }
        if (!passage.word(at).equals("with")) {
            return false;
        }
        return IntStream.range(Math.max(0, at - SET_REACH), at).anyMatch(one -> Set.of(
                        "lovely",
                        "delicious",
                        "tasty",
                        "gorgeous",
                        "nice",
                        "great",
                        "yum",
                        "tasted",
                        "ate",
                        "eaten",
                        "supper",
                        "tea",
                        "dinner",
                        "lunch",
                        "salad")
                .contains(passage.word(one)));
    }
}
