package bothy.reading;

import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook.Found;
import java.util.Set;
import java.util.stream.IntStream;

/** Holes that plants stand in are none that something ate: "pumpkin 6 holes up", "cut holes in the plastic", "2 seeds a hole". */
final class PlantingHoles {
    private static final Set<String> HOLES = Set.of("hole", "holes");
    private static final Set<String> MADE = Set.of(
            "dibber",
            "planting",
            "dibbed",
            "made",
            "make",
            "making",
            "poked",
            "dug",
            "deep",
            "inch",
            "their",
            "cut",
            "cutting",
            "punched",
            "burnt",
            "burned",
            "drilled",
            "dig",
            "digging",
            "dropped");
    private static final Set<String> GROUND =
            Set.of("plastic", "fabric", "membrane", "cardboard", "ground", "soil", "bed", "ridge", "ridges", "sheet");
    private static final Set<String> OF_PLANTS = Set.of(
            "leaf",
            "leaves",
            "fruit",
            "tubers",
            "pods",
            "roots",
            "chewed",
            "eaten",
            "munched",
            "foliage",
            "shot",
            "slug",
            "slugs",
            "snails",
            "caterpillars",
            "beetles",
            "birds",
            "something",
            "bugs",
            "pin");
    private static final Set<String> EACH = Set.of("a", "per", "each", "every");
    private static final Set<String> COUNTED = Set.of("up", "left", "came", "come", "have", "are", "nothing", "empty");
    /** So many words may stand between the making and the holes. */
    private static final int REACH = 3;

    private PlantingHoles() {}

    static boolean are(Passage passage, Found<String> trouble) {
        // "Put the leeks into their holes".
        boolean setIn = trouble.meaning().equals("holes-in-leaves")
                && passage.actions().stream()
                        .anyMatch(action -> action.action().equals("planted-out")
                                && action.words().intersects(trouble.place().words()));
        return setIn
                || trouble.place().words().stream()
                        .filter(at -> HOLES.contains(passage.word(at)))
                        .anyMatch(at -> planting(passage, at));
    }

    /** The message with other words for them, so that nothing is learnt from them of what looks wrong. */
    static Passage without(Passage passage) {
        boolean any = IntStream.range(0, passage.size())
                .anyMatch(at -> HOLES.contains(passage.word(at)) && planting(passage, at));
        return any
                ? passage.withTokens(IntStream.range(0, passage.size())
                        .mapToObj(at -> HOLES.contains(passage.word(at)) && planting(passage, at)
                                ? passage.tokens().get(at).as("stations")
                                : passage.tokens().get(at))
                        .toList())
                : passage;
    }

    private static boolean planting(Passage passage, int hole) {
        int[] sentence = passage.sentences().stream()
                .filter(one -> one[0] <= hole && hole < one[1])
                .findFirst()
                .orElse(new int[] {0, passage.size()});
        boolean ofPlants =
                IntStream.range(sentence[0], sentence[1]).anyMatch(at -> OF_PLANTS.contains(passage.word(at)));
        if (ofPlants) {
            return false;
        }
        boolean made = IntStream.range(Math.max(sentence[0], hole - REACH), hole)
                .anyMatch(at -> MADE.contains(passage.word(at)));
        boolean inGround = Set.of("in", "into").contains(passage.word(hole + 1))
                && IntStream.range(hole + 2, Math.min(sentence[1], hole + 2 + REACH))
                        .anyMatch(at -> GROUND.contains(passage.word(at)));
        int name = passage.cropAt(hole - 1).isPresent()
                ? passage.cropAt(hole - 1).get().start()
                : hole;
        boolean counted = passage.numbers().stream().anyMatch(number -> number.end() == name)
                && (name < hole
                        || passage.cropAt(name - 2).isPresent()
                        || COUNTED.contains(passage.word(hole + 1))
                        || ahead(passage, sentence, name));
        boolean each = EACH.contains(passage.word(hole - 1))
                && IntStream.range(sentence[0], hole).anyMatch(at -> Set.of("seed", "seeds", "to", "in", "plants")
                        .contains(passage.word(at)));
        return made || inGround || counted || each;
    }

    /** "And pumpkin, 8 holes": the crop stands before the number. */
    private static boolean ahead(Passage passage, int[] sentence, int number) {
        return passage.crops().stream()
                .anyMatch(crop -> crop.start() >= sentence[0] && crop.end() < number && number - crop.end() <= REACH);
    }
}
