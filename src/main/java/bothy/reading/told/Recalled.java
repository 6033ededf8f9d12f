package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** A sowing that the diary has and that is only told again, to say what is wrong: "the carrots I sowed 3 weeks ago have not come up". */
public final class Recalled {
    private static final int DAYS_OF_A_WEEK = 7;

    private Recalled() {}

    /** What a message about a trouble tells, without the sowings that the diary has. */
    public static List<Told> without(List<Told> told, Situation situation) {
        return told.stream()
                .filter(one -> situation.plantings().stream()
                        .noneMatch(planting -> same(one.event(), planting, situation.today())))
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
}
