package bothy.advice;

import bothy.advice.facts.ClimateHere;
import bothy.advice.facts.Frosts;
import bothy.advice.facts.NoSummer;
import bothy.agronomy.FrostDates;
import bothy.almanac.Climates;
import bothy.garden.Climate;
import bothy.garden.Grower;
import bothy.garden.Normals;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
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

    /** Where frost may come for fewer days than this, hardy crops are sown for the winter. Common practice. */
    private static final int MILD_WINTER_DAYS = 120;

    /** Nearer to the poles a mild winter is too dark, and the summer cool enough, to sow as on frosty plots; degrees. Own choice. */
    private static final double SHORT_OF_COOL_SUMMERS = 42;

    private static final double POLE = 90;
    /** Nearer to the equator frost is not usual; degrees. */
    private static final double FROST_SELDOM = 30;

    private static final int HALF_A_YEAR_MONTHS = 6;
    private static final int ANY_LEAP_YEAR = 2000;

    private final Grower grower;
    private final Normals normals;
    private final Climates climates;
    private final Climates.Usual usual;

    /**
     * @param normals by a station's record, for dates that the grower did not tell; {@code null} for none
     * @param climates for what is guessed from the place
     */
    SeasonDates(Grower grower, Normals normals, Climates climates) {
        this.grower = grower;
        this.normals = normals;
        this.climates = climates;
        this.usual = climates.at(grower);
    }

    /** The frosts around a day: the last spring frost not long before it or the one to come, and the first autumn frost to come. */
    Frosts around(LocalDate day) {
        MonthDay spring = known(grower.lastSpringFrost(), Normals::lastSpring);
        boolean told = spring != null || grower.frostFree();
        LocalDate last = next(lastSpring(), day.minusDays(STILL_THIS_SPRING));
        // Late in the season the spring at hand is the next one, but the frost to come is still this autumn's.
        return new Frosts(last, next(firstAutumn(), day.isBefore(last) ? day : last.plusDays(1)), told, frostFree());
    }

    private MonthDay lastSpring() {
        MonthDay known = known(grower.lastSpringFrost(), Normals::lastSpring);
        return known != null ? known : estimated(usual.lastSpring(), 0, FrostDates::lastSpring);
    }

    private MonthDay firstAutumn() {
        MonthDay known = known(grower.firstAutumnFrost(), Normals::firstAutumn);
        return known != null ? known : estimated(usual.firstAutumn(), 1, FrostDates::firstAutumn);
    }

    private boolean dated() {
        return known(grower.lastSpringFrost(), Normals::lastSpring) != null
                || known(grower.firstAutumnFrost(), Normals::firstAutumn) != null;
    }

    private boolean frostFree() {
        return !dated() && (grower.frostFree() || usual.frostFree());
    }

    /** What winters and summers are like, by what was told of frost before all that is guessed from the place. */
    ClimateHere climate() {
        boolean told = grower.climate() != null || grower.frostFree() || dated();
        return new ClimateHere(dated() && grower.climate() == null ? byFrosts() : usual.climate(), told);
    }

    /** A winter in which frost may come for less than four months is mild, wherever it is. */
    private Climate byFrosts() {
        LocalDate first = firstAutumn().atYear(ANY_LEAP_YEAR);
        long winter = ChronoUnit.DAYS.between(first, next(lastSpring(), first));
        if (winter >= MILD_WINTER_DAYS || usual.climate() != Climate.FROSTY) {
            return winter >= MILD_WINTER_DAYS ? Climate.FROSTY : usual.climate();
        }
        boolean warm = usual.latitude() != null && Math.abs(usual.latitude()) < SHORT_OF_COOL_SUMMERS;
        return warm ? Climate.MILD : Climate.FROSTY;
    }

    /** Beyond the latitudes for which frosts are estimated, where none were told, no season without frost is counted on. */
    Optional<NoSummer> noSummer() {
        Double latitude = usual.latitude() == null ? grower.latitude() : usual.latitude();
        boolean guessed =
                !dated() && !grower.frostFree() && usual.lastSpring() == null && usual.climate() == Climate.FROSTY;
        return Optional.ofNullable(latitude)
                .filter(degrees -> guessed && Math.abs(degrees) <= POLE)
                .filter(degrees -> Math.abs(degrees) > FROST_SELDOM
                        && FrostDates.typical(degrees).isEmpty())
                .map(NoSummer::new);
    }

    private MonthDay known(MonthDay told, Function<Normals, Normals.Frost> recorded) {
        return told != null
                ? told
                : Optional.ofNullable(normals)
                        .map(recorded)
                        .map(Normals.Frost::evenOdds)
                        .orElse(null);
    }

    /** Where there is no frost, the ends of the warm season; else as usual at the place, or else by the latitude. */
    private MonthDay estimated(MonthDay atPlace, int which, Function<FrostDates, MonthDay> byLatitude) {
        if (frostFree() || usual.climate() != Climate.FROSTY && atPlace == null) {
            MonthDay north = climates.season(usual.climate())[which];
            return grower.southern()
                    ? MonthDay.from(north.atYear(ANY_LEAP_YEAR).plusMonths(HALF_A_YEAR_MONTHS))
                    : north;
        }
        if (atPlace != null) {
            return atPlace;
        }
        FrostDates hemisphere = grower.southern()
                ? new FrostDates(SOUTH_SPRING, SOUTH_AUTUMN)
                : new FrostDates(NORTH_SPRING, NORTH_AUTUMN);
        return byLatitude.apply(Optional.ofNullable(usual.latitude())
                .filter(latitude -> Math.abs(latitude) <= 90)
                .flatMap(FrostDates::typical)
                .orElse(hemisphere));
    }

    private static LocalDate next(MonthDay of, LocalDate notBefore) {
        LocalDate sameYear = of.atYear(notBefore.getYear());
        return sameYear.isBefore(notBefore) ? of.atYear(notBefore.getYear() + 1) : sameYear;
    }
}
