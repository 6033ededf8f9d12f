package bothy.garden;

import java.util.List;
import java.util.Objects;

/**
 * What several pickings add up to.
 *
 * @param kg kilograms of those that were weighed, {@code null} when none was
 * @param pieces of those that were counted, {@code null} when none was
 * @param weighed how many were weighed
 * @param counted how many were counted
 */
public record Picked(Double kg, Integer pieces, int weighed, int counted) {

    /** Adds up the pickings among some events. */
    public static Picked in(List<Event> events) {
        List<Event> picked =
                events.stream().filter(event -> event.what() == What.HARVESTED).toList();
        List<Double> weights = picked.stream()
                .filter(event -> "kg".equals(event.unit()))
                .map(Event::amount)
                .filter(Objects::nonNull)
                .toList();
        List<Integer> counts =
                picked.stream().map(Event::count).filter(Objects::nonNull).toList();
        Double kg = weights.stream().reduce(Double::sum).orElse(null);
        return new Picked(kg, counts.stream().reduce(Integer::sum).orElse(null), weights.size(), counts.size());
    }
}
