package bothy.advice;

import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Inquiry;
import bothy.garden.Normals;
import bothy.garden.Plan;
import bothy.garden.SignSeen;
import bothy.garden.WeatherDay;
import java.time.LocalDate;
import java.util.List;

/**
 * What one run of the rules is about.
 *
 * @param today the grower's day
 * @param garden the plot as the diary tells it, what was just told included
 * @param told the events that the message at hand told
 * @param inquiries what it asked
 * @param signs the signs of trouble it told
 * @param plans what the grower means to do
 * @param weather days observed and forecast
 * @param findings what it told of a closer look at a trouble
 * @param normals what is normal at the place by a station's record, {@code null} when none was taken in
 * @param whole whether all that grows is looked at, rather than what the message is about
 */
public record Day(
        LocalDate today,
        Garden garden,
        List<Event> told,
        List<Inquiry> inquiries,
        List<SignSeen> signs,
        List<Plan> plans,
        List<WeatherDay> weather,
        List<Finding> findings,
        Normals normals,
        boolean whole) {

    public Day {
        findings = List.copyOf(findings);
        told = List.copyOf(told);
        inquiries = List.copyOf(inquiries);
        signs = List.copyOf(signs);
        plans = List.copyOf(plans);
        weather = List.copyOf(weather);
    }

    /** A day at a place of which no station's record is known. */
    public Day(
            LocalDate today,
            Garden garden,
            List<Event> told,
            List<Inquiry> inquiries,
            List<SignSeen> signs,
            List<Plan> plans,
            List<WeatherDay> weather,
            List<Finding> findings) {
        this(today, garden, told, inquiries, signs, plans, weather, findings, null, false);
    }

    /** A day on which nothing was found on a closer look. */
    public Day(
            LocalDate today,
            Garden garden,
            List<Event> told,
            List<Inquiry> inquiries,
            List<SignSeen> signs,
            List<Plan> plans,
            List<WeatherDay> weather) {
        this(today, garden, told, inquiries, signs, plans, weather, List.of());
    }

    /** A day on which nothing was said: all that stands is looked at. */
    public static Day quiet(LocalDate today, Garden garden, List<WeatherDay> weather) {
        return new Day(today, garden, List.of(), List.of(), List.of(), List.of(), weather, List.of(), null, true);
    }

    /** The same day at a place of which a station's record makes something normal. */
    public Day at(Normals place) {
        return new Day(today, garden, told, inquiries, signs, plans, weather, findings, place, whole);
    }
}
