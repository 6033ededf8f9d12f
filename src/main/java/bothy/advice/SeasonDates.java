package bothy.advice;

import bothy.advice.facts.Frosts;
import bothy.agronomy.FrostDates;
import bothy.garden.Grower;
import bothy.garden.Normals;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.function.Function;

/** Frost dates of the season in which something grows. */
final class SeasonDates {
    /** Estimates for when not even a place was told; no source: middle of the dates usual in temperate gardens. */
    private static final MonthDay NORTH_SPRING = MonthDay.of(5, 10);

    private static final MonthDay NORTH_AUTUMN = MonthDay.of(10, 10);
    private static final MonthDay SOUTH_SPRING = MonthDay.of(11, 1);
    private static final MonthDay SOUTH_AUTUMN = MonthDay.of(4, 25);
    /** A sowing up to so many days after the last frost still belongs to that spring. */
    private static final int STILL_THIS_SPRING = 130;

    private final Grower grower;
    private final Normals normals;

    /** @param normals by a station's record, for dates that the grower did not tell; {@code null} for none */
    SeasonDates(Grower grower, Normals normals) {
        this.grower = grower;
        this.normals = normals;
    }

    /** The frosts around a day: the last spring frost not long before it or the one to come, and the first autumn frost to come. */
    Frosts around(LocalDate day) {
        MonthDay spring = known(grower.lastSpringFrost(), Normals::lastSpring);
        MonthDay autumn = known(grower.firstAutumnFrost(), Normals::firstAutumn);
        boolean told = spring != null;
        MonthDay usedSpring = told ? spring : estimated(FrostDates::lastSpring);
        MonthDay usedAutumn = autumn != null ? autumn : estimated(FrostDates::firstAutumn);
        LocalDate last = next(usedSpring, day.minusDays(STILL_THIS_SPRING));
        // Late in the season the spring at hand is the next one, but the frost to come is still this autumn's.
        return new Frosts(last, next(usedAutumn, day.isBefore(last) ? day : last.plusDays(1)), told);
    }

    private MonthDay known(MonthDay told, Function<Normals, Normals.Frost> recorded) {
        return told != null
                ? told
                : Optional.ofNullable(normals)
                        .map(recorded)
                        .map(Normals.Frost::evenOdds)
                        .orElse(null);
    }

    private MonthDay estimated(Function<FrostDates, MonthDay> which) {
        FrostDates hemisphere = grower.southern()
                ? new FrostDates(SOUTH_SPRING, SOUTH_AUTUMN)
                : new FrostDates(NORTH_SPRING, NORTH_AUTUMN);
        return which.apply(Optional.ofNullable(grower.latitude())
                .filter(latitude -> Math.abs(latitude) <= 90)
                .flatMap(FrostDates::typical)
                .orElse(hemisphere));
    }

    private static LocalDate next(MonthDay of, LocalDate notBefore) {
        LocalDate sameYear = of.atYear(notBefore.getYear());
        return sameYear.isBefore(notBefore) ? of.atYear(notBefore.getYear() + 1) : sameYear;
    }
}
