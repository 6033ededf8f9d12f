package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** What was put somewhere when a crop is named: its seed, its plants, or else what it bore. */
final class PutThere {
    private static final Set<String> PUTTING = Set.of(
            "put",
            "popped",
            "pop",
            "stuck",
            "sprinkled",
            "sprinkle",
            "scattered",
            "shook",
            "dropped",
            "spread",
            "shoved",
            "bunged",
            "chucked",
            "threw",
            "tossed",
            "moved",
            "set",
            "laid",
            "pushed",
            "pressed",
            "poked");
    private static final Set<String> PLANTS = Set.of(
            "plant",
            "plants",
            "seedling",
            "seedlings",
            "plugs",
            "pot",
            "pots",
            "tray",
            "trays",
            "transplants",
            "slips");

    private PutThere() {}

    /** "Sprinkled some rocket seed", "put 5 squash seeds in the propagator". */
    static boolean seed(Passage passage, Clause clause, CropSaid crop) {
        if (crop == null) {
            return false;
        }
        int behind = crop.end();
        while (behind < clause.to()
                && (Set.of("and", ",", "&").contains(passage.word(behind))
                        || passage.cropAt(behind).isPresent())) {
            behind++; // "Coriander and spinach seeds".
        }
        boolean seed = Set.of("seed", "seeds", "pips").contains(passage.word(behind))
                && !passage.word(behind + 1).equals("tray");
        return seed && PUTTING.contains(passage.word(clause.action().words().nextSetBit(0)));
    }

    /** "Put 6 tomato plants in the cellar": plants are moved, only what they bore is stored. */
    static boolean plants(Passage passage, Clause clause, CropSaid crop) {
        return PLANTS.contains(passage.word(crop.end()))
                && PUTTING.contains(passage.word(clause.action().words().nextSetBit(0)));
    }
}
