package bothy.advice.clinic;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Diagnosis;
import bothy.garden.WeatherDay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Published temperature and rain limits, just beyond and just within: fruit set of warm-season crops below 12.8 °C nights (Purdue Yard
 * and Garden News) and from 29.4 °C days on (UF/IFAS; rules use 30), growth below 10 °C (R. Kujawski), blight weather with 30 mm in ten
 * days (Hyre 1954, coded by R. Hijmans).
 */
class WeatherOfATroubleTest {

    private static Diagnosis dropping(double night, double day) {
        return Ward.only(
                Ward.advised(List.of(), List.of(Ward.sign("tomato", "flowers-dropping")), Ward.weather(night, day, 0)));
    }

    private static boolean heard(Diagnosis diagnosis, String sentence) {
        return diagnosis.causes().stream()
                .flatMap(likely -> likely.reasons().stream())
                .anyMatch(reason -> reason.what().equals(sentence));
    }

    @Test
    void nights_below_12_8_are_too_cold_for_fruit_to_set() {
        assertThat(heard(dropping(12.7, 22), "Nights were too cold for fruit to set: below 12.8 °C"))
                .isTrue();
        assertThat(heard(dropping(12.8, 22), "Nights were too cold for fruit to set: below 12.8 °C"))
                .isFalse();
        assertThat(Ward.chance(dropping(12.7, 22), "nights too cold"))
                .isGreaterThan(Ward.chance(dropping(12.8, 22), "nights too cold"));
    }

    @Test
    void days_of_thirty_degrees_are_hot() {
        assertThat(heard(dropping(18, 30), "It was hot: the hottest of the last ten days reached 30 °C"))
                .isTrue();
        assertThat(heard(dropping(18, 29.9), "It was hot: the hottest of the last ten days reached 30 °C"))
                .isFalse();
        assertThat(dropping(20, 35).causes().get(0).cause()).isEqualTo("too hot");
    }

    @Test
    void nights_below_ten_degrees_are_a_cold_spell() {
        assertThat(heard(dropping(9.9, 20), "It was cold: a night of the last ten fell below 10 °C"))
                .isTrue();
        assertThat(heard(dropping(10, 20), "It was cold: a night of the last ten fell below 10 °C"))
                .isFalse();
    }

    @Test
    void thirty_millimetres_in_ten_mild_days_are_blight_weather() {
        assertThat(Ward.chance(spots(3.0), "late blight")).isGreaterThan(Ward.chance(spots(2.9), "late blight"));
        assertThat(Ward.chance(spots(0.5), "late blight")).isLessThan(Ward.chance(spots(2.9), "late blight"));
    }

    private static Diagnosis spots(double rainADay) {
        return Ward.only(
                Ward.advised(List.of(), List.of(Ward.sign("tomato", "leaf-spots")), Ward.weather(13, 21, rainADay)));
    }

    @Test
    void rain_after_drought_is_told_from_rain_all_along() {
        List<WeatherDay> afterDrought = new ArrayList<>(Ward.weather(14, 25, 0));
        afterDrought.set(9, new WeatherDay(Ward.TODAY, 14.0, 20.0, 18.0, true));

        Diagnosis split =
                Ward.only(Ward.advised(List.of(), List.of(Ward.sign("tomato", "fruit-splitting")), afterDrought));
        Diagnosis even = Ward.only(
                Ward.advised(List.of(), List.of(Ward.sign("tomato", "fruit-splitting")), Ward.weather(14, 25, 2)));

        assertThat(Ward.chance(split, "uneven watering")).isGreaterThan(Ward.chance(even, "uneven watering"));
    }
}
