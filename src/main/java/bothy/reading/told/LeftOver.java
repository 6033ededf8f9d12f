package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Figures in a clause that were given to nothing. Where one is left over, reading has missed something of the entry, so it is asked back: of
 * four such entries in messages read for the first time none was right, and of those tuned on it asks back none that is.
 */
final class LeftOver {
    /** What is told of so many plants. */
    private static final Set<What> COUNTABLE = Set.of(
            What.SOWN, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT, What.HARVESTED, What.EMERGED, What.DIED);

    private LeftOver() {}

    /** "Counted 31 this morning". */
    private static boolean counted(Passage passage, Clause clause, int number) {
        return passage.counts(clause.from(), clause.to()).stream()
                .anyMatch(said -> (int) said.value() == number
                        && Set.of("counted", "count", "counting").contains(passage.word(said.start() - 1)));
    }

    /** "Sowed 2.5 cucumbers": of plants there are whole ones only. */
    private static Optional<NumberSaid> broken(Passage passage, Clause clause) {
        return Passage.within(passage.numbers(), clause.from(), clause.to()).stream()
                .filter(number -> number.value() > 1 && !number.whole() && !number.ordinal())
                .filter(number ->
                        passage.crops().stream().anyMatch(crop -> !crop.thing() && crop.start() == number.end()))
                .findFirst();
    }

    /** The one statement of a clause, in doubt about its figure when one is left over. */
    static Told asked(Passage passage, Clause clause, Told told, Particulars particulars) {
        Event event = told.event();
        boolean bare = event.count() == null && event.amount() == null && !"last".equals(event.detail());
        if (!bare) {
            return told;
        }
        Optional<NumberSaid> broken = COUNTABLE.contains(event.what()) ? broken(passage, clause) : Optional.empty();
        if (broken.isPresent()) {
            return told.doubting(
                    Doubt.About.HOW_MANY, String.valueOf(broken.get().value()));
        }
        Integer number = COUNTABLE.contains(event.what()) ? particulars.leftOver(passage, clause) : null;
        if (number != null && counted(passage, clause, number)) {
            return told.with(event.withCount(number));
        }
        if (number != null) {
            return told.assuming("count").doubting(Doubt.About.HOW_MANY, String.valueOf(number));
        }
        return told;
    }

    /** "Planted out 18 beans, slugs had 3 overnight": the night is of what the slugs did. */
    private static boolean ofALaterDoing(Passage passage, Clause clause, DaySaid day) {
        boolean night = passage.word(day.start()).equals("overnight")
                || passage.word(day.end() - 1).equals("night");
        return night
                && passage.actions().stream()
                        .anyMatch(other -> other.start() > clause.action().lastWord() && other.start() < day.start());
    }

    /** A statement of today although its sentence tells a day that is over and belongs to nothing else; what is seen is of today. */
    static Told dated(Passage passage, Clause clause, Told told, List<Told> before) {
        boolean now = clause.action().state() && clause.action().form() == null;
        boolean today = !now
                && told.assumed().contains("date")
                && passage.situation().today().equals(told.event().on());
        DaySaid day = !today
                ? null
                : Passage.within(passage.days(), clause.sentence()[0], clause.sentence()[1]).stream()
                        .filter(one -> one.known()
                                && !clause.inRelative(one.start())
                                && !DaysOfElse.occasion(passage, clause, one)
                                && !DaysOfElse.forecast(passage, one)
                                && !DaysOfElse.wished(passage, one)
                                && !ofALaterDoing(passage, clause, one)
                                && !WhenTold.ofLastInList(passage, one)
                                && before.stream().noneMatch(earlier -> one.past()
                                        .equals(earlier.event().on()))
                                && one.past().isBefore(passage.situation().today()))
                        .findFirst()
                        .orElse(null);
        return day == null ? told : told.assuming("day").doubting(Doubt.About.WHICH_DATE, WhenTold.words(passage, day));
    }
}
