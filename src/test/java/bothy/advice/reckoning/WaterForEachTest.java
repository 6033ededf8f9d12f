package bothy.advice.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.advice.facts.Frosts;
import bothy.advice.facts.Latest;
import bothy.advice.facts.Stands;
import bothy.advice.reckoned.WaterBalance;
import bothy.advice.reckoned.WaterRhythm;
import bothy.almanac.Climates;
import bothy.almanac.CropSheets;
import bothy.almanac.PlaceKind;
import bothy.almanac.RulesFolder;
import bothy.almanac.Sheet;
import bothy.garden.Event;
import bothy.garden.Grower;
import bothy.garden.Planting;
import bothy.garden.Units;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Water told for each plant, for all, and for plants that nobody counted; common practice, no source. */
class WaterForEachTest {
    private static final LocalDate OUT = LocalDate.of(2027, 5, 1);
    private static final LocalDate TODAY = LocalDate.of(2027, 6, 1);
    private static final String ID = "tomato-1";
    private static final Sheet TOMATO =
            CropSheets.load(RulesFolder.at(Path.of("rules"))).get("tomato");

    private static Event watered(Double litres, String detail) {
        return new Event(What.WATERED, ID, "tomato", null, null, litres, "L", TODAY, null, null, detail);
    }

    private static Subject subject(Integer count, List<WeatherDay> weather, Event... water) {
        Event out = new Event(What.PLANTED_OUT, ID, "tomato", null, count, null, null, OUT, "bed", null, null);
        List<Event> events = new ArrayList<>(List.of(out));
        events.addAll(List.of(water));
        Planting planting =
                new Planting(ID, "tomato", null, "bed", null, Planting.Start.PLANT, OUT, count, count, null);
        Grower grower = new Grower(ZoneOffset.UTC, 52.0, 0.0, null, null, Units.METRIC, "loam", false);
        return new Subject(
                TODAY,
                grower,
                planting,
                TOMATO,
                events,
                events,
                Map.of(What.PLANTED_OUT, new Latest(ID, What.PLANTED_OUT, OUT, OUT, 31, 1)),
                List.of(),
                new Stands(ID, PlaceKind.OUTDOORS, false),
                null,
                new Frosts(LocalDate.of(2027, 5, 10), LocalDate.of(2027, 10, 10), true),
                weather,
                List.of(),
                List.of(),
                Map.of(),
                null,
                Climates.ofNoPlace().at(grower));
    }

    private static List<WeatherDay> dry() {
        return OUT.datesUntil(TODAY.plusDays(14))
                .map(day -> new WeatherDay(day, 9.0, 20.0, 0.0, true))
                .toList();
    }

    private static double missing(Integer count, Event... water) {
        return Reckoning.of(subject(count, dry(), water)).stream()
                .filter(WaterBalance.class::isInstance)
                .map(WaterBalance.class::cast)
                .findFirst()
                .orElseThrow()
                .missingMm();
    }

    @Test
    void two_litres_each_are_twelve_for_six() {
        assertThat(missing(6, watered(2.0, "each"))).isEqualTo(missing(6, watered(12.0, null)));
        assertThat(missing(6, watered(2.0, "each"))).isLessThan(missing(6, watered(2.0, null)));
    }

    @Test
    void litres_for_plants_that_nobody_counted_are_no_more_than_the_usual_dose() {
        assertThat(missing(null, watered(60.0, null))).isEqualTo(missing(null, watered(null, null)));
    }

    @Test
    void with_nothing_known_for_a_fortnight_there_is_a_rhythm_and_no_date() {
        List<Object> facts = Reckoning.of(subject(6, List.of()));

        assertThat(facts).hasAtLeastOneElementOfType(WaterRhythm.class);
        assertThat(facts).noneMatch(WaterBalance.class::isInstance);
    }

    @Test
    void days_that_cannot_be_count_as_not_known_and_the_last_good_balance_stays() {
        List<WeatherDay> weather = new ArrayList<>(dry());
        double before = missing(6);
        weather.set(weather.size() - 1, new WeatherDay(TODAY.plusDays(13), 30.0, 10.0, -5.0, false));

        assertThat(Reckoning.of(subject(6, weather)).stream()
                        .filter(WaterBalance.class::isInstance)
                        .map(fact -> ((WaterBalance) fact).missingMm()))
                .containsExactly(before);
    }
}
