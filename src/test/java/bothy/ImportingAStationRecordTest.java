package bothy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Grower;
import bothy.garden.Normals;
import bothy.garden.WeatherDay;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record of Seattle 2012 to 2015 (NOAA, see the README beside it) taken in by the command. */
class ImportingAStationRecordTest {
    @TempDir
    Path folder;

    @Test
    void the_record_gives_frost_dates_and_normals_and_sets_the_growers_dates() throws IOException {
        Path record = seattle();
        String diary = folder.resolve("diary.db").toString();

        String printed = printed("import-weather", record.toString(), "--db", diary);

        // worked out apart from the program: the last days with 0 °C or less before summer are 19 March 2012, 4 March
        // 2013, 9 February 2014 and 4 March 2015, in the mean 2 March, standard deviation 16.05 days
        assertThat(printed)
                .startsWith("1461 days from 2012-01-01 to 2015-12-31.")
                .contains("Last spring frost: 90% after 9 February, 50% after 2 March, 10% after 23 March (4 years")
                .contains("July             12                      313")
                .contains(
                        "Kept for terminal:me: the days and normals; last spring frost 2 March, first autumn frost 14 November.");
        try (Store store = Shelf.open(diary)) {
            Grower grower = store.write(
                    "terminal:me", page -> Replay.garden(page.lines(), LocalDate.of(2100, 1, 1), ZoneOffset.UTC)
                            .grower());
            assertThat(grower.lastSpringFrost()).isEqualTo(MonthDay.of(3, 2));
            List<WeatherDay> days = store.write("terminal:me", page -> page.weather("", LocalDate.of(2012, 1, 1)));
            assertThat(days).hasSize(1461).contains(new WeatherDay(LocalDate.of(2012, 1, 2), 2.8, 10.6, 10.9, true));
            Normals normals =
                    store.write("terminal:me", page -> page.normals("").orElseThrow());
            // January 2012 to 2015, column precipitation summed apart from the program: 466.0 mm in four years
            assertThat(normals.of(Month.JANUARY).orElseThrow().rainMm()).isCloseTo(116.5, within(0.01));
            assertThat(normals.lastSpring().oneInTenAfter()).isEqualTo(MonthDay.of(3, 23));
        }
    }

    @Test
    void printing_only_keeps_nothing() throws IOException {
        Path diary = folder.resolve("diary.db");

        assertThat(printed("import-weather", seattle().toString(), "--print", "--db", diary.toString()))
                .contains("Last spring frost")
                .doesNotContain("Kept");
        assertThat(diary).doesNotExist();
    }

    @Test
    void a_record_with_mistakes_is_refused_line_by_line() throws IOException {
        Path record = folder.resolve("bad.csv");
        Files.writeString(record, "date,tmin,tmax,rain\n2027-01-01,5,2,-1\n2027-01-03,1,2,0\n");

        String printed = printed("import-weather", record.toString());

        assertThat(printed)
                .contains("nothing was taken in")
                .contains("bad.csv:2: rain is -1 mm; allowed is 0 to 2000 mm. Correct it.")
                .contains("bad.csv:2: tmin 5.0 °C is above tmax 2.0 °C. Swap or correct them.")
                .contains("1 day is missing between them");
    }

    @Test
    void a_file_that_is_not_there_is_named() {
        assertThat(printed("import-weather", folder.resolve("none.csv").toString()))
                .contains("There is no file " + folder.resolve("none.csv") + ". Name the station's record.");
    }

    private Path seattle() throws IOException {
        Path record = folder.resolve("seattle.csv");
        String rows = Printed.rows("weather/seattle-daily-2012-2015.csv").stream()
                .map(row -> row.get("date") + "," + row.get("temp_min") + "," + row.get("temp_max") + ","
                        + row.get("precipitation"))
                .collect(Collectors.joining("\n"));
        Files.writeString(record, "date,tmin,tmax,rain\n" + rows + "\n");
        return record;
    }

    private static String printed(String... arguments) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PrintStream caught = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            System.setOut(caught);
            System.setErr(caught);
            Bothy.run(arguments);
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
