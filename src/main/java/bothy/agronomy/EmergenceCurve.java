package bothy.agronomy;

/**
 * How the seedlings of one sowing come up, spread over days: the share of those that will come at all, log-normal in time.
 *
 * <p>Shape: seedling emergence against time is skewed with a long late tail and is close to log-normal in thermal time (the
 * thermal-time models of Covell et al. 1986 and Bradford 2002; from memory). The width is an own choice: see {@link #USUAL_SPREAD}.
 *
 * @param medianDays day by which half of those that will come are up, above 0 to 400
 * @param spread standard deviation of the natural logarithm of the days, 0.01 to 2
 */
public record EmergenceCurve(double medianDays, double spread) {
    /**
     * Own model, no source: nine in ten are up after 1.38 times the median and one in ten after 0.73 times. Chosen so that a tray
     * which comes half up in 8 days runs from the 6th to the 11th day, as is common in a tray of fresh seed at a steady temperature.
     */
    public static final double USUAL_SPREAD = 0.25;

    private static final double LEAST_DAYS = 0.01;
    private static final double MOST_DAYS = 400;

    public EmergenceCurve {
        Stated.within("medianDays", medianDays, LEAST_DAYS, MOST_DAYS, "days");
        Stated.within("spread", spread, 0.01, 2, "");
    }

    /** A curve with the usual width around the printed days to emergence, which are taken as the median. */
    public static EmergenceCurve around(double printedDays) {
        return new EmergenceCurve(printedDays, USUAL_SPREAD);
    }

    /**
     * A curve for when only "usually 7 to 14 days" is known: one in ten up at the low end, nine in ten at the high end (own model).
     *
     * @param lowDays 0.01 to 400
     * @param highDays at or above the low end, to 400
     */
    public static EmergenceCurve usually(double lowDays, double highDays) {
        Stated.ordered("usualDays", lowDays, highDays, LEAST_DAYS, MOST_DAYS, "days");
        double spread = Math.log(highDays / lowDays) / (2 * Normal.quantile(0.9));
        return new EmergenceCurve(Math.sqrt(lowDays * highDays), Math.min(2, Math.max(0.05, spread)));
    }

    /**
     * Share up after so many days, 0 to 1.
     *
     * @param days days since sowing, 0 to 10 000
     */
    public double share(double days) {
        Stated.within("days", days, 0, 10_000, "days");
        return days == 0 ? 0 : Normal.cumulative(Math.log(days / medianDays) / spread);
    }

    /**
     * Days until a share is up.
     *
     * @param share of those that will come, 0.001 to 0.999
     */
    public double daysUntil(double share) {
        Stated.within("share", share, 0.001, 0.999, "");
        return medianDays * Math.exp(spread * Normal.quantile(share));
    }
}
