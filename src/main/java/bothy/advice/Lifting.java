package bothy.advice;

import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** When the most of a planting was lifted: a bulb pulled to see how far they are leaves the others growing. */
final class Lifting {
    /** Of a planting of unknown size so few are pulled to see, or for one meal. Common practice. */
    private static final int FOR_A_MEAL = 2;

    private Lifting() {}

    /**
     * The day on which what was harvested came to half of what stands, or to more than a meal where that is not known.
     *
     * @param events events of the planting by day
     */
    static Optional<LocalDate> of(Planting planting, List<Event> events) {
        Integer standing = planting.count() == null ? planting.sown() : planting.count();
        int lifted = 0;
        for (Event event : events) {
            if (event.what() != What.HARVESTED) {
                continue;
            }
            if (event.count() == null || "last".equals(event.detail())) {
                return Optional.of(event.on());
            }
            lifted += event.count();
            if (standing == null ? lifted > FOR_A_MEAL : 2 * lifted >= standing) {
                return Optional.of(event.on());
            }
        }
        return Optional.empty();
    }
}
