package bothy.advice.reckoning;

import bothy.advice.facts.Frosts;
import bothy.advice.facts.Latest;
import bothy.advice.facts.Outlook;
import bothy.advice.facts.Stands;
import bothy.advice.facts.Warmth;
import bothy.almanac.Climates;
import bothy.almanac.Sheet;
import bothy.garden.Event;
import bothy.garden.Grower;
import bothy.garden.Inquiry;
import bothy.garden.Normals;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One planting with all that its figures are reckoned from.
 *
 * @param planting the planting, or the crop asked about that is still in its packet
 * @param sheet its crop's sheet
 * @param events its events up to today, oldest first
 * @param plotEvents events of the whole plot
 * @param latest the last time of each kind of event
 * @param outlooks what is to be expected when
 * @param warmth {@code null} when not known
 * @param weather days observed and forecast, in order, each day once
 * @param inquiries what the message at hand asks about it
 * @param signs the signs that the message tells of it, and earlier ones after which nothing came up
 * @param findings what was last found of it on a closer look, by what was asked
 * @param normals what a station's record makes normal at the place, {@code null} when none was taken in
 * @param place what is usual there, as far as it is known
 */
public record Subject(
        LocalDate today,
        Grower grower,
        Planting planting,
        Sheet sheet,
        List<Event> events,
        List<Event> plotEvents,
        Map<What, Latest> latest,
        List<Outlook> outlooks,
        Stands stands,
        Warmth warmth,
        Frosts frosts,
        List<WeatherDay> weather,
        List<Inquiry> inquiries,
        List<SignSeen> signs,
        Map<String, String> findings,
        Normals normals,
        Climates.Usual place) {

    String id() {
        return planting.id();
    }

    Optional<Latest> last(What what) {
        return Optional.ofNullable(latest.get(what));
    }

    Optional<Outlook> outlook(What what, String... ways) {
        List<String> wanted = List.of(ways);
        return outlooks.stream()
                .filter(one -> one.what() == what && (wanted.isEmpty() || wanted.contains(one.how())))
                .findFirst();
    }

    Optional<Inquiry> asked(Question question) {
        return inquiries.stream()
                .filter(inquiry -> inquiry.question() == question)
                .findFirst();
    }

    Optional<WeatherDay> weatherOn(LocalDate day) {
        return weather.stream().filter(one -> one.date().equals(day)).findFirst();
    }
}
