package bothy.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.garden.WeatherDay;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 4180 as growers' stations write it, and every mistake with its line and a sentence. */
class RecordOfAStationTest {

    private static List<WeatherDay> read(String csv) {
        return StationRecord.read(new StringReader(csv), "plot.csv");
    }

    @Test
    void days_are_read_in_any_order_of_columns_and_with_others_among_them() {
        assertThat(
                        read(
                                "\uFEFFStation,Rain,TMax,TMin,Date\r\n\"Hill, north\",3.2,18.5,7,2027-05-01\r\n\"a \"\"b\"\"\",0,20,8.1,2027-05-02\r\n"))
                .containsExactly(
                        new WeatherDay(LocalDate.of(2027, 5, 1), 7.0, 18.5, 3.2, true),
                        new WeatherDay(LocalDate.of(2027, 5, 2), 8.1, 20.0, 0.0, true));
    }

    @Test
    void four_years_of_seattle_are_read() throws IOException {
        try (InputStream in = getClass().getResourceAsStream("/reference/weather/seattle-daily-2012-2015.csv")) {
            String csv = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replaceFirst("date,precipitation,temp_max,temp_min", "date,rain,tmax,tmin");

            assertThat(read(csv))
                    .hasSize(1461)
                    .startsWith(new WeatherDay(LocalDate.of(2012, 1, 1), 5.0, 12.8, 0.0, true));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2027-05-03,7,18,0 | 2027-05-03 follows 2027-05-01; 1 day is missing between them. Add what is missing or begin the record after the gap.",
                "2027-05-09,7,18,0 | 2027-05-09 follows 2027-05-01; 7 days are missing between them. Add what is missing or begin the record after the gap.",
                "2027-05-01,7,18,0 | 2027-05-01 comes after 2027-05-01. Each day stands once, in order.",
                "2027-04-30,7,18,0 | 2027-04-30 comes after 2027-05-01. Each day stands once, in order.",
                "02/05/2027,7,18,0 | \"02/05/2027\" is no date. Write it as 2027-05-01.",
                "2027-05-02,20,18,0 | tmin 20.0 °C is above tmax 18.0 °C. Swap or correct them.",
                "2027-05-02,7,72,0 | tmax is 72 °C; allowed is -90 to 60 °C. Degrees Fahrenheit have to be converted.",
                "2027-05-02,-100,18,0 | tmin is -100 °C; allowed is -90 to 60 °C. Correct it.",
                "2027-05-02,7,18,-1 | rain is -1 mm; allowed is 0 to 2000 mm. Correct it.",
                "2027-05-02,7,18, | rain is empty. Fill it in or begin the record after this day.",
                "2027-05-02,7,NaN,0 | tmax is NaN °C; allowed is -90 to 60 °C. Correct it.",
                "2027-05-02,7,\"18,5\",0 | tmax is \"18,5\", which is no number. Write it with a point, as 12.5.",
                "2027-05-02,7,18 | the line has 3 columns, too few for the header. Complete it.",
            })
    void a_mistake_is_told_with_its_line_and_what_to_do(String line, String sentence) {
        assertThatThrownBy(() -> read("date,tmin,tmax,rain\n2027-05-01,7,18,0\n" + line + "\n"))
                .isInstanceOf(RecordRefused.class)
                .hasMessage("plot.csv:3: " + sentence);
    }

    @Test
    void all_mistakes_are_told_at_once() {
        assertThatThrownBy(() -> read("date,tmin,tmax,rain\n2027-05-01,9,8,-1\n2027-05-02,x,8,0\n"))
                .hasMessage("plot.csv:2: rain is -1 mm; allowed is 0 to 2000 mm. Correct it.\n"
                        + "plot.csv:2: tmin 9.0 °C is above tmax 8.0 °C. Swap or correct them.\n"
                        + "plot.csv:3: tmin is \"x\", which is no number. Write it with a point, as 12.5.");
    }

    @Test
    void of_very_many_mistakes_twenty_are_told() {
        StringBuilder csv = new StringBuilder("date,tmin,tmax,rain\n");
        for (int day = 0; day < 31; day++) {
            csv.append(LocalDate.of(2027, 5, 1).plusDays(day)).append(",1,2,-1\n");
        }

        assertThatThrownBy(() -> read(csv.toString()))
                .hasMessageEndingWith("\n… and 11 more.")
                .satisfies(refused ->
                        assertThat(((RecordRefused) refused).mistakes()).hasSize(31));
    }

    @Test
    void a_missing_or_doubled_column_is_told() {
        assertThatThrownBy(() -> read("date;tmin;tmax;rain\n2027-05-01;7;18;0\n"))
                .hasMessageStartingWith("plot.csv:1: the column date is missing. The first line must name date, tmin, "
                        + "tmax and rain, with commas between them.");
        assertThatThrownBy(() -> read("date,tmin,tmax,rain,rain\n"))
                .hasMessage("plot.csv:1: the column rain stands there twice. Keep one of them.");
    }

    @Test
    void an_empty_record_an_open_quotation_and_an_empty_line_are_told() {
        assertThatThrownBy(() -> read("")).hasMessageStartingWith("plot.csv:1: the column date is missing.");
        assertThatThrownBy(() -> read("date,tmin,tmax,rain\n"))
                .hasMessage("plot.csv: there is no day in it. After the header each line holds one day.");
        assertThatThrownBy(() -> read("date,tmin,tmax,rain\n\"2027-05-01,7,18,0\n"))
                .isInstanceOf(RecordRefused.class)
                .hasMessageContaining("the line cannot be read as CSV. Look for a quotation mark that is not closed.");
        assertThatThrownBy(() -> read("date,tmin,tmax,rain\n2027-05-01,7,18,0\n\n2027-05-02,7,18,0\n"))
                .hasMessage("plot.csv:3: the line is empty. Take it out.");
    }
}
