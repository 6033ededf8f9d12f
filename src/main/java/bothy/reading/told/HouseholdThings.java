package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * "Grand for drying the washing", "put my tools away": what is dried or stored where it is no crop, or where neither the message nor the talk
 * before it tells of one.
 */
final class HouseholdThings {
    private static final Set<String> OBJECT =
            Set.of("a", "an", "the", "my", "our", "some", "his", "her", "all", "more", "another");
    private static final Set<String> CROPS = Set.of(
            "crop",
            "crops",
            "bulbs",
            "bulb",
            "heads",
            "pods",
            "seed",
            "seeds",
            "herbs",
            "flowers",
            "harvest",
            "roots",
            "lot",
            "rest",
            "last",
            "first",
            "whole",
            "plants",
            "tops",
            "bunches",
            "strings",
            "plaits",
            "ones",
            "of",
            "cloves",
            "veg",
            "surplus",
            "glut",
            "haul",
            "jars",
            "everything",
            "remaining",
            "spare",
            "best",
            "good");
    private static final Set<String> THEM =
            Set.of("they", "them", "it", "these", "those", "ones", "both", "all", "this", "that", "lot", "rest");

    private HouseholdThings() {}

    static boolean are(What what, Passage passage, Clause clause, List<Told> before) {
        return what == What.CURED && (other(passage, clause) || ofNone(passage, clause, before));
    }

    /** "Put my tools away": whatever it is, no crop is known by that name. */
    static boolean putAway(What what, Passage passage, Clause clause) {
        return what == What.STORED && other(passage, clause);
    }

    /** "Hung the washing out to dry", "drying our boots": what stands behind the verb. */
    private static boolean other(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        int behind = OBJECT.contains(passage.word(verb + 1))
                ? verb + 1
                : clause.action().lastWord() + 1;
        int noun = behind + 1;
        return OBJECT.contains(passage.word(behind))
                && passage.tokens().size() > noun
                && passage.tokens().get(noun).aWord()
                && !OBJECT.contains(passage.word(noun))
                && !CROPS.contains(passage.word(noun))
                && !CROPS.contains(passage.word(noun + 1))
                && passage.places().stream().noneMatch(place -> place.covers(noun))
                && passage.days().stream().noneMatch(day -> day.covers(noun));
    }

    /** "Great drying day", "been drying since nine". */
    private static boolean ofNone(Passage passage, Clause clause, List<Told> before) {
        return before.isEmpty()
                && passage.crops().stream().allMatch(crop -> crop.thing())
                && IntStream.range(clause.from(), clause.to()).noneMatch(at -> THEM.contains(passage.word(at)))
                && PlantingsMeant.mentioned(passage.situation()).isEmpty()
                && passage.situation().crops().isEmpty();
    }
}
