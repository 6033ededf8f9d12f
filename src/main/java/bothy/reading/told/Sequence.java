package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.What;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The order in which things happen to a planting: what cannot come after what was told before is asked about, not written. */
final class Sequence {
    private static final Set<What> YOUNG =
            EnumSet.of(What.EMERGED, What.PRICKED_OUT, What.POTTED_ON, What.HARDENING_STARTED, What.PLANTED_OUT);
    private static final Set<What> BORE = EnumSet.of(What.HARVESTED, What.CURED, What.STORED);
    private static final Set<What> GATHERED = EnumSet.of(What.HARVESTED, What.CURED, What.STORED);
    /** Nothing is picked sooner after sowing than cress or radish leaves, days; common practice. */
    private static final int SOONEST_PICK = 10;
    /** Fruit is not stored sooner after sowing than this, days; common practice. */
    private static final int SOONEST_STORE = 75;

    /** What has not shown by then, parsnips too, is up in another sense, days; common practice. */
    private static final int LONGEST_UNSEEN = 150;
    /** The same of garlic planted in October where snow lies until April, days; common practice. */
    private static final int LONGEST_UNSEEN_OVER_WINTER = 190;
    /** Where nothing was told since the sowing, days: until then what is put indoors are the plants; common practice. */
    private static final int SURELY_BORNE = 120;

    private Sequence() {}

    /**
     * Whether "them" can still be the plants of what was told just before: what was cut after putting up canes are canes, and nobody picks
     * what was sown a sentence ago.
     */
    static boolean follows(What earlier, What next) {
        return switch (earlier) {
            case SUPPORTED, PROTECTED -> !BORE.contains(next) && next != What.DIED;
            case SOWN ->
                !BORE.contains(next)
                        && !EnumSet.of(What.PLANTED_OUT, What.FRUIT_SET, What.FLOWERING)
                                .contains(next);
            case HARVESTED -> !YOUNG.contains(next) && next != What.SOWN;
            default -> true;
        };
    }

    /** "8 tomato seedlings on the sill, sowed on 6 March": what was sown before it was seen is one planting, begun by the sowing. */
    static List<Told> sownFirst(List<Told> told) {
        List<Told> ordered = new ArrayList<>();
        for (Told next : told) {
            int seen = next.event().what() == What.SOWN ? seenOf(next, ordered) : -1;
            if (seen < 0) {
                ordered.add(next);
            } else {
                Integer count = next.event().count();
                ordered.add(
                        seen,
                        next.with(next.event()
                                .withCount(
                                        count == null
                                                ? ordered.get(seen).event().count()
                                                : count)));
            }
        }
        return ordered;
    }

    private static int seenOf(Told sown, List<Told> before) {
        for (int at = 0; at < before.size(); at++) {
            Event event = before.get(at).event();
            boolean same = event.crop() != null
                    && event.crop().equals(sown.event().crop())
                    && before.get(at).plantings().isEmpty()
                    && sown.plantings().isEmpty();
            if (same
                    && event.what() == What.EMERGED
                    && event.on() != null
                    && sown.event().on() != null
                    && sown.event().on().isBefore(event.on().minusDays(Planting.SOONEST_UP_DAYS))) {
                return at;
            }
        }
        return -1;
    }

    /** Whether what was told may follow what the diary has of at least one of its plantings. */
    static boolean allows(Told told, Situation situation) {
        List<Planting> about = situation.plantings().stream()
                .filter(planting -> told.plantings().contains(planting.id()))
                .toList();
        return about.isEmpty() || about.stream().anyMatch(planting -> allows(told.event(), planting, situation));
    }

    private static boolean allows(Event event, Planting planting, Situation situation) {
        boolean tooLate = YOUNG.contains(event.what()) && situation.has(planting, BORE);
        boolean tooSoon = GATHERED.contains(event.what())
                && planting.start() == Planting.Start.SEED
                && planting.begun() != null
                && event.on() != null
                && event.on().isBefore(planting.begun().plusDays(SOONEST_PICK));
        boolean longUp = event.what() == What.EMERGED
                && planting.begun() != null
                && event.on() != null
                && event.on().isAfter(planting.begun().plusDays(longestUnseen(planting, situation)));
        return !tooLate && !tooSoon && !longUp;
    }

    /** What is planted in autumn may lie the whole winter through before it shows. */
    private static int longestUnseen(Planting planting, Situation situation) {
        int month = planting.begun().getMonthValue();
        boolean autumn = situation.grower().southern()
                ? Month.MARCH.getValue() <= month && month <= Month.JUNE.getValue()
                : month >= Month.SEPTEMBER.getValue();
        return autumn ? LONGEST_UNSEEN_OVER_WINTER : LONGEST_UNSEEN;
    }

    /** Whether a planting has borne, so that what is put indoors is its crop and not the plants. */
    static boolean borne(Planting planting, Situation situation) {
        boolean told = situation.has(planting, EnumSet.of(What.HARVESTED, What.CURED, What.STORED, What.COLOUR_TURNED));
        int least =
                situation.has(planting, EnumSet.of(What.PLANTED_OUT, What.FLOWERING)) ? SOONEST_STORE : SURELY_BORNE;
        return told
                || planting.begun() != null
                        && situation.today().isAfter(planting.begun().plusDays(least));
    }
}
