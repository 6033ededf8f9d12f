package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** "Cut 7 today and 4 yesterday": the same doing again, with a count and a day of its own. */
final class OnAnotherDay {
    private OnAnotherDay() {}

    static List<Told> of(Passage passage, Clause clause, Told first) {
        List<Told> again = new ArrayList<>();
        for (DaySaid day : Passage.within(passage.days(), clause.from(), clause.to())) {
            NumberSaid number = passage.counts(clause.from(), clause.to()).stream()
                    .filter(told -> day.start() - told.end() >= 0 && day.start() - told.end() <= 2)
                    .filter(told ->
                            Set.of("and", ",", "plus", "then", "another").contains(passage.word(told.start() - 1)))
                    .reduce((one, two) -> two)
                    .orElse(null);
            boolean other = day.known() && !day.past().equals(first.event().on());
            if (number != null && other) {
                Told told = first.with(first.event().withCount((int) number.value()));
                again.add(WhenTold.dated(told, day, passage));
            }
        }
        return again;
    }
}
