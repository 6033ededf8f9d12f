package bothy;

import bothy.weather.NorwegianForecast;
import bothy.weather.WeatherSource;
import java.net.URI;
import java.time.Duration;
import java.time.InstantSource;
import picocli.CommandLine.Option;

/** Which forecast to use. None unless one is named; and nothing is asked for a grower whose place is not known. */
final class WeatherOption {
    /** The longest that a message waits for a forecast. */
    private static final Duration PATIENCE = Duration.ofSeconds(4);

    @Option(
            names = "--weather",
            paramLabel = "ADDRESS",
            defaultValue = "${env:BOTHY_WEATHER}",
            description =
                    "Forecast service that speaks Locationforecast 2.0 of MET Norway, ending in a slash, or \"met\" for "
                            + "theirs (default: BOTHY_WEATHER, else none). It is asked only for growers who told their place, and not with --today or --demo: it is of the real "
                            + "days.")
    private String address;

    @Option(
            names = "--weather-contact",
            paramLabel = "NAME",
            defaultValue = "${env:BOTHY_WEATHER_CONTACT}",
            description = "Name with an e-mail or web address that the service is called with, as its terms ask, as "
                    + "\"school-plot-bot/1 garden@example.org\" (default: BOTHY_WEATHER_CONTACT).")
    private String contact;

    /** @throws Complaints.MisUse when the service is named and the contact is not, or the address is none */
    WeatherSource source(InstantSource clock) {
        if (!named()) {
            return WeatherSource.none();
        }
        if (contact == null || contact.isBlank()) {
            throw new Complaints.MisUse(
                    "A forecast service wants to know who asks. Add a name with an e-mail or web address: "
                            + "--weather-contact \"school-plot-bot/1 garden@example.org\", or BOTHY_WEATHER_CONTACT.");
        }
        try {
            return new NorwegianForecast(service(), contact, PATIENCE, clock);
        } catch (IllegalArgumentException wrong) {
            throw new Complaints.MisUse("The forecast cannot be used: " + wrong.getMessage()
                    + ". Name both: --weather met --weather-contact \"school-plot-bot/1 garden@example.org\".");
        }
    }

    boolean named() {
        return address != null && !address.isBlank();
    }

    private URI service() {
        if (address.strip().equals("met")) {
            return NorwegianForecast.SERVICE;
        }
        String text = address.strip();
        URI service = URI.create(text.endsWith("/") ? text : text + "/");
        if (service.getHost() == null || !String.valueOf(service.getScheme()).matches("https?")) {
            throw new IllegalArgumentException("\"" + text + "\" is no http address");
        }
        return service;
    }
}
