package bothy.diary;

import bothy.garden.Event;
import bothy.garden.Perennials;
import bothy.garden.Planting;
import bothy.garden.Planting.Start;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** What the events of one planting make of it. */
final class PlantingStory {
    /** Events that put the plants somewhere; a picking in the kitchen does not. */
    private static final Set<What> PLACING =
            Set.of(What.SOWN, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT, What.MOVED, What.EMERGED);
    /** Events that tell how many plants there are. */
    private static final Set<What> COUNTING = Set.of(What.EMERGED, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT);
    /** After the last picking the planting may still be cured and stored; with nothing told for so long it is over. */
    private static final int REST_DAYS = 45;
    /** The longest home season, garlic from setting to the end of its store, takes less. */
    private static final int LONGEST_DAYS = 600;
    /** A bed of these of which nothing was told for so long is taken to be gone. */
    private static final int FORGOTTEN_DAYS = 800;

    private final String id;
    private final List<Event> events;

    PlantingStory(String id, List<Event> events) {
        this.id = id;
        this.events = events.stream()
                .sorted(Comparator.comparing(Event::on, Comparator.nullsFirst(Comparator.naturalOrder())))
                .toList();
    }

    Planting planting(LocalDate day) {
        String variety = null;
        String place = null;
        String container = null;
        Integer count = null;
        Integer sown = null;
        for (Event event : events) {
            variety = event.variety() == null ? variety : event.variety();
            if (PLACING.contains(event.what())) {
                // What was chitted on a windowsill is no longer there when it is planted.
                boolean moves = event.what() == What.PLANTED_OUT || event.what() == What.SOWN;
                place = event.place() != null ? event.place() : moves ? null : place;
                container = event.container() != null ? event.container() : moves ? null : container;
            }
            if (event.what() == What.SOWN && event.count() != null) {
                sown = (sown == null ? 0 : sown) + event.count();
            }
            count = counted(count, sown, event);
        }
        String crop = events.stream()
                .map(Event::crop)
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElseGet(() -> Replay.cropOf(id));
        return new Planting(id, crop, variety, place, container, start(), begun(), count, sown, ended(day, count));
    }

    private static Integer counted(Integer count, Integer sown, Event event) {
        if (COUNTING.contains(event.what()) && event.count() != null) {
            if (Event.MORE.equals(event.detail()) && count != null) {
                return count + event.count();
            }
            return event.count();
        }
        if (event.what() == What.DIED && event.count() != null) {
            Integer before = count != null ? count : sown;
            return before == null ? null : Math.max(0, before - event.count());
        }
        return count;
    }

    private Start start() {
        return events.stream().anyMatch(event -> event.what() == What.SOWN) ? Start.SEED : Start.PLANT;
    }

    private LocalDate begun() {
        return events.stream()
                .filter(event -> event.what() == What.SOWN || event.what() == What.PLANTED_OUT)
                .map(Event::on)
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private LocalDate ended(LocalDate day, Integer count) {
        // A note on what is over does not begin it anew.
        Event last = events.stream()
                .filter(event -> event.what() != What.NOTE)
                .reduce((earlier, later) -> later)
                .orElse(events.get(0));
        for (Event event : events) {
            boolean allDied = event.what() == What.DIED
                    && (event.count() == null ? !Event.SOME.equals(event.detail()) : count != null && count == 0);
            if (allDied && event.on() != null) {
                return event.on();
            }
        }
        if (Perennials.has(Replay.cropOf(id))) {
            LocalDate heardOf = last.on() == null ? begun() : last.on();
            return heardOf != null && heardOf.plusDays(FORGOTTEN_DAYS).isBefore(day) ? heardOf : null;
        }
        boolean cleared = last.what() == What.HARVESTED && "last".equals(last.detail()) && last.on() != null;
        if (cleared && last.on().plusDays(REST_DAYS).isBefore(day)) {
            return last.on();
        }
        LocalDate begun = begun();
        return begun != null && begun.plusDays(LONGEST_DAYS).isBefore(day) ? begun.plusDays(LONGEST_DAYS) : null;
    }
}
