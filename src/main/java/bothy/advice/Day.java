package bothy.advice;

import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Inquiry;
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
 */
public record Day(
        LocalDate today,
        Garden garden,
        List<Event> told,
        List<Inquiry> inquiries,
        List<SignSeen> signs,
        List<Plan> plans,
        List<WeatherDay> weather,
        List<Finding> findings) {

    public Day {
        findings = List.copyOf(findings);
        told = List.copyOf(told);
        inquiries = List.copyOf(inquiries);
        signs = List.copyOf(signs);
        plans = List.copyOf(plans);
        weather = List.copyOf(weather);
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

    /** A day on which nothing was said. */
    public static Day quiet(LocalDate today, Garden garden, List<WeatherDay> weather) {
        return new Day(today, garden, List.of(), List.of(), List.of(), List.of(), weather);
    }
}
