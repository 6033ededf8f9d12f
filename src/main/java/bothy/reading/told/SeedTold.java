package bothy.reading.told;

import bothy.garden.Event;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.SeedSaid;
import java.util.List;
import java.util.Set;

/** The age of the seed that went into a sowing. */
final class SeedTold {
    private static final String OLD = "old seed";

    private SeedTold() {}

    /** A sowing with the age that is told of its seed; of several crops the one named last before it is meant. */
    static Event aged(Event sown, Passage passage, Clause clause, CropSaid crop) {
        SeedSaid seed = seed(passage, clause);
        if (seed == null || crop != null && !meant(seed, passage, clause, crop)) {
            return sown;
        }
        return seed.years() == null ? sown.withDetail(OLD) : sown.withSeedAge(seed.years());
    }

    private static SeedSaid seed(Passage passage, Clause clause) {
        List<SeedSaid> own = passage.seeds().stream()
                .filter(seed -> seed.at() > clause.from() && seed.at() <= clause.to())
                .toList();
        List<SeedSaid> fitting = own.isEmpty() ? passage.seeds() : own;
        return fitting.size() == 1 ? fitting.get(0) : null;
    }

    private static boolean meant(SeedSaid seed, Passage passage, Clause clause, CropSaid crop) {
        boolean outside = seed.at() <= clause.from() || seed.at() > clause.to();
        boolean all = false;
        for (int at = clause.from(); at < clause.to(); at++) {
            all |= Set.of("all", "both").contains(passage.word(at));
        }
        CropSaid last = clause.crops().stream()
                .filter(other -> other.end() <= seed.at())
                .reduce((one, two) -> two)
                .orElse(null);
        return outside || all || last == null || last == crop;
    }
}
