package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "Gave them 10 gallons of water and some fertilizer": the litres are of the water, and they were fed besides. */
final class WaterAndFeed {
    private static final Set<String> FEEDS =
            Set.of("feed", "fertilizer", "fertiliser", "food", "seaweed", "comfrey", "potash", "manure", "pellets");
    /** So many words may stand between the water and the feed. */
    private static final int REACH = 5;

    private WaterAndFeed() {}

    /** Both doings, or the one that was told. */
    static List<Told> of(Passage passage, Clause clause, Told told) {
        Event event = told.event();
        boolean both = event.what() == What.FED
                && event.amount() != null
                && Passage.within(passage.quantities(), clause.from(), clause.to()).stream()
                        .anyMatch(amount -> amount.unit().equals("L") && waterThenFeed(passage, amount.end()));
        return both
                ? List.of(
                        told.with(event.withWhat(What.WATERED)),
                        told.with(event.withAmount(null, null).withDetail(null)))
                : List.of(told);
    }

    private static boolean waterThenFeed(Passage passage, int behind) {
        int water = passage.word(behind).equals("of") ? behind + 1 : behind;
        return passage.word(water).equals("water")
                && Set.of("and", "plus", "&", "then").contains(passage.word(water + 1))
                && IntStream.range(water + 2, water + 2 + REACH).anyMatch(at -> FEEDS.contains(passage.word(at)));
    }
}
