package bothy.agronomy.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.climate.BlightWeather.HumidDay;
import bothy.agronomy.climate.BlightWeather.RainDay;
import bothy.agronomy.climate.FruitSet.Hindrance;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Published limits, each met at the limit and missed just below it: AHDB, Smith 1956, Hyre 1954, extension services. */
class WeatherRisksTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    @ParameterizedTest
    @CsvSource({
        // lowest temperature and humid hours on two days; Hutton; Smith
        "10, 6, 10, 6, true, false",
        "9.9, 6, 10, 6, false, false",
        "10, 6, 9.9, 6, false, false",
        "10, 5.9, 10, 6, false, false",
        "10, 6, 10, 5.9, false, false",
        "10, 10, 10, 11, true, true",
        "10, 9.9, 10, 11, true, false",
        "10, 10, 10, 10.9, true, false",
        "14, 24, 14, 24, true, true",
        "9.9, 24, 14, 24, false, false",
    })
    void two_days_running_decide_on_blight_weather(
            double firstC, double firstHours, double secondC, double secondHours, boolean hutton, boolean smith) {
        HumidDay yesterday = new HumidDay(firstC, firstHours);
        HumidDay today = new HumidDay(secondC, secondHours);

        assertThat(BlightWeather.hutton(yesterday, today)).isEqualTo(hutton);
        assertThat(BlightWeather.smith(yesterday, today)).isEqualTo(smith);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_smith_period_meets_the_hutton_criteria_too(long seed) {
        Random random = new Random(seed);
        HumidDay yesterday = new HumidDay(5 + 10 * random.nextDouble(), 24 * random.nextDouble());
        HumidDay today = new HumidDay(5 + 10 * random.nextDouble(), 24 * random.nextDouble());

        if (BlightWeather.smith(yesterday, today)) {
            assertThat(BlightWeather.hutton(yesterday, today))
                    .as("seed %d", seed)
                    .isTrue();
        }
    }

    @Test
    void where_humidity_is_unknown_cool_wet_days_decide() {
        RainDay wet = new RainDay(12, 20, 3);

        assertThat(BlightWeather.hyre(Collections.nCopies(10, wet))).isTrue();
        assertThat(BlightWeather.hyre(Collections.nCopies(10, new RainDay(12, 20, 2.9))))
                .isFalse();
        assertThat(BlightWeather.hyre(Collections.nCopies(10, new RainDay(21, 30, 3))))
                .isFalse();
        assertThat(BlightWeather.hyre(Collections.nCopies(10, new RainDay(7.1, 20, 3))))
                .isFalse();
        assertThatThrownBy(() -> BlightWeather.hyre(List.of(wet)))
                .hasMessage("days is 1 days; allowed is 10 to 10 days");
    }

    @Test
    void flowers_drop_outside_their_limits_and_where_none_is_known_they_do_not() {
        FruitSet set = new FruitSet(12.8, 23.9, 29.4);

        assertThat(set.hindrances(12.7, 25)).containsExactly(Hindrance.COLD_NIGHT);
        assertThat(set.hindrances(12.8, 29.4)).isEmpty();
        assertThat(set.hindrances(24, 35)).containsExactlyInAnyOrder(Hindrance.WARM_NIGHT, Hindrance.HOT_DAY);
        assertThat(new FruitSet(null, null, null).hindrances(-5, 45)).isEmpty();
        assertThatThrownBy(() -> new FruitSet(15.0, 10.0, null))
                .hasMessage("warmNightC is 10 °C; allowed is 15 to 40 °C");
    }

    @Test
    void days_running_are_counted_back_from_the_last() {
        assertThat(Spells.running(List.of(30.0, 20.0, 31.0, 32.0), tmax -> tmax > 28))
                .isEqualTo(2);
        assertThat(Spells.running(List.of(30.0, 20.0), tmax -> tmax > 28)).isZero();
        assertThat(Spells.running(List.of(), tmax -> true)).isZero();
    }

    @Test
    void cool_days_that_bring_biennials_to_flower_are_counted() {
        assertThat(Spells.vernalisingDays(List.of(4.9, 5.0, 7.0, 10.0, 10.1))).isEqualTo(3);
    }

    @Test
    void drought_and_then_rain_is_told_in_days_and_millimetres() {
        Spells.DryThenWet spell = Spells.dryThenWet(List.of(10.0, 41.0, 45.0, 50.0), Collections.nCopies(4, 40.0), 25);

        assertThat(spell).isEqualTo(new Spells.DryThenWet(3, 25));
        assertThatThrownBy(() -> Spells.dryThenWet(List.of(1.0), List.of(), 0))
                .hasMessageStartingWith("there are 1 depletions and 0 amounts");
    }

    @Test
    void a_night_forecast_at_two_degrees_is_as_likely_as_not_to_harm_what_zero_harms() {
        assertThat(NightFrost.chanceOfHarm(2, 0, 0)).isCloseTo(0.5, within(1e-9));
        assertThat(NightFrost.chanceOfHarm(10, 0, 0)).isLessThan(0.001);
        assertThat(NightFrost.chanceOfHarm(-5, 0, 0)).isGreaterThan(0.99);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_colder_forecast_and_a_tenderer_crop_never_lower_the_chance(long seed) {
        Random random = new Random(seed);
        double min = -20 + 40 * random.nextDouble();
        double harmed = -20 + 30 * random.nextDouble();
        int ahead = random.nextInt(16);

        double chance = NightFrost.chanceOfHarm(min, harmed, ahead);

        assertThat(chance).as("seed %d", seed).isBetween(0.0, 1.0);
        assertThat(NightFrost.chanceOfHarm(min - 1, harmed, ahead)).isGreaterThanOrEqualTo(chance);
        assertThat(NightFrost.chanceOfHarm(min, harmed + 1, ahead)).isGreaterThanOrEqualTo(chance);
    }

    @Test
    void impossible_days_are_refused() {
        assertThatThrownBy(() -> new HumidDay(10, 25)).hasMessage("humidHours is 25 h; allowed is 0 to 24 h");
        assertThatThrownBy(() -> new RainDay(10, 5, 0)).hasMessage("tmaxC is 5 °C; allowed is 10 to 60 °C");
        assertThatThrownBy(() -> new RainDay(10, 15, -1)).hasMessage("rainMm is -1 mm; allowed is 0 to 2000 mm");
    }
}
