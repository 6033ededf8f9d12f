package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** A sowing or planting that the diary has and that is only told again, to say what is wrong: "the carrots I sowed 3 weeks ago have not come up". */
public final class Recalled {
    private static final int DAYS_OF_A_WEEK = 7;
    private static final int A_FEW_DAYS = 3;

    private Recalled() {}

    /** What a message about a trouble tells, without the sowings and plantings that the diary has. */
    public static List<Told> without(List<Told> told, Situation situation) {
        return told.stream()
                .filter(one -> situation.plantings().stream()
                        .noneMatch(planting ->
                                same(one.event(), planting, situation.today()) || plantedOut(one.event(), situation)))
                .toList();
    }

    /** So many weeks ago, told from memory, are right to as many days. */
    private static boolean same(Event event, Planting planting, LocalDate today) {
        if (event.what() != What.SOWN
                || event.on() == null
                || planting.begun() == null
                || planting.over()
                || !planting.crop().equals(event.crop())
                || event.count() != null && !event.count().equals(planting.sown())) {
            return false;
        }
        long ago = ChronoUnit.DAYS.between(event.on(), today);
        long off = Math.abs(ChronoUnit.DAYS.between(event.on(), planting.begun()));
        return ago > 0 && off <= ago / DAYS_OF_A_WEEK;
    }

    /** "The seedlings I planted last weekend": the diary has the planting, to a few days. */
    private static boolean plantedOut(Event event, Situation situation) {
        return event.what() == What.PLANTED_OUT
                && event.on() != null
                && event.on().isBefore(situation.today())
                && situation.earlier().stream()
                        .map(Logged::entry)
                        .anyMatch(entry -> entry instanceof Event known
                                && known.what() == What.PLANTED_OUT
                                && known.on() != null
                                && known.planting() != null
                                && known.planting().equals(event.planting())
                                && Math.abs(ChronoUnit.DAYS.between(event.on(), known.on())) <= A_FEW_DAYS);
    }
}
