package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import bothy.agronomy.Normal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;

/**
 * The chances of one frost date through the years, as a normal curve. Frost dates are close to one: the University of Delaware's table is
 * met within a day from its 50 and 10 % dates, 79 counted years of Portland, Maine, within two days, NOAA's table of Albany, which is
 * uneven, within five.
 *
 * @param middle the date with frost as often after it as before
 * @param spreadDays standard deviation, 0 to 60 days
 */
public record FrostCurve(MonthDay middle, double spreadDays) {
    /** Spread where only the usual date is known: 12 days, of the published tables at hand (9 to 17 days); own choice. */
    public static final double USUAL_SPREAD_DAYS = 12;

    private static final int COMMON_YEAR = 2001;

    public FrostCurve {
        within("spreadDays", spreadDays, 0, 60, "days");
    }

    /** The usual curve around a date told. */
    public static FrostCurve around(MonthDay middle) {
        return new FrostCurve(middle, USUAL_SPREAD_DAYS);
    }

    /**
     * The date after which the frost of this curve falls with a chance: 0.1 gives the careful date of spring, 0.9 that of autumn.
     *
     * @param chance 0.01 to 0.99
     */
    public MonthDay dateWithChanceAfter(double chance) {
        double z = -Normal.quantile(within("chance", chance, 0.01, 0.99, ""));
        return MonthDay.from(middle.atYear(COMMON_YEAR).plusDays(Math.round(z * spreadDays)));
    }

    /** The chance that the frost of this curve falls after a date, 0 to 1. */
    public double chanceAfter(MonthDay date) {
        double days = daysFrom(middle, date);
        if (spreadDays == 0) {
            return days < 0 ? 1 : 0;
        }
        return Normal.cumulative(-days / spreadDays);
    }

    /** Days from one date of the year to another by the shorter way round, −182 to 182. */
    static long daysFrom(MonthDay from, MonthDay to) {
        LocalDate start = from.atYear(COMMON_YEAR);
        long days = ChronoUnit.DAYS.between(start, to.atYear(COMMON_YEAR));
        return Math.floorMod(days + 182, 365) - 182;
    }
}
