package bothy.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.garden.WeatherDay;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Steps in the published format, summed up into the grower's days. */
class DaysOfAForecastTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static List<ForecastDay> days(ZoneId zone, Forecasts forecast) throws ForecastUnreadable {
        return ForecastDays.in(zone, ForecastReading.read(forecast.json().getBytes(StandardCharsets.UTF_8)));
    }

    private static WeatherDay day(int year, int month, int day, Double tmin, Double tmax, Double rain) {
        return new WeatherDay(LocalDate.of(year, month, day), tmin, tmax, rain, false);
    }

    @Test
    void hours_become_a_day_with_extremes_rain_humid_hours_and_wind() throws ForecastUnreadable {
        // London is an hour ahead of UTC in May: the day runs from 23:00 UTC
        Forecasts may = Forecasts.from("2027-04-30T23:00:00Z")
                .hours(8, 4.5, 95, 2, 0.5)
                .hours(8, 15.5, 55, 6.5, 0)
                .hours(8, 9, 89.9, 3, 0.1)
                .end(8);

        assertThat(days(LONDON, may))
                .containsExactly(new ForecastDay(day(2027, 5, 1, 4.5, 15.5, 4.8), 8.0, 55.0, 6.5, 24));
    }

    @Test
    void the_same_hours_are_other_days_on_the_other_side_of_the_earth() throws ForecastUnreadable {
        Forecasts may =
                Forecasts.from("2027-04-30T12:00:00Z").hours(24, 10, 80, 2, 0.1).hours(24, 20, 80, 2, 0);

        // Auckland is 12 hours ahead in May
        assertThat(days(ZoneId.of("Pacific/Auckland"), may))
                .extracting(ForecastDay::day)
                .containsExactly(day(2027, 5, 1, 10.0, 10.0, 2.4), day(2027, 5, 2, 20.0, 20.0, 0.0));
    }

    @Test
    void the_days_on_which_clocks_are_changed_have_23_and_25_hours() throws ForecastUnreadable {
        Forecasts march = Forecasts.from("2027-03-28T00:00:00Z").hours(23, 10, 80, 2, 0.1);
        Forecasts october = Forecasts.from("2027-10-30T23:00:00Z").hours(25, 10, 80, 2, 0.1);

        assertThat(days(LONDON, march))
                .containsExactly(new ForecastDay(day(2027, 3, 28, 10.0, 10.0, 2.3), 0.0, 80.0, 2.0, 23));
        assertThat(days(LONDON, october))
                .containsExactly(new ForecastDay(day(2027, 10, 31, 10.0, 10.0, 2.5), 0.0, 80.0, 2.0, 25));
    }

    @Test
    void steps_of_six_hours_bring_their_own_extremes_and_are_split_at_midnight() throws ForecastUnreadable {
        // six hours across midnight by the clock of London: 21:00 to 03:00 UTC is 22:00 to 04:00
        Forecasts forecast = Forecasts.from("2027-05-01T21:00:00Z")
                .sixHours(10, 6, 11, 70, 6)
                .sixHours(7, 5, 9, 95, 0)
                .sixHours(12, 11, 19, 60, 0)
                .sixHours(18, 12, 18.5, 60, 0)
                .sixHours(11, 8, 11, 80, 3);

        List<ForecastDay> days = days(LONDON, forecast);

        // of the first step four of six hours lie on 2 May, of the last two; 4 mm and 1 mm
        assertThat(days.get(1)).isEqualTo(new ForecastDay(day(2027, 5, 2, 5.0, 19.0, 5.0), 6.0, 60.0, 3.0, 24));
    }

    @Test
    void sums_that_overlap_are_not_counted_twice() throws ForecastUnreadable {
        // every three hours a sum over six: 1 mm an hour throughout
        Forecasts forecast = Forecasts.from("2027-04-30T23:00:00Z");
        for (int step = 0; step < 8; step++) {
            forecast.sums(3, 10, 10, 10, 50, 6);
        }

        assertThat(days(LONDON, forecast).get(0).day().rain()).isEqualTo(24.0);
    }

    @Test
    void where_midnight_falls_within_an_hour_its_beginning_belongs_to_the_day_before() throws ForecastUnreadable {
        // 2 May in Kolkata begins at 18:30 UTC
        Forecasts forecast =
                Forecasts.from("2027-05-01T18:00:00Z").hours(1, 30, 50, 2, 1).hours(24, 20, 50, 2, 0);

        assertThat(days(ZoneId.of("Asia/Kolkata"), forecast).get(1).day()).isEqualTo(day(2027, 5, 2, 20.0, 20.0, 0.5));
    }

    @Test
    void of_a_part_of_a_day_only_that_is_told_which_the_part_decides() throws ForecastUnreadable {
        Forecasts afternoon = Forecasts.from("2027-05-01T10:00:00Z").hours(13, 16, 50, 2, 0.2);
        Forecasts night = Forecasts.from("2027-05-01T23:00:00Z").hours(8, 3, 50, 2, 0.2);

        assertThat(days(LONDON, afternoon).get(0).day()).isEqualTo(day(2027, 5, 1, null, 16.0, null));
        assertThat(days(LONDON, night).get(0).day()).isEqualTo(day(2027, 5, 2, 3.0, null, null));
    }

    @Test
    void what_a_forecast_does_not_tell_is_unknown_and_not_zero() throws ForecastUnreadable {
        String bare = Forecasts.from("2027-04-30T23:00:00Z")
                .hours(24, 10, 50, 2, 0.3)
                .json()
                .replaceAll("\"precipitation_amount\":[0-9.]+", "\"thunder\":0")
                .replaceAll("\"relative_humidity\":[0-9.]+,", "");

        ForecastDay day = ForecastDays.in(LONDON, ForecastReading.read(bare.getBytes(StandardCharsets.UTF_8)))
                .get(0);

        assertThat(day).isEqualTo(new ForecastDay(day(2027, 5, 1, 10.0, 10.0, null), null, null, 2.0, 24));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "<html>Service unavailable</html>",
                "{}",
                "[]",
                "{\"properties\":{\"timeseries\":[]}}",
                "{\"properties\":{\"timeseries\":{\"time\":\"2027-05-01T00:00:00Z\"}}}",
                "{\"properties\":{\"timeseries\":[{\"time\":\"tomorrow\",\"data\":{}}]}}",
                "{\"properties\":{\"timeseries\":[{\"data\":{}}]}}",
                "{\"properties\":{\"timeseries\":[{\"time\":\"2027-05-01T01:00:00Z\"},{\"time\":\"2027-05-01T00:00:00Z\"}]}}",
                "{\"properties\":{\"timeseries\":[{\"time\":\"2027-05-01T01:00:00Z\",\"data\":{\"instant\":{\"details\":{\"air_temperature\":\"warm\"}}}}]}}",
                "{\"properties\":{\"timeseries\":[{\"time\":\"2027-05-01T01:00:00Z\",\"data\":{\"instant\":{\"details\":{\"air_temperature\":300.1}}}}]}}",
                "{\"properties\":{\"timeseries\":[{\"time\":\"2027-05-01T01:00:00Z\",\"data\":{\"next_1_hours\":{\"details\":{\"precipitation_amount\":-1}}}}]}}",
            })
    void what_is_no_forecast_is_refused(String broken) {
        assertThatThrownBy(() -> ForecastReading.read(broken.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(ForecastUnreadable.class);
    }
}
