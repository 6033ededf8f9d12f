package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.SowingCalendars.Span;
import bothy.almanac.SowingCalendars.Time;
import bothy.garden.Climate;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times of sowing in mild climates, beside what sowing guides of such places print. */
class SowingCalendarsTest {
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    private static final SowingCalendars CALENDARS = SowingCalendars.in(RULES);

    private static List<Span> spans(
            String crop, Climate climate, Function<SowingCalendars.Calendar, List<Span>> which) {
        return which.apply(CALENDARS.of(crop, climate).orElseThrow());
    }

    @Test
    void everyCropWithASheetHasACalendarForEveryClimateWithoutFrostAndNoOtherHas() {
        assertThat(CALENDARS.crops()).isEqualTo(CropSheets.load(RULES).keySet());
        for (String crop : CALENDARS.crops()) {
            for (Climate climate : Climate.values()) {
                assertThat(CALENDARS.of(crop, climate).isPresent())
                        .as("%s, %s", crop, climate)
                        .isEqualTo(climate != Climate.FROSTY);
            }
        }
    }

    /** Common practice of the temperate calendars of Australia, and half a year on of the Californian coast. */
    @ParameterizedTest
    @CsvSource({
        "broad-bean, MILD, true, 2027-08-01, 2027-04-01, 2027-08-14",
        "broad-bean, MILD, false, 2027-12-01, 2027-10-01, 2028-02-14",
        "coriander, MILD, true, 2027-12-20, 2028-03-01, 2028-09-30",
        "sweetcorn, MILD, true, 2027-08-01, 2027-09-15, 2028-01-31",
        "potato, MILD, true, 2027-11-01, 2028-01-01, 2028-02-29",
        "pea, MILD, true, 2027-08-31, 2027-03-01, 2027-08-31",
        "pea, MILD, true, 2027-09-01, 2028-03-01, 2028-08-31",
        "broad-bean, MILD_COOL_SUMMER, true, 2027-08-20, 2027-04-01, 2027-08-31",
    })
    void theTimeAtHandOrNext(String crop, Climate climate, boolean south, LocalDate day, LocalDate from, LocalDate to) {
        List<Span> spans = spans(crop, climate, SowingCalendars.Calendar::inPlace);

        assertThat(SowingCalendars.atOrAfter(spans, day, south)).contains(new Time(from, to));
    }

    @Test
    void theTimeThatIsOver() {
        List<Span> spans = spans("pea", Climate.MILD, SowingCalendars.Calendar::inPlace);

        assertThat(SowingCalendars.before(spans, LocalDate.of(2027, 10, 1), true))
                .contains(new Time(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 8, 31)));
    }

    @Test
    void broadBeansAreNotForTheTropics() {
        assertThat(CALENDARS.of("broad-bean", Climate.TROPICAL).orElseThrow().never())
                .isTrue();
    }
}
