package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.channel.terminal.TerminalChat;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.SettingChange;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A day taken as today is that day where the grower is, not where the machine stands. */
class ChosenDayTest {
    private static final LocalDate DAY = LocalDate.of(2027, 8, 1);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"Australia/Adelaide", "Pacific/Auckland", "Pacific/Honolulu", "Europe/London"})
    void isTheDayInTheGrowersZone(String zone) {
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            store.write(
                    TerminalChat.GROWER,
                    page -> page.append("m1", Instant.EPOCH, List.of(new SettingChange("zone", zone))));
            for (String machine : List.of("UTC", "America/Los_Angeles", "Asia/Tokyo")) {
                Instant now = ChatVerb.clock(DAY, ZoneId.of(machine), store).instant();
                assertThat(now.atZone(ZoneId.of(zone)).toLocalDate())
                        .as(machine)
                        .isEqualTo(DAY);
            }
        }
    }
}
