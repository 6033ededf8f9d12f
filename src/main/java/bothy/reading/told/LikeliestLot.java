package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.What;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Which of several lots of a crop can be meant, by how far each is: only one can come up, be planted out or be dug. */
final class LikeliestLot {
    private static final Set<String> CHITTED = Set.of("potato");
    private static final Set<What> SHOWN = EnumSet.of(What.EMERGED, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT);
    private static final Set<What> BORE = EnumSet.of(What.HARVESTED, What.CURED, What.STORED);
    /** Nothing shows sooner after sowing, days; common practice. */
    private static final int SOONEST_UP = 3;
    /** Where one lot is as old as this and the other is not, the older is picked or in flower, days; common practice. */
    private static final int OLD_ENOUGH = 60;

    private LikeliestLot() {}

    /** Those that what was told can be about; all when it can be several or none. */
    static List<Planting> of(Event event, List<Planting> lots, Situation situation) {
        List<Planting> left =
                switch (event.what()) {
                    case EMERGED ->
                        only(
                                only(lots, lot -> old(lot, SOONEST_UP, situation)),
                                lot -> !situation.has(lot, SHOWN) && !situation.has(lot, BORE));
                    case PLANTED_OUT, HARDENING_STARTED, POTTED_ON, PRICKED_OUT ->
                        only(lots, lot -> !situation.has(lot, EnumSet.of(What.PLANTED_OUT)));
                    case HARVESTED -> oldest(only(lots, lot -> old(lot, OLD_ENOUGH, situation)));
                    case FLOWERING, FRUIT_SET, COLOUR_TURNED -> only(lots, lot -> old(lot, OLD_ENOUGH, situation));
                    default -> lots;
                };
        return left.size() == 1 ? left : lots;
    }

    /** Of sowings of one kind made after another the first is picked first. */
    private static List<Planting> oldest(List<Planting> lots) {
        boolean oneKind = lots.stream().map(Planting::variety).distinct().count() == 1
                && lots.stream().map(Planting::crop).distinct().count() == 1
                && lots.stream().allMatch(lot -> lot.begun() != null)
                && lots.stream().map(Planting::begun).distinct().count() == lots.size();
        return oneKind
                ? lots.stream().min(Comparator.comparing(Planting::begun)).stream()
                        .toList()
                : lots;
    }

    /** Seed potatoes that chit are what is planted next; empty when none do or another kind was named. */
    static List<Planting> chitted(Event sown, Situation situation) {
        if (!CHITTED.contains(sown.crop())) {
            return List.of();
        }
        List<Planting> chitting = PlantingsMeant.growing(situation).stream()
                .filter(lot -> lot.crop().equals(sown.crop()) && lot.begun() == null)
                .filter(lot -> situation.has(lot, EnumSet.of(What.MOVED)) && !situation.has(lot, SHOWN))
                .toList();
        List<Planting> named = chitting.stream()
                .filter(lot ->
                        sown.variety() == null || lot.variety() == null || PlantingsMeant.called(lot, sown.variety()))
                .toList();
        return named.size() > 1 ? named.subList(0, 1) : named;
    }

    private static boolean old(Planting lot, int days, Situation situation) {
        return lot.begun() != null && !lot.begun().plusDays(days).isAfter(situation.today());
    }

    private static List<Planting> only(List<Planting> lots, Predicate<Planting> can) {
        return PlantingsMeant.keep(lots, can);
    }
}
