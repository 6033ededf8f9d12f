package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * From sunrise to sunset as an almanac has it: from the sun's upper edge at the horizon, bent up by the air, to the same in the
 * evening. Declination after the low-precision formulas of the Astronomical Almanac (from memory; about 0.01°), the centre of the sun
 * at −0.833°. Right to about 2 minutes between the polar circles; no mountains, no height of the place.
 */
public final class DayLength {
    private static final double HORIZON_DEGREES = -0.833;

    /** Days from 1 January 2000 noon to the noon of 1 January of the year. */
    private static double daysSince2000(int year, int dayOfYear) {
        int before = year - 1;
        long leap = before / 4 - before / 100 + before / 400 - 484;
        return 365.0 * (year - 2000) + leap + dayOfYear - 1;
    }

    private DayLength() {}

    /**
     * Hours from sunrise to sunset; 0 when the sun does not rise, 24 when it does not set.
     *
     * @param latitude −90 to 90°, south negative
     * @param year 1950 to 2100
     * @param dayOfYear 1 to 366
     */
    public static double hours(double latitude, int year, int dayOfYear) {
        within("year", year, 1950, 2100, "");
        within("dayOfYear", dayOfYear, 1, 366, "");
        double phi = Sun.radians(latitude);
        double delta = declination(daysSince2000(year, dayOfYear));
        double cosine = (Math.sin(Math.toRadians(HORIZON_DEGREES)) - Math.sin(phi) * Math.sin(delta))
                / Math.max(1e-12, Math.cos(phi) * Math.cos(delta));
        return 24 / Math.PI * Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    private static double declination(double days) {
        double anomaly = Math.toRadians(357.528 + 0.9856003 * days);
        double longitude =
                Math.toRadians(280.460 + 0.9856474 * days + 1.915 * Math.sin(anomaly) + 0.020 * Math.sin(2 * anomaly));
        double tilt = Math.toRadians(23.439 - 0.0000004 * days);
        return Math.asin(Math.sin(tilt) * Math.sin(longitude));
    }
}
