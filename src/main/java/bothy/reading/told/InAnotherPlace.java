package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** "4 toms planted in growbags and 3 in the border": the same doing again, with a count and a place of its own. */
final class InAnotherPlace {
    private static final Set<What> PLACED =
            EnumSet.of(What.SOWN, What.PLANTED_OUT, What.POTTED_ON, What.PRICKED_OUT, What.MOVED);
    private static final Set<String> JOINING = Set.of("and", ",", "plus", "then", "another", "&");
    private static final Set<String> LEADING =
            Set.of("in", "into", "on", "onto", "at", "along", "under", "to", "by", "out");
    /** So many words may stand between what leads to a place and its name. */
    private static final int REACH = 4;

    private InAnotherPlace() {}

    /** The one statement of a clause, or two where its plants went to two places. */
    static List<Told> of(Passage passage, Clause clause, Told told) {
        if (!PLACED.contains(told.event().what()) || told.event().count() == null) {
            return List.of(told);
        }
        int crop = clause.crops().isEmpty()
                ? clause.from()
                : clause.crops().get(clause.crops().size() - 1).start();
        List<PlaceSaid> places = Passage.within(passage.places(), clause.from(), clause.to());
        for (NumberSaid number : passage.counts(crop, clause.to())) {
            List<PlaceSaid> before = places.stream()
                    .filter(place -> place.end() <= number.start())
                    .toList();
            List<PlaceSaid> after = places.stream()
                    .filter(place -> place.start() >= number.end())
                    .toList();
            boolean part = passage.counts(crop, number.start()).stream()
                    .anyMatch(other -> leads(passage, other, before.isEmpty() ? null : before.get(before.size() - 1)));
            boolean again = !before.isEmpty()
                    && !part // "6 squash, 3 in the bed and 3 by the fence".
                    && !after.isEmpty()
                    && JOINING.contains(passage.word(number.start() - 1))
                    && leads(passage, number, after.get(0))
                    && !names(before).equals(names(after));
            if (again) {
                return List.of(at(told, before), at(told.with(told.event().withCount((int) number.value())), after));
            }
        }
        return List.of(told);
    }

    private static boolean leads(Passage passage, NumberSaid number, PlaceSaid place) {
        int at = number.end();
        at += passage.word(at).equals("more") || passage.word(at).equals("others") ? 1 : 0;
        at += passage.word(at).equals("of") && passage.word(at + 1).equals("them") ? 2 : 0;
        return place != null
                && LEADING.contains(passage.word(at))
                && place.start() >= at
                && place.start() - at <= REACH;
    }

    private static List<String> names(List<PlaceSaid> places) {
        return places.stream().map(PlaceSaid::name).sorted().toList();
    }

    private static Told at(Told told, List<PlaceSaid> places) {
        return told.with(told.event().withPlace(first(places, false), first(places, true)));
    }

    private static String first(List<PlaceSaid> places, boolean container) {
        return places.stream()
                .filter(place -> place.container() == container)
                .map(PlaceSaid::name)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }
}
