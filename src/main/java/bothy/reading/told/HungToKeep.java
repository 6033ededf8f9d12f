package bothy.reading.told;

import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.What;
import bothy.reading.grammar.CropNames;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** "50 strung up in the shed for storing": what hangs there is no plant that is held up, though nothing is named. */
final class HungToKeep {
    private static final Set<String> KEPT = Set.of(
            "storing",
            "store",
            "storage",
            "keep",
            "winter",
            "rafters",
            "garage",
            "shed",
            "barn",
            "attic",
            "basement",
            "pantry",
            "loft",
            "larder",
            "cellar");

    private final CropNames cropNames;

    HungToKeep(CropNames cropNames) {
        this.cropNames = cropNames;
    }

    static boolean is(What what, Passage passage, Clause clause) {
        return what == What.SUPPORTED
                && clause.action().words().stream().anyMatch(at -> WhatMeant.HANGING.contains(passage.word(at)))
                && Cropless.names(passage, clause, KEPT);
    }

    /** "The onions are in the garage, I strung them up there": what is strung up of bulbs is kept, not held up. */
    Told kept(Told told, Passage passage, Clause clause) {
        boolean strung = told.event().what() == What.SUPPORTED
                && told.event().crop() != null
                && cropNames.hung(told.event().crop())
                && Set.of("strung", "hung", "hang", "string")
                        .contains(passage.word(clause.action().words().nextSetBit(0)));
        What kept = WhatMeant.asLifted(passage, clause) ? What.CURED : What.STORED;
        return strung ? told.with(told.event().withWhat(kept)) : told;
    }

    /** Whether what was told last is of a crop that is strung up to keep. */
    boolean justNamed(List<Told> before) {
        return !before.isEmpty()
                && before.get(before.size() - 1).event().crop() != null
                && cropNames.hung(before.get(before.size() - 1).event().crop());
    }

    /** What is hung up of all that is grown: of what was talked about, else of all. */
    List<Planting> meant(Situation situation) {
        List<Planting> mentioned = hung(PlantingsMeant.mentioned(situation));
        return mentioned.isEmpty() ? hung(PlantingsMeant.growing(situation)) : mentioned;
    }

    private List<Planting> hung(List<Planting> plantings) {
        return plantings.stream()
                .filter(planting -> cropNames.hung(planting.crop()))
                .toList();
    }
}
