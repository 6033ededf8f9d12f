package bothy.reading.told;

import bothy.garden.What;
import java.util.List;
import java.util.Set;

/** What weather and its work on the plants take from each other when one message tells of both. */
final class OfTheWeather {
    private static final Set<What> WEATHER = Set.of(What.FROST, What.RAIN);

    private OfTheWeather() {}

    static void settle(List<Told> told) {
        told.removeIf(one -> toldBefore(one, told) || measuredBeside(one, told));
        told.replaceAll(one -> onItsDay(measuredApart(one, told), told));
    }

    /** "Frost on the 2nd, white over by six": one frost, whose day is told once. */
    private static boolean toldBefore(Told frost, List<Told> told) {
        return frost.event().what() == What.FROST
                && frost.assumed().contains("date")
                && told.stream()
                        .anyMatch(one -> one.event().what() == What.FROST
                                && one.open() == null
                                && !one.assumed().contains("date"));
    }

    /** "Rain came at last, 30 mm on Wednesday": one rain, measured and dated once. */
    private static boolean measuredBeside(Told rain, List<Told> told) {
        return rain.event().what() == What.RAIN
                && rain.event().amount() == null
                && rain.assumed().contains("date")
                && told.stream()
                        .anyMatch(one -> one.event().what() == What.RAIN
                                && one.open() == null
                                && one.event().amount() != null);
    }

    /** "Ground frost last night, cold frame got down to 1 °C": the degrees are those of the frame. */
    private static Told measuredApart(Told frost, List<Told> told) {
        boolean apart = frost.event().what() == What.FROST
                && frost.event().amount() != null
                && told.stream()
                        .anyMatch(one -> one.event().what() == What.TEMPERATURE
                                && one.event().place() != null
                                && frost.event().amount().equals(one.event().amount()));
        return apart ? frost.with(frost.event().withAmount(null, null)) : frost;
    }

    /** "Frost on the 20th killed seven", "a storm yesterday, and the hail took two": lost on the day of the weather. */
    private static Told onItsDay(Told lost, List<Told> told) {
        if (lost.event().what() != What.DIED || !lost.assumed().contains("date")) {
            return lost;
        }
        return told.stream()
                .filter(one -> WEATHER.contains(one.event().what())
                        && one.open() == null
                        && !one.assumed().contains("date")
                        && one.from() <= lost.to())
                .findFirst()
                .map(weather -> lost.with(lost.event().withOn(weather.event().on())))
                .orElse(lost);
    }
}
