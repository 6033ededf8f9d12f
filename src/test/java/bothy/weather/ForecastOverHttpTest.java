package bothy.weather;

import static bothy.weather.ForecastServer.afterMillis;
import static bothy.weather.ForecastServer.body;
import static bothy.weather.ForecastServer.cutOff;
import static bothy.weather.ForecastServer.forecast;
import static bothy.weather.ForecastServer.packed;
import static bothy.weather.ForecastServer.status;
import static bothy.weather.ForecastServer.trickle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.garden.Grower;
import bothy.garden.Units;
import bothy.garden.WeatherDay;
import bothy.weather.ForecastServer.Answer;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The forecast service on loopback: its terms kept, its refusals respected, its failures survived. No other host is called. */
@Timeout(20)
class ForecastOverHttpTest {
    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static final Grower GROWER = grower(59.913868, 10.752245);
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 1);
    private static final String MODIFIED = "Sat, 01 May 2027 04:10:11 GMT";
    private static final String WARM = day(14).json();
    private static final WeatherDay WARM_DAY = new WeatherDay(TODAY, 14.0, 14.0, 2.4, false, 0.0, 2.0);

    private final ForecastServer server = new ForecastServer();
    private Instant now = Instant.parse("2027-05-01T05:00:00Z");
    private final NorwegianForecast source = new NorwegianForecast(
            server.address(), "school-plot-bot/1 garden@example.org", Duration.ofMillis(700), () -> now);

    private static Grower grower(Double latitude, Double longitude) {
        return new Grower(OSLO, latitude, longitude, null, null, Units.METRIC, null, false);
    }

    /** The whole of 1 May in Oslo. */
    private static Forecasts day(double tempC) {
        return Forecasts.from("2027-04-30T22:00:00Z").hours(24, tempC, 50, 2, 0.1);
    }

    private static Answer good(String expires) {
        return forecast(WARM, expires, MODIFIED);
    }

    private List<WeatherDay> ask() {
        return source.around(GROWER, TODAY);
    }

    private void later(Duration time) {
        now = now.plus(time);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void the_caller_names_itself_and_asks_for_a_rounded_place() {
        server.then(good("Sat, 01 May 2027 06:00:00 GMT"));

        assertThat(ask()).containsExactly(WARM_DAY);

        ForecastServer.Asked asked = server.asked.get(0);
        assertThat(asked.path()).isEqualTo("/weatherapi/locationforecast/2.0/complete?lat=59.91&lon=10.75");
        assertThat(asked.headers().getFirst("User-Agent")).isEqualTo("school-plot-bot/1 garden@example.org");
        assertThat(asked.headers().getFirst("Accept-Encoding")).isEqualTo("gzip");
        assertThat(asked.headers().getFirst("If-Modified-Since")).isNull();
        assertThat(source.trouble(GROWER)).isEmpty();
    }

    @Test
    void a_packed_forecast_is_unpacked() {
        server.then(packed(WARM));

        assertThat(ask()).containsExactly(WARM_DAY);
    }

    @Test
    void until_it_is_stale_a_forecast_is_not_asked_for_again() {
        server.then(good("Sat, 01 May 2027 06:00:00 GMT"));
        ask();

        later(Duration.ofMinutes(59));

        assertThat(ask()).containsExactly(WARM_DAY);
        assertThat(server.asked).hasSize(1);
    }

    @Test
    void neighbours_share_a_forecast() {
        server.then(good("Sat, 01 May 2027 06:00:00 GMT"));
        ask();

        assertThat(source.around(grower(59.9099, 10.7501), TODAY)).containsExactly(WARM_DAY);
        assertThat(server.asked).hasSize(1);
    }

    @Test
    void a_stale_forecast_is_asked_for_with_the_time_of_the_last_one_and_kept_when_nothing_changed() {
        server.then(good("Sat, 01 May 2027 06:00:00 GMT"))
                .then(status(304, Map.of("Expires", "Sat, 01 May 2027 08:00:00 GMT"), new byte[0]));
        ask();
        later(Duration.ofHours(1));

        assertThat(ask()).containsExactly(WARM_DAY);
        assertThat(server.asked.get(1).headers().getFirst("If-Modified-Since")).isEqualTo(MODIFIED);

        later(Duration.ofMinutes(119));
        ask();
        assertThat(server.asked).hasSize(2);
        assertThat(source.trouble(GROWER)).isEmpty();
    }

    @Test
    void a_changed_forecast_replaces_the_old_one() {
        server.then(good("Sat, 01 May 2027 06:00:00 GMT"))
                .then(forecast(day(9).json(), "Sat, 01 May 2027 07:00:00 GMT", "Sat, 01 May 2027 05:10:11 GMT"));
        ask();
        later(Duration.ofHours(1));

        assertThat(ask()).extracting(WeatherDay::tmax).containsExactly(9.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "yesterday", "Sat, 01 May 2027 05:00:01 GMT", "Thu, 01 Jan 1970 00:00:00 GMT"})
    void without_a_sensible_time_of_staleness_ten_minutes_are_waited(String expires) {
        server.then(good(expires)).then(good(expires));
        ask();

        later(Duration.ofMinutes(9));
        ask();
        assertThat(server.asked).hasSize(1);

        later(Duration.ofMinutes(1));
        ask();
        assertThat(server.asked).hasSize(2);
    }

    @Test
    void a_version_to_be_withdrawn_still_gives_its_forecast() {
        server.then(status(203, Map.of(), WARM.getBytes(java.nio.charset.StandardCharsets.UTF_8)));

        assertThat(ask()).containsExactly(WARM_DAY);
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                Arguments.of(403, "the forecast service refuses to answer"),
                Arguments.of(429, "the forecast service is asked too often just now"));
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void after_a_refusal_the_caller_is_silent_for_half_an_hour_and_then_twice_as_long(int status, String trouble) {
        byte[] page = "<html>no</html>".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        server.then(status(status, Map.of(), page))
                .then(status(status, Map.of(), page))
                .then(good(""));

        assertThat(ask()).isEmpty();
        assertThat(source.trouble(GROWER)).contains(trouble);

        later(Duration.ofMinutes(29));
        ask();
        assertThat(server.asked).hasSize(1);
        later(Duration.ofMinutes(1));
        ask();
        assertThat(server.asked).hasSize(2);
        later(Duration.ofMinutes(59));
        ask();
        assertThat(server.asked).hasSize(2);
        later(Duration.ofMinutes(1));
        assertThat(ask()).containsExactly(WARM_DAY);
        assertThat(source.trouble(GROWER)).isEmpty();
    }

    static Stream<Arguments> failures() {
        return Stream.of(
                Arguments.of("500", status(500, Map.of(), new byte[0])),
                Arguments.of("502 with a page", status(502, Map.of(), "<html>".getBytes())),
                Arguments.of("503", status(503, Map.of("Retry-After", "10"), new byte[0])),
                Arguments.of("404", status(404, Map.of(), new byte[0])),
                Arguments.of(
                        "a redirect", status(302, Map.of("Location", "http://localhost:1/elsewhere"), new byte[0])),
                Arguments.of("no JSON", body("<html>maintenance</html>")),
                Arguments.of("an empty body", body("")),
                Arguments.of("JSON that breaks off", body(WARM.substring(0, 300))),
                Arguments.of("a body shorter than said", cutOff(WARM)),
                Arguments.of(
                        "a body that is not packed as said",
                        status(200, Map.of("Content-Encoding", "gzip"), WARM.getBytes())),
                Arguments.of("a body far too long", body(" ".repeat(LimitedBody.MOST_BYTES + 1000))),
                Arguments.of("packed, a body far too long", packed(" ".repeat(LimitedBody.MOST_BYTES + 1000))),
                Arguments.of("a slow answer", afterMillis(3000, good(""))),
                Arguments.of("a body that trickles", trickle()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("failures")
    void a_failure_leaves_the_last_good_forecast_is_told_and_tried_again_after_two_minutes(
            String what, Answer failure) {
        server.then(good("Sat, 01 May 2027 06:00:00 GMT")).then(failure).then(good(""));
        ask();
        later(Duration.ofHours(1));

        long start = System.nanoTime();
        assertThat(ask()).as(what).containsExactly(WARM_DAY);
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofMillis(2500));
        assertThat(source.trouble(GROWER).orElseThrow()).startsWith("the forecast service ");
        later(Duration.ofMinutes(1));
        ask();
        assertThat(server.asked).hasSize(2);

        later(Duration.ofMinutes(1));
        assertThat(ask()).containsExactly(WARM_DAY);
        assertThat(server.asked).hasSize(3);
        assertThat(source.trouble(GROWER)).isEmpty();
    }

    @Test
    void a_service_that_is_not_there_gives_nothing_and_says_so() {
        server.close();

        assertThat(ask()).isEmpty();
        assertThat(source.trouble(GROWER)).contains("the forecast service cannot be reached just now");
    }

    @Test
    void a_refusal_holds_for_all_places() {
        server.then(status(429, Map.of(), new byte[0]));
        ask();

        assertThat(source.around(grower(-36.85, 174.76), TODAY)).isEmpty();
        assertThat(server.asked).hasSize(1);
    }

    @Test
    void places_in_the_south_and_west_are_asked_for_with_their_signs() {
        server.then(good(""));
        source.around(grower(-36.8485, -0.7633), TODAY);

        assertThat(server.asked.get(0).path()).endsWith("?lat=-36.85&lon=-0.76");
    }

    @Test
    void without_a_place_nothing_is_asked() {
        assertThat(source.around(grower(null, null), TODAY)).isEmpty();
        assertThat(source.trouble(grower(null, null))).isEmpty();
        assertThat(server.asked).isEmpty();
    }

    @Test
    void a_day_seen_whole_stays_whole_when_a_later_forecast_begins_in_its_afternoon() {
        String afternoon =
                Forecasts.from("2027-05-01T12:00:00Z").hours(34, 20, 50, 2, 0).json();
        server.then(good("Sat, 01 May 2027 06:00:00 GMT")).then(forecast(afternoon, "", MODIFIED));
        ask();
        later(Duration.ofHours(7));

        assertThat(ask())
                .containsExactly(WARM_DAY, new WeatherDay(TODAY.plusDays(1), 20.0, 20.0, 0.0, false, 0.0, 2.0));
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", "  ", "bot", "Java-http-client"})
    void a_caller_that_names_nobody_is_refused(String userAgent) {
        assertThatThrownBy(() -> new NorwegianForecast(server.address(), userAgent, Duration.ofSeconds(1), () -> now))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("asks for a name with an e-mail or web address");
    }
}
