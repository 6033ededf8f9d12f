package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Whether a clause tells only that what was picked before was eaten: "Picked nine cobs. We ate them." is one picking. */
final class Eaten {
    private static final Set<String> EATING =
            Set.of("eat", "ate", "eaten", "munched", "scoffed", "devoured", "guzzled", "polished", "demolished");
    private static final Set<String> HAVING = Set.of("had", "have", "having", "enjoyed");
    private static final Set<String> THEM = Set.of("them", "it", "lot", "all", "some", "those", "these", "both");
    private static final Set<String> MEALS = Set.of(
            "supper",
            "tea",
            "dinner",
            "lunch",
            "breakfast",
            "salad",
            "soup",
            "pudding",
            "sunday",
            "roast",
            "curry",
            "brunch",
            "butter");

    private Eaten() {}

    static boolean only(Passage passage, Clause clause, List<Told> before) {
        int verb = clause.action().words().nextSetBit(0);
        boolean picked = before.stream().anyMatch(told -> told.event().what() == What.HARVESTED);
        boolean lost = clause.action().action().equals("died")
                && !picked
                && Counted.number(passage, clause) != null; // "Planted 12 out. Two eaten already."
        boolean ate =
                EATING.contains(passage.word(verb)) && !passage.word(verb + 1).equals("by"); // "Eaten by slugs".
        return ate && !lost || HAVING.contains(passage.word(verb)) && meal(passage, verb + 1, clause.sentence()[1]);
    }

    /** "We had the lot for supper", "had them with butter". */
    private static boolean meal(Passage passage, int from, int to) {
        return IntStream.range(from, to)
                .anyMatch(at -> THEM.contains(passage.word(at))
                        && IntStream.range(at + 1, to)
                                .anyMatch(next ->
                                        Set.of("for", "with", "in", "at").contains(passage.word(next))
                                                && (MEALS.contains(passage.word(next + 1))
                                                        || MEALS.contains(passage.word(next + 2)))));
    }
}
