package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.ForecastServer;
import bothy.weather.Forecasts;
import bothy.weather.NorwegianForecast;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A chat with a forecast service on loopback that speaks the published format of Locationforecast 2.0. */
class ForecastInAChatTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final String GROWER = "terminal:me";
    private static Knowledge made;

    @TempDir
    Path folder;

    private ForecastServer server;
    private Store store;
    private Instant now = Instant.parse("2027-05-20T09:00:00Z");
    private int messages;

    @BeforeAll
    static void read_the_rules() {
        made = Workshop.knowledge(RulesFolder.at(Path.of("rules")), null, WeatherSource.none());
    }

    @BeforeEach
    void open() {
        server = new ForecastServer();
        store = Shelf.open(folder.resolve("diary.db").toString());
    }

    @AfterEach
    void close() {
        store.close();
        server.close();
    }

    @Test
    void nothing_is_asked_until_the_place_is_known() {
        tell(service(), "planted out 6 cucumbers today");

        assertThat(server.asked).isEmpty();
    }

    @Test
    void a_forecast_frost_is_told_with_the_credit_that_its_licence_asks_for() {
        WeatherSource service = service();
        server.then(forecastWithFrostOnThe22nd());
        tell(service, "planted out 6 cucumbers in the bed on 10 May");
        tell(service, "I live in Leeds");

        String reply = tell(service, "what do I do this week?");

        assertThat(reply).contains("frost by Sat 22 May").endsWith("Forecast: MET Norway, CC BY 4.0.");
        assertThat(server.asked).hasSize(1);
        assertThat(server.asked.get(0).headers().getFirst("User-Agent"))
                .isEqualTo("school-plot-bot/1 garden@example.org");
    }

    @Test
    void with_the_service_down_advice_goes_on_and_says_so() {
        WeatherSource service = service();
        server.then(ForecastServer.status(500, Map.of(), new byte[0]));
        tell(service, "planted out 6 tomatoes in the bed on 1 May");
        tell(service, "I live in Leeds");

        String reply = tell(service, "how much water do the tomatoes need?");

        assertThat(reply)
                .contains("litres a plant")
                .contains(
                        "I have no fresh forecast, the forecast service is out of order just now, and go by what I know.");
    }

    @Test
    void days_past_outlive_a_restart_without_the_service() {
        server.then(forecastWithFrostOnThe22nd());
        WeatherSource service = service();
        tell(service, "I live in Leeds");
        now = Instant.parse("2027-05-23T09:00:00Z");
        tell(service, "planted out 6 tomatoes in the bed");
        store.close();
        store = Shelf.open(folder.resolve("diary.db").toString());

        assertThat(store.<Integer>write(GROWER, page -> page.weather("53.80 -1.50", LocalDate.of(2027, 5, 1))
                        .size()))
                .isEqualTo(4); // 20, 21 and 22 May, and the 23rd as far as it was forecast
    }

    @Test
    void a_forecast_outlives_a_restart_while_the_service_is_down() {
        server.then(forecastWithFrostOnThe22nd());
        WeatherSource before = service();
        tell(before, "I live in Leeds");
        tell(before, "planted out 6 tomatoes in the bed");
        store.close();
        store = Shelf.open(folder.resolve("diary.db").toString());
        server.then(ForecastServer.status(500, Map.of(), new byte[0]));

        String reply = tell(service(), "any frost coming?");

        assertThat(reply)
                .contains("0 °C is forecast before the morning of Sat 22 May")
                .contains("I have no fresh forecast");
    }

    /** Hours from the morning of the 20th on: 12 °C, on the night to the 22nd 0 °C. */
    private static ForecastServer.Answer forecastWithFrostOnThe22nd() {
        String json = Forecasts.from("2027-05-19T23:00:00Z")
                .hours(24 * 2, 12, 60, 3, 0)
                .hours(6, 0, 80, 2, 0)
                .hours(24, 14, 60, 3, 0)
                .json();
        return ForecastServer.forecast(json, "Thu, 20 May 2027 10:00:00 GMT", "Thu, 20 May 2027 08:00:00 GMT");
    }

    private WeatherSource service() {
        return new NorwegianForecast(
                server.address(), "school-plot-bot/1 garden@example.org", Duration.ofSeconds(5), () -> now);
    }

    private String tell(WeatherSource weather, String text) {
        Knowledge knowledge = new Knowledge(made.reading(), made.advisor(), made.replier(), made.sheets(), weather);
        return new Conversation(store, knowledge)
                .handle(Message.text("m" + messages++, GROWER, now, ZONE, text), null)
                .orElseThrow()
                .reply()
                .text();
    }
}
