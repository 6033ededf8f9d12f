package bothy.reading.told;

import bothy.garden.Event;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * "Planted 12 tomato seeds in cups 6 Roma": what is named by its variety behind a whole, joined by nothing
 * or one of several that come to it, is a part of it.
 */
final class PartsOfAll {
    private static final Set<String> JOINTS = Set.of("and", "plus", "&", "+", ",", "with", "then", "also");

    private PartsOfAll() {}

    static List<Told> apart(Passage passage, List<Told> told) {
        List<Told> all = new ArrayList<>(told);
        for (int whole = 0; whole + 1 < all.size(); whole++) {
            Told part = all.get(whole + 1);
            if (part(passage, all.get(whole), part)) {
                Event event = all.get(whole).event();
                int rest = event.count() - part.event().count();
                all.set(whole, all.get(whole).with(event.withCount(rest)));
            }
        }
        return all;
    }

    private static boolean part(Passage passage, Told whole, Told part) {
        Event all = whole.event();
        Event one = part.event();
        boolean alike = whole.from() == part.from()
                && all.what() == one.what()
                && all.crop() != null
                && all.crop().equals(one.crop())
                && all.variety() == null
                && one.variety() != null
                && all.count() != null
                && one.count() != null
                && one.count() < all.count();
        if (!alike) {
            return false;
        }
        int end = whole.from();
        while (end < passage.size() && !passage.tokens().get(end).endsSentence()) {
            end++;
        }
        List<NumberSaid> numbers = passage.counts(whole.from(), end);
        boolean unjoined = numbers.stream()
                .filter(number -> number.value() == one.count())
                .anyMatch(number -> !JOINTS.contains(passage.word(number.start() - 1)));
        long sum = numbers.stream().mapToLong(number -> (long) number.value()).sum();
        return unjoined || sum == 2L * all.count();
    }
}
