package bothy.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One grower's plot as the diary tells it on one day: derived, never stored.
 *
 * @param grower who it belongs to
 * @param day the day up to which the diary was replayed
 * @param plantings all plantings ever begun, oldest first, the ended ones too
 * @param standing the diary lines that hold, corrections worked in (each line keeps its own number), oldest first
 */
public record Garden(Grower grower, LocalDate day, List<Planting> plantings, List<Logged> standing) {

    public Garden {
        plantings = List.copyOf(plantings);
        standing = List.copyOf(standing);
    }

    public Optional<Planting> planting(String id) {
        return plantings.stream().filter(planting -> planting.id().equals(id)).findFirst();
    }

    /** The plantings that are not over. */
    public List<Planting> growing() {
        return plantings.stream().filter(planting -> !planting.over()).toList();
    }

    /** The events that hold, oldest day first as told. */
    public List<Event> events() {
        return standing.stream()
                .map(Logged::entry)
                .filter(Event.class::isInstance)
                .map(Event.class::cast)
                .toList();
    }

    /** The signs of trouble that hold. */
    public List<SignSeen> signs() {
        return standing.stream()
                .map(Logged::entry)
                .filter(SignSeen.class::isInstance)
                .map(SignSeen.class::cast)
                .toList();
    }

    /** What the diary tells of each planting, by its id. */
    public Map<String, Set<What>> happened() {
        return events().stream()
                .filter(event -> event.planting() != null)
                .collect(Collectors.groupingBy(Event::planting, Collectors.mapping(Event::what, Collectors.toSet())));
    }
}
