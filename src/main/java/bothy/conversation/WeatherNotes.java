package bothy.conversation;

import bothy.garden.Given;
import bothy.garden.Given.Because;
import bothy.garden.Grower;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Reply;
import bothy.replying.Replier;
import bothy.weather.WeatherSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is said of the weather's source: whom to thank for a forecast that was named, and that the source is silent just now. */
final class WeatherNotes {
    private static final Set<String> FORECAST = Set.of(
            "WeatherDay", "NightRisk", "BlightSpell", "FruitSetHindered", "WindAhead", "DryThenWet", "ForecastAhead");
    private static final Set<Question> ON_WEATHER = Set.of(
            Question.HOW_MUCH_WATER, Question.WHEN_WATER, Question.TO_DO, Question.SAFE, Question.WHEN_PLANT_OUT);

    private WeatherNotes() {}

    /** The reply with the notes that it needs. */
    static Reply under(
            Reply reply,
            List<Given> spoken,
            List<Inquiry> inquiries,
            Grower grower,
            WeatherSource source,
            Replier replier) {
        boolean named = spoken.stream().anyMatch(given -> rests(given.because()));
        boolean asked = inquiries.stream().anyMatch(WeatherNotes::asksForecast);
        boolean wanted =
                named || asked || inquiries.stream().anyMatch(inquiry -> ON_WEATHER.contains(inquiry.question()));
        Optional<String> credit = named
                ? source.credit().map(whom -> replier.talk("weather-credit", Map.of("whom", whom)))
                : Optional.empty();
        Optional<String> trouble = wanted
                ? source.trouble(grower).map(why -> replier.talk("weather-trouble", Map.of("why", why)))
                : Optional.empty();
        // Only a real source wants to know where; without one the place would not help.
        boolean placeless = asked && source.slow() && (grower.latitude() == null || grower.longitude() == null);
        String text = reply.text()
                + (placeless ? "\n\n" + replier.talk("weather-place-wanted") : "")
                + trouble.map(note -> "\n\n" + note).orElse("")
                + credit.map(note -> "\n\n" + note).orElse("");
        return new Reply(text, reply.buttons());
    }

    private static boolean asksForecast(Inquiry inquiry) {
        return inquiry.topic() != null && inquiry.topic().startsWith("forecast");
    }

    private static boolean rests(Because because) {
        return because.known().stream().anyMatch(known -> FORECAST.contains(known.kind()))
                || because.from().stream().anyMatch(WeatherNotes::rests);
    }
}
