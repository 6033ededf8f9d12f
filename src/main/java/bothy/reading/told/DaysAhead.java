package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** "Yesterday I sowed 8 tomatoes, and on 13 March 6 aubergines": days that each open the part of the sentence with their crop. */
final class DaysAhead {
    private static final Set<String> OPENING = Set.of("and", ",", "&", "then", "but", "-", ";");

    private DaysAhead() {}

    /** Whether the first day leads the doing and each later one stands behind a joint, ahead of a crop. */
    static boolean ofEach(Passage passage, List<DaySaid> days, Clause clause) {
        DaySaid first = days.get(0);
        DaySaid last = days.get(days.size() - 1);
        int lastCrop = clause.crops().get(clause.crops().size() - 1).start();
        return first.end() <= clause.crops().get(0).start()
                && first.start() < clause.action().words().nextSetBit(0)
                && last.end() <= lastCrop
                && days.stream().skip(1).allMatch(day -> opens(passage, day));
    }

    private static boolean opens(Passage passage, DaySaid day) {
        int before = day.start() - 1;
        before -= Set.of("on", "the").contains(passage.word(before)) ? 1 : 0;
        // "Sowed peas, Monday, and carrots": a mark or a joint behind the day closes the part before it.
        return OPENING.contains(passage.word(before))
                && !Set.of(",", "and", "&", "plus", "then").contains(passage.word(day.end()));
    }
}
