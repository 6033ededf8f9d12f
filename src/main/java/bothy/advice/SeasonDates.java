package bothy.advice;

import bothy.advice.facts.Frosts;
import bothy.garden.Grower;
import java.time.LocalDate;
import java.time.MonthDay;

/** Frost dates of the season in which something grows. */
final class SeasonDates {
    /** Estimates for when nothing was told; no source: middle of the dates usual in temperate gardens. */
    private static final MonthDay NORTH_SPRING = MonthDay.of(5, 10);

    private static final MonthDay NORTH_AUTUMN = MonthDay.of(10, 10);
    private static final MonthDay SOUTH_SPRING = MonthDay.of(11, 1);
    private static final MonthDay SOUTH_AUTUMN = MonthDay.of(4, 25);
    /** A sowing up to so many days after the last frost still belongs to that spring. */
    private static final int STILL_THIS_SPRING = 130;

    private final Grower grower;

    SeasonDates(Grower grower) {
        this.grower = grower;
    }

    /** The frosts of the season to which a day belongs: the last spring frost not long before or after it, and the autumn after. */
    Frosts around(LocalDate day) {
        MonthDay spring = grower.lastSpringFrost();
        MonthDay autumn = grower.firstAutumnFrost();
        boolean told = spring != null;
        MonthDay usedSpring = told ? spring : grower.southern() ? SOUTH_SPRING : NORTH_SPRING;
        MonthDay usedAutumn = autumn != null ? autumn : grower.southern() ? SOUTH_AUTUMN : NORTH_AUTUMN;
        LocalDate last = next(usedSpring, day.minusDays(STILL_THIS_SPRING));
        return new Frosts(last, next(usedAutumn, last.plusDays(1)), told);
    }

    private static LocalDate next(MonthDay of, LocalDate notBefore) {
        LocalDate sameYear = of.atYear(notBefore.getYear());
        return sameYear.isBefore(notBefore) ? of.atYear(notBefore.getYear() + 1) : sameYear;
    }
}
