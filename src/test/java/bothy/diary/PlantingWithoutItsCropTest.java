package bothy.diary;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.What;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlantingWithoutItsCropTest {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 7);

    @Test
    void aLineThatNamesAPlantingAndNoCropIsOfTheCropThatThePlantingBeganAs() {
        Event watered = Event.of(What.WATERED, "cucumber-1", null, DAY);
        Logged line = new Logged(1, "m1", Instant.parse("2027-05-07T09:00:00Z"), watered);

        Garden garden = Replay.garden(List.of(line), DAY, ZoneOffset.UTC);

        assertThat(garden.plantings()).extracting(Planting::crop).containsExactly("cucumber");
    }
}
