package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Climate;
import bothy.garden.Grower;
import bothy.garden.Units;
import java.nio.file.Path;
import java.time.MonthDay;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is guessed of a place's winters; common geographical knowledge. */
class ClimatesTest {
    private static final Climates CLIMATES = Climates.in(RulesFolder.at(Path.of("rules")));

    private static Grower at(String zone, Double latitude, Double longitude) {
        return new Grower(ZoneId.of(zone), latitude, longitude, null, null, Units.METRIC, null, false);
    }

    private static Grower told(Double latitude, boolean frostFree, Climate climate) {
        return new Grower(ZoneId.of("UTC"), latitude, 0.0, null, null, Units.METRIC, null, false, frostFree, climate);
    }

    @ParameterizedTest
    @CsvSource({
        "Australia/Adelaide, -34.9, 138.5, MILD, true",
        "Australia/Sydney, -33.8, 151.0, MILD, true",
        "Australia/Sydney, -35.3, 149.1, FROSTY, false",
        "Pacific/Auckland, -36.9, 174.8, MILD_COOL_SUMMER, true",
        "Pacific/Auckland, -43.5, 172.6, FROSTY, false",
        "America/Los_Angeles, 34.0, -118.4, MILD, true",
        "America/Los_Angeles, 47.6, -122.3, FROSTY, false",
        "America/Los_Angeles, 37.3, -121.9, MILD, false",
        "America/New_York, 25.8, -80.2, SUBTROPICAL, true",
        "America/New_York, 42.4, -71.1, FROSTY, false",
        "Asia/Kolkata, 13.0, 77.6, TROPICAL, true",
        "Europe/London, 53.8, -1.5, FROSTY, false",
    })
    void byTheNearestPlaceOrTheLatitude(String zone, double latitude, double longitude, Climate climate, boolean free) {
        Climates.Usual usual = CLIMATES.at(at(zone, latitude, longitude));

        assertThat(usual.climate()).isEqualTo(climate);
        assertThat(usual.frostFree()).isEqualTo(free);
    }

    @Test
    void byTheZoneWhereThatSaysEnough() {
        assertThat(CLIMATES.at(at("Australia/Perth", null, null)).climate()).isEqualTo(Climate.MILD);
        assertThat(CLIMATES.at(at("America/New_York", null, null)).climate()).isEqualTo(Climate.FROSTY);
    }

    @Test
    void whoeverToldThatThereIsNoFrostHasNone() {
        assertThat(CLIMATES.at(told(null, true, null)).frostFree()).isTrue();
        assertThat(CLIMATES.at(told(50.2, true, null)).climate()).isEqualTo(Climate.MILD_COOL_SUMMER);
        assertThat(CLIMATES.at(told(28.0, true, null)).climate()).isEqualTo(Climate.SUBTROPICAL);
    }

    @Test
    void mildWintersOfTheNorthStillFreeze() {
        assertThat(CLIMATES.at(told(51.5, false, Climate.MILD)).climate()).isEqualTo(Climate.FROSTY);
        assertThat(CLIMATES.at(told(38.0, false, Climate.MILD)).climate()).isEqualTo(Climate.MILD);
    }

    @Test
    void datesOfPlacesWhoseLatitudeWouldGuessBadly() {
        assertThat(CLIMATES.at(at("Australia/Sydney", -35.3, 149.1)).lastSpring())
                .isEqualTo(MonthDay.of(11, 1));
    }
}
