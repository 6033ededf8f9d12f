package bothy.advice;

import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Logged;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The diary of a plot sorted by what its lines tell, once for all plantings.
 *
 * @param events what happened
 * @param rains the days of rain told
 * @param notes notes in the grower's own words that have a day
 * @param signs signs of trouble
 * @param findings what closer looks found
 */
record PlotDiary(
        List<Event> events, List<LocalDate> rains, List<Event> notes, List<SignSeen> signs, List<Finding> findings) {

    /** What a note tells as seen or done on its day: part of the season, no lesson of it. The details of notes in words/actions.yaml. */
    static final Set<String> OF_THE_DAY = Set.of(
            "runners pegged down",
            "haulms cut",
            "pinched out",
            "pruned",
            "given away",
            "pollinated",
            "new leaves",
            "true leaves",
            "scapes",
            "store sound");

    static PlotDiary of(Garden garden) {
        List<Event> events = garden.events();
        return new PlotDiary(
                events,
                events.stream()
                        .filter(event -> event.what() == What.RAIN && event.on() != null)
                        .map(Event::on)
                        .toList(),
                events.stream()
                        .filter(event -> event.what() == What.NOTE && event.detail() != null && event.on() != null)
                        .filter(event -> !OF_THE_DAY.contains(event.detail()))
                        .toList(),
                garden.signs(),
                garden.standing().stream()
                        .map(Logged::entry)
                        .filter(Finding.class::isInstance)
                        .map(Finding.class::cast)
                        .toList());
    }

    /** Temperatures of the soil that were told of no planting and no place, with their day. */
    List<Event> soilTemperatures() {
        return events.stream()
                .filter(event -> event.what() == What.TEMPERATURE
                        && event.planting() == null
                        && event.place() == null
                        && "soil".equals(event.detail())
                        && "°C".equals(event.unit())
                        && event.amount() != null
                        && event.on() != null)
                .toList();
    }

    /** The events of each planting by its id. */
    Map<String, List<Event>> byPlanting() {
        Map<String, List<Event>> sorted = new LinkedHashMap<>();
        for (Event event : events) {
            if (event.planting() != null) {
                sorted.computeIfAbsent(event.planting(), id -> new ArrayList<>())
                        .add(event);
            }
        }
        return sorted;
    }
}
