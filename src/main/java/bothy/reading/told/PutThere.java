package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.Set;
import java.util.stream.IntStream;

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

    /** "Broad beans in for the winter, 24 of them": sown before it, where none has grown yet. */
    static boolean inForTheWinter(Passage passage, Clause clause, CropSaid crop) {
        return crop != null
                && Set.of("broad-bean", "garlic").contains(crop.crop())
                && clause.action().form() == null
                && passage.word(crop.end()).equals("in")
                && passage.word(crop.end() + 1).equals("for")
                && PlantingsMeant.growing(passage.situation()).stream()
                        .noneMatch(planting -> crop.crops().contains(planting.crop()));
    }

    /** "Put 10 broad beans in pots": of what does not grow yet and is sown big, the seed. */
    static boolean begunInPots(Passage passage, Clause clause, CropSaid crop) {
        boolean big = crop != null
                && crop.single()
                && (crop.crop().endsWith("bean")
                        || Set.of("pea", "sweetcorn", "pumpkin", "courgette", "winter-squash", "cucumber", "melon")
                                .contains(crop.crop()));
        return big
                && !YoungPlants.named(passage, clause)
                && !YoungPlants.intoGrowbag(passage, clause)
                && Passage.within(passage.places(), clause.from(), clause.to()).stream()
                        .anyMatch(PlaceSaid::container)
                && PlantingsMeant.growing(passage.situation()).stream()
                        .noneMatch(planting -> crop.crops().contains(planting.crop()));
    }

    /** "Shifted the tomato seedlings to grow bags": where young plants go to stay. */
    static boolean intoGrowbags(Passage passage, Clause clause) {
        return YoungPlants.intoGrowbag(passage, clause)
                && YoungPlants.named(passage, clause)
                && IntStream.range(clause.from(), clause.to())
                        .anyMatch(at -> Set.of("to", "into", "in").contains(passage.word(at)));
    }
}
