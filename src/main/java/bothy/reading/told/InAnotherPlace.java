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
            EnumSet.of(What.SOWN, What.PLANTED_OUT, What.POTTED_ON, What.PRICKED_OUT, What.MOVED, What.HARVESTED);
    private static final Set<String> JOINING = Set.of("and", ",", "plus", "then", "another", "&");
    private static final Set<String> LEADING =
            Set.of("in", "into", "on", "onto", "at", "along", "under", "to", "by", "out", "from", "off");
    private static final Set<String> BESIDE =
            Set.of("by", "beside", "along", "near", "against", "under", "behind", "round", "around");
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
            boolean there = after.isEmpty()
                    ? beside(passage, number, clause.to())
                    : leads(passage, number, after.get(0)) && !names(before).equals(names(after));
            boolean again = !before.isEmpty()
                    && !part // "6 squash, 3 in the bed and 3 by the fence".
                    && there
                    && JOINING.contains(passage.word(led(passage, number)));
            if (again) {
                return List.of(at(told, before), at(told.with(told.event().withCount((int) number.value())), after));
            }
        }
        return List.of(told);
    }

    /** What stands before "3" or "the other 3". */
    private static int led(Passage passage, NumberSaid number) {
        int at = number.start() - 1;
        while (at > 0 && Set.of("the", "other", "another", "remaining", "last").contains(passage.word(at))) {
            at--;
        }
        return at;
    }

    private static boolean leads(Passage passage, NumberSaid number, PlaceSaid place) {
        int at = behind(passage, number);
        return place != null
                && LEADING.contains(passage.word(at))
                && place.start() >= at
                && place.start() - at <= REACH;
    }

    /** "And 2 by the compost heap": a place that has no name here. */
    private static boolean beside(Passage passage, NumberSaid number, int to) {
        int at = behind(passage, number);
        int noun = passage.word(at).equals("next") && passage.word(at + 1).equals("to") ? at + 2 : at + 1;
        return (BESIDE.contains(passage.word(at)) || noun > at + 1)
                && Set.of("the", "my", "our", "a", "their").contains(passage.word(noun))
                && passage.crops().stream().noneMatch(crop -> crop.start() >= number.end() && crop.end() <= to)
                && passage.actions().stream().noneMatch(action -> action.start() >= number.end() && action.end() <= to);
    }

    /** Where a place may begin behind "3", "3 more", "3 of them". */
    private static int behind(Passage passage, NumberSaid number) {
        int at = number.end();
        at += passage.word(at).equals("more") || passage.word(at).equals("others") ? 1 : 0;
        return at + (passage.word(at).equals("of") && passage.word(at + 1).equals("them") ? 2 : 0);
    }

    private static List<String> names(List<PlaceSaid> places) {
        return places.stream().map(PlaceSaid::name).sorted().toList();
    }

    private static Told at(Told told, List<PlaceSaid> places) {
        return told.event().what() == What.HARVESTED
                ? told
                : told.with(told.event().withPlace(first(places, false), first(places, true)));
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
