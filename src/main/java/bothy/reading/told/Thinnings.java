package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** "Thinned the carrots, pulled about 60 tiddlers": what came out in thinning is no harvest and no loss. */
final class Thinnings {
    private static final Set<What> TAKEN = EnumSet.of(What.HARVESTED, What.DIED, What.MOVED);
    private static final Set<String> TAKING = Set.of(
            "pulled",
            "took",
            "taken",
            "removed",
            "yanked",
            "whipped",
            "tossed",
            "binned",
            "chucked",
            "composted",
            "lifted",
            "plucked",
            "ripped",
            "got",
            "had",
            "threw");
    private static final Set<String> EATEN = Set.of(
            "tea", "dinner", "supper", "lunch", "salad", "salads", "eat", "ate", "eating", "kitchen", "soup", "pot",
            "stew", "bigger", "biggest", "market");

    private Thinnings() {}

    /** The thinning told just before with the count of what came out of it, {@code null} when the clause tells something else. */
    static Told of(Passage passage, Clause clause, Told told, List<Told> before, Integer leftOver) {
        Told last = before.isEmpty() ? null : before.get(before.size() - 1);
        int verb = clause.action().words().nextSetBit(0);
        boolean same = last != null
                && last.event().what() == What.THINNED
                && TAKEN.contains(told.event().what())
                && told.event().amount() == null
                && TAKING.contains(passage.word(verb))
                && !Cropless.names(passage, clause, EATEN);
        if (!same) {
            return null;
        }
        Integer count = told.event().count() == null ? leftOver : told.event().count();
        boolean counted = last.event().count() != null || count == null;
        return counted ? last : last.with(last.event().withCount(count));
    }
}
