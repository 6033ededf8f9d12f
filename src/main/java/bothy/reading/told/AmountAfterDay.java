package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/**
 * "Watered the beans on Sunday, 40 litres each", "Had our first cobs on Saturday. I picked 14.": the day is told first and the amount behind it,
 * with no day of its own; that is one doing.
 */
final class AmountAfterDay {
    private static final Set<What> MEASURED = EnumSet.of(What.WATERED, What.FED, What.HARVESTED);
    /** Words with which a doing is another one. */
    private static final Set<String> FURTHER = Set.of(
            "more", "another", "again", "further", "then", "also", "since", "now", "second", "next", "later", "plus");

    /** "We had our first cobs on Saturday": of which picking it is told how many they were. */
    private static final Set<String> FIRST = Set.of("first", "had", "some");

    private static final Set<String> OFF = Set.of("off", "from", "of", "in");

    private AmountAfterDay() {}

    /** "I picked right at 2 lb off the row today": within so many words behind its verb a weight is of what was just named. */
    static boolean weighs(Passage passage, Clause clause, int reach) {
        int verb = clause.action().lastWord();
        return clause.action().action().equals("harvested")
                && Passage.within(passage.quantities(), verb + 1, clause.to()).stream()
                        .anyMatch(weight -> weight.unit().equals("kg")
                                && weight.start() - verb <= reach
                                && (weight.end() >= clause.to()
                                        || passage.tokens().get(weight.end()).mark()
                                        || passage.end("date", weight.end()) > 0
                                        || OFF.contains(passage.word(weight.end()))));
    }

    static List<Told> joined(Passage passage, List<Told> told) {
        List<Told> joined = new ArrayList<>();
        for (Told next : told) {
            int dated = of(passage, joined, next);
            if (dated < 0) {
                joined.add(next);
            } else {
                Event event = next.event().withOn(joined.get(dated).event().on());
                joined.set(dated, joined.get(dated).with(event));
            }
        }
        return joined;
    }

    /** Which of what was told before the amount is of, −1 for none; nothing else may be told between the two. */
    private static int of(Passage passage, List<Told> before, Told next) {
        Event event = next.event();
        boolean amount = MEASURED.contains(event.what())
                && next.open() == null
                && next.assumed().contains("date")
                && (event.amount() != null || event.count() != null)
                && !says(passage, next, FURTHER);
        int from = before.isEmpty() ? -1 : before.get(before.size() - 1).from();
        for (int at = before.size() - 1; amount && at >= 0 && before.get(at).from() == from; at--) {
            Told dated = before.get(at);
            boolean bare = dated.event().what() == event.what()
                    && dated.open() == null
                    && (event.what() != What.HARVESTED || says(passage, dated, FIRST))
                    && !dated.assumed().contains("date")
                    && dated.event().amount() == null
                    && dated.event().count() == null;
            if (bare
                    && Objects.equals(dated.event().crop(), event.crop())
                    && dated.plantings().equals(next.plantings())) {
                return at;
            }
        }
        return -1;
    }

    private static boolean says(Passage passage, Told told, Set<String> words) {
        String text = passage.message().substring(told.from(), told.to()).toLowerCase(Locale.ROOT);
        return Arrays.stream(text.split("[^a-z]+")).anyMatch(words::contains);
    }
}
