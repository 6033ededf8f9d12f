package bothy.agronomy;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;

/**
 * One frost-free season and what can be sown when around it. Weeks before or from a frost are those of the crop sheet; this is
 * plain arithmetic on dates and holds in either hemisphere.
 *
 * @param lastFrost last frost of spring, the season's beginning
 * @param firstFrost first frost of autumn, its end
 */
public record Season(LocalDate lastFrost, LocalDate firstFrost) {
    private static final double MOST_WEEKS = 60;

    public Season {
        if (!lastFrost.isBefore(firstFrost)) {
            throw new IllegalArgumentException(
                    "the first autumn frost " + firstFrost + " must come after the last spring frost " + lastFrost);
        }
    }

    /** Days strictly between the last and the first frost, as the lists of NOAA normals count a growing season. */
    public long frostFreeDays() {
        return ChronoUnit.DAYS.between(lastFrost, firstFrost) - 1;
    }

    /**
     * The window so many weeks from the last frost.
     *
     * @param lowWeeks −60 to 60, negative is before the frost
     * @param highWeeks −60 to 60, not below {@code lowWeeks}
     */
    public Window fromLastFrost(double lowWeeks, double highWeeks) {
        return around(lastFrost, lowWeeks, highWeeks);
    }

    /** The window so many weeks before the last frost: from {@code highWeeks} before (0 to 60) to {@code lowWeeks} before (0 to 60). */
    public Window beforeLastFrost(double lowWeeks, double highWeeks) {
        return around(lastFrost, -highWeeks, -lowWeeks);
    }

    /** The window so many weeks from the first autumn frost, negative before it, for what is sown or set for next year. */
    public Window fromFirstFrost(double lowWeeks, double highWeeks) {
        return around(firstFrost, lowWeeks, highWeeks);
    }

    /**
     * When to sow under cover, so that seedlings have the right age in the window for planting out: sown at the window's start less
     * the longest age, they are old enough even when they are slow; at its end less the shortest, not too late.
     *
     * @param plantingOut window for planting out
     * @param lowWeeks shortest age of a seedling at planting out, 1 to 60 weeks
     * @param highWeeks longest, 1 to 60 weeks
     */
    public static Window sowingFor(Window plantingOut, double lowWeeks, double highWeeks) {
        Stated.ordered("seedling weeks", lowWeeks, highWeeks, 1, MOST_WEEKS, "weeks");
        return new Window(
                plantingOut.from().minusDays(days(highWeeks)), plantingOut.to().minusDays(days(lowWeeks)));
    }

    /**
     * The last day on which a sowing still ripens before the first frost.
     *
     * @param daysToMaturity days from that sowing to the first harvest, 10 to 400
     * @param pickingDays days of picking wanted before the frost, 0 to 200
     * @param slackDays days added because growth slows in autumn, 0 to 60; common practice is {@link #AUTUMN_SLACK_DAYS}
     */
    public LocalDate lastSowing(int daysToMaturity, int pickingDays, int slackDays) {
        Stated.within("daysToMaturity", daysToMaturity, 10, 400, "days");
        Stated.within("pickingDays", pickingDays, 0, 200, "days");
        Stated.within("slackDays", slackDays, 0, 60, "days");
        return firstFrost.minusDays(daysToMaturity + pickingDays + slackDays);
    }

    /** Whether something sown on a day still ripens before the first frost; parameters as for {@link #lastSowing}. */
    public boolean stillRipens(LocalDate sowing, int daysToMaturity, int pickingDays, int slackDays) {
        return !sowing.isAfter(lastSowing(daysToMaturity, pickingDays, slackDays));
    }

    /** Days to add to the days to maturity of a late sowing as days shorten: two weeks, common practice. */
    public static final int AUTUMN_SLACK_DAYS = 14;

    /**
     * Succession sowings: every so many days from the first day on, as long as the last one still ripens.
     *
     * @param first first sowing
     * @param everyDays days from one to the next, 3 to 120
     * @param lastSowing last day that is worth sowing, see {@link #lastSowing}
     * @return in order; empty when the first is already too late
     */
    public static List<LocalDate> succession(LocalDate first, int everyDays, LocalDate lastSowing) {
        Stated.within("everyDays", everyDays, 3, 120, "days");
        return Stream.iterate(first, day -> !day.isAfter(lastSowing), day -> day.plusDays(everyDays))
                .toList();
    }

    private static Window around(LocalDate frost, double lowWeeks, double highWeeks) {
        Stated.ordered("weeks", lowWeeks, highWeeks, -MOST_WEEKS, MOST_WEEKS, "weeks");
        return new Window(frost.plusDays(days(lowWeeks)), frost.plusDays(days(highWeeks)));
    }

    private static long days(double weeks) {
        return Math.round(7 * weeks);
    }
}
