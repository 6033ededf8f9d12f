package bothy.agronomy.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shredzone.commons.suncalc.SunTimes;

/** The tables of FAO-56 Annex 2, and an independent computation of sunrise and sunset (commons-suncalc 3.11). */
class SunAndAirTablesTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static double value(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @Test
    void radiation_above_the_air_agrees_with_all_572_cells_of_table_2_6_to_a_tenth() {
        assertThat(Printed.rows("water/ra_table.csv")).hasSize(572).allSatisfy(row -> assertThat(
                        Sun.extraterrestrialMj(value(row, "latitude_deg"), Integer.parseInt(row.get("day_of_year"))))
                .as("%s° day %s", row.get("latitude_deg"), row.get("day_of_year"))
                .isCloseTo(value(row, "ra"), within(0.1)));
    }

    @Test
    void daylight_agrees_with_all_227_cells_of_table_2_7_to_a_tenth_of_an_hour() {
        assertThat(Printed.rows("water/daylight_hours.csv")).hasSize(227).allSatisfy(row -> assertThat(
                        Sun.daylightHours(value(row, "latitude_deg"), Integer.parseInt(row.get("day_of_year"))))
                .as("%s° day %s", row.get("latitude_deg"), row.get("day_of_year"))
                .isCloseTo(value(row, "n_hours"), within(0.1)));
    }

    @Test
    void pressure_vapour_slope_wind_and_radiation_agree_with_140_cells_of_tables_2_1_to_2_9_to_the_last_digit() {
        assertThat(Printed.rows("water/met_tables_annex2.csv")).hasSize(140).allSatisfy(row -> {
            double at = value(row, "argument_value");
            double computed =
                    switch (row.get("symbol")) {
                        case "P" -> Air.pressureKPa(at);
                        case "gamma" -> Air.psychrometricKPaPerC(Air.pressureKPa(at));
                        case "e0(T)" -> Air.saturationKPa(at);
                        case "Delta" -> Air.slopeKPaPerC(at);
                        case "sT4" -> Radiation.blackBodyMj(at);
                        case "factor" -> Air.windAtTwoMetresMs(1, at);
                        default -> throw new AssertionError("unknown table " + row);
                    };
            assertThat(computed)
                    .as("%s: %s at %s", row.get("table"), row.get("symbol"), at)
                    .isCloseTo(value(row, "value"), within(Printed.tolerance(row.get("value"))));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-60, -50, -40, -30, -20, -10, 0, 10, 20, 30, 40, 50, 60})
    void sunrise_to_sunset_agrees_with_suncalc_within_two_minutes_in_all_months(double latitude) {
        for (int month = 1; month <= 12; month++) {
            for (int day : new int[] {1, 11, 21}) {
                LocalDate date = LocalDate.of(2027, month, day);
                ZonedDateTime midnight = date.atStartOfDay(ZoneOffset.UTC);
                SunTimes times =
                        SunTimes.compute().on(midnight).at(latitude, 0).oneDay().execute();
                double expected =
                        Duration.between(times.getRise(), times.getSet()).toSeconds() / 3600.0;

                assertThat(DayLength.hours(latitude, 2027, date.getDayOfYear()))
                        .as("%s° on %s", latitude, date)
                        .isCloseTo(expected, within(2 / 60.0));
            }
        }
    }

    @Test
    void the_sun_does_not_set_in_a_polar_summer_nor_rise_in_a_polar_winter() {
        assertThat(Sun.daylightHours(75, 172)).isEqualTo(24);
        assertThat(Sun.daylightHours(75, 355)).isZero();
        assertThat(Sun.extraterrestrialMj(75, 355)).isZero();
        assertThat(Sun.extraterrestrialMj(90, 172)).isBetween(40.0, 50.0);
        assertThat(DayLength.hours(75, 2027, 172)).isEqualTo(24);
        assertThat(DayLength.hours(75, 2027, 355)).isZero();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_hemispheres_have_each_others_daylight_half_a_year_apart(long seed) {
        Random random = new Random(seed);
        double latitude = 66 * random.nextDouble();
        int day = 1 + random.nextInt(182);

        // half a year is 182.5 days, so the one day in two that is missing is worth up to a few minutes near the
        // circles
        double north = Sun.daylightHours(latitude, day);
        double south = (Sun.daylightHours(-latitude, day + 182) + Sun.daylightHours(-latitude, day + 183)) / 2;

        assertThat(south).as("seed %d: %s° day %d", seed, latitude, day).isCloseTo(north, within(0.02));
    }

    @Test
    void there_is_no_nan_for_any_place_and_day() {
        for (double latitude = -90; latitude <= 90; latitude += 2.5) {
            for (int day = 1; day <= 366; day += 5) {
                assertThat(Sun.extraterrestrialMj(latitude, day)).isBetween(0.0, 50.0);
                assertThat(Sun.daylightHours(latitude, day)).isBetween(0.0, 24.0);
                assertThat(DayLength.hours(latitude, 2028, day)).isBetween(0.0, 24.0);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_three_ways_to_reference_evapotranspiration_stay_finite_and_positive_over_the_whole_range(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            double latitude = -90 + 180 * random.nextDouble();
            int day = 1 + random.nextInt(366);
            double tminC = -60 + 120 * random.nextDouble();
            double tmaxC = tminC + (60 - tminC) * random.nextDouble();
            double wind = 60 * random.nextDouble();
            String as = "seed " + seed + ": " + latitude + "° day " + day + ", " + tminC + " to " + tmaxC;

            assertThat(ReferenceEvapotranspiration.hargreavesMm(latitude, day, tminC, tmaxC))
                    .as(as)
                    .isBetween(0.0, 40.0);
            assertThat(ReferenceEvapotranspiration.penmanMonteithFromTemperaturesMm(
                            latitude, day, 6000 * random.nextDouble(), tminC, tmaxC, wind))
                    .as(as)
                    .isBetween(0.0, 200.0);
        }
    }

    @Test
    void the_typical_table_is_met_at_its_twelve_printed_rows() {
        assertThat(Printed.rows("water/et0_typical_table2.csv")).hasSize(12).allSatisfy(row -> {
            String climate = (row.get("zone").startsWith("temperate") ? "TEMPERATE_" : "TROPICAL_")
                    + (row.get("humidity").startsWith("humid") ? "HUMID" : "DRY");
            double meanC =
                    switch (row.get("temperature_class")) {
                        case "cool" -> 10;
                        case "moderate" -> 20;
                        default -> 30;
                    };
            assertThat(TypicalEvapotranspiration.in(TypicalEvapotranspiration.Climate.valueOf(climate), meanC))
                    .isEqualTo(new TypicalEvapotranspiration(value(row, "et0_low"), value(row, "et0_high")));
        });
    }

    @Test
    void between_the_rows_the_typical_table_is_joined_and_beyond_them_it_holds() {
        TypicalEvapotranspiration.Climate climate = TypicalEvapotranspiration.Climate.TEMPERATE_HUMID;

        assertThat(TypicalEvapotranspiration.in(climate, 15)).isEqualTo(new TypicalEvapotranspiration(1.5, 3));
        assertThat(TypicalEvapotranspiration.in(climate, -5)).isEqualTo(new TypicalEvapotranspiration(1, 2));
        assertThat(TypicalEvapotranspiration.in(climate, 35)).isEqualTo(new TypicalEvapotranspiration(4, 7));
    }

    @Test
    void impossible_weather_is_refused_with_value_and_range() {
        assertThatThrownBy(() -> Sun.extraterrestrialMj(95, 100))
                .hasMessage("latitude is 95 °; allowed is -90 to 90 °");
        assertThatThrownBy(() -> Sun.daylightHours(50, 400)).hasMessage("dayOfYear is 400; allowed is 1 to 366");
        assertThatThrownBy(() -> ReferenceEvapotranspiration.hargreavesMm(50, 100, 20, 10))
                .hasMessage("tminC 20.0 °C is above tmaxC 10.0 °C");
        assertThatThrownBy(() -> ReferenceEvapotranspiration.hargreavesMm(50, 100, 20, 90))
                .hasMessage("tmaxC is 90 °C; allowed is -60 to 60 °C");
        assertThatThrownBy(() -> Air.saturationKPa(Double.NaN)).hasMessage("tempC is NaN °C; allowed is -60 to 60 °C");
    }
}
