package bothy.advice;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.advice.facts.Frosts;
import bothy.agronomy.FrostDates;
import bothy.almanac.Climates;
import bothy.garden.Grower;
import bothy.garden.Normals;
import bothy.garden.Units;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A garden in the south has its frosts half a year from one in the north, in the same season of the year. */
class BothHemispheresTest {
    private static final int HALF_A_YEAR = 183;

    private static Grower at(double latitude, MonthDay spring, MonthDay autumn) {
        return new Grower(ZoneOffset.UTC, latitude, 10.0, spring, autumn, Units.METRIC, null, false);
    }

    @ParameterizedTest
    @ValueSource(doubles = {31, 38, 45, 52, 60})
    void frosts_estimated_from_the_latitude_lie_half_a_year_apart(double latitude) {
        for (int day = 0; day < 365; day += 7) {
            LocalDate north = LocalDate.of(2026, 1, 1).plusDays(day);
            LocalDate south = north.plusDays(HALF_A_YEAR);

            Frosts here = new SeasonDates(at(latitude, null, null), null, Climates.ofNoPlace()).around(north);
            Frosts there = new SeasonDates(at(-latitude, null, null), null, Climates.ofNoPlace()).around(south);

            // a leap day may lie between, and the two halves of a year are a day or two unlike
            assertNear(here.lastSpring(), there.lastSpring(), north);
            assertNear(here.firstAutumn(), there.firstAutumn(), north);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 40, 95, 130, 200, 290, 340})
    void told_frosts_keep_their_order_in_either_hemisphere(int day) {
        LocalDate north = LocalDate.of(2026, 1, 1).plusDays(day);
        FrostDates typical = FrostDates.typical(50).orElseThrow();
        MonthDay spring = typical.lastSpring();
        MonthDay autumn = typical.firstAutumn();

        Frosts here = new SeasonDates(at(50, spring, autumn), null, Climates.ofNoPlace()).around(north);
        Frosts there = new SeasonDates(at(-50, shifted(spring), shifted(autumn)), null, Climates.ofNoPlace())
                .around(north.plusDays(HALF_A_YEAR));

        assertNear(here.lastSpring(), there.lastSpring(), north);
        assertNear(here.firstAutumn(), there.firstAutumn(), north);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_record_stands_in_for_dates_not_told(boolean told) {
        Normals.Frost frost = new Normals.Frost(MonthDay.of(2, 9), MonthDay.of(3, 2), MonthDay.of(3, 23), 16, 4, 0);
        Grower grower = at(47, told ? MonthDay.of(4, 1) : null, null);

        Frosts frosts = new SeasonDates(
                        grower, new Normals(2012, 2015, frost, null, java.util.List.of()), Climates.ofNoPlace())
                .around(LocalDate.of(2027, 2, 1));

        assertThat(frosts.lastSpring()).isEqualTo(told ? LocalDate.of(2027, 4, 1) : LocalDate.of(2027, 3, 2));
        assertThat(frosts.told()).isTrue();
    }

    private static MonthDay shifted(MonthDay day) {
        return MonthDay.from(day.atYear(2025).plusDays(HALF_A_YEAR));
    }

    private static void assertNear(LocalDate north, LocalDate south, LocalDate seenFrom) {
        assertThat(ChronoUnit.DAYS.between(north, south))
                .as("%s and %s seen from %s", north, south, seenFrom)
                .isBetween(HALF_A_YEAR - 3L, HALF_A_YEAR + 3L);
    }
}
