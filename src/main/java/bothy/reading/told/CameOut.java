package bothy.reading.told;

import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Tells what came up from seed from what came out of the ground to be eaten: both "came up" and "came out". */
final class CameOut {
    /** What grows in the ground and is counted when it is lifted. */
    private static final Set<String> LIFTED = Set.of("heads", "bulbs", "tubers", "roots", "bunches");

    private CameOut() {}

    /** "Carrots came out today" of seed that is not up yet: it has come up. */
    static boolean emerged(Passage passage, Clause clause, CropSaid crop) {
        List<Planting> sown = crop == null
                ? List.of()
                : PlantingsMeant.growing(passage.situation()).stream()
                        .filter(planting -> crop.crops().contains(planting.crop()))
                        .toList();
        return came(passage, clause)
                && !measured(passage, clause)
                && !sown.isEmpty()
                && sown.stream().noneMatch(planting -> passage.situation()
                        .has(planting, Set.of(What.EMERGED, What.PLANTED_OUT, What.PRICKED_OUT, What.FLOWERING)));
    }

    /** "Potatoes came up today, 6 kg", "garlic came up, 19 heads": nothing to weigh or to count so comes up from seed. */
    static boolean gathered(Passage passage, Clause clause) {
        return (came(passage, clause) || up(passage, clause)) && measured(passage, clause);
    }

    private static boolean came(Passage passage, Clause clause) {
        return clause.action().words().stream()
                .anyMatch(at -> Set.of("came", "come", "coming").contains(passage.word(at)));
    }

    /** "That's the potatoes up, 16 plants, 11 kilo". */
    private static boolean up(Passage passage, Clause clause) {
        return clause.action().words().stream()
                .allMatch(at -> Set.of("up", "is", "are", "all", "that").contains(passage.word(at)));
    }

    private static boolean measured(Passage passage, Clause clause) {
        int from = clause.sentence()[0];
        int to = clause.sentence()[1];
        boolean weighed = Passage.within(passage.quantities(), from, to).stream()
                .anyMatch(quantity -> quantity.unit().equals("kg"));
        return weighed
                || passage.counts(from, to).stream().anyMatch(number -> IntStream.range(number.end(), number.end() + 2)
                        .mapToObj(passage::word)
                        .anyMatch(LIFTED::contains));
    }
}
