package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * The sun above a place through the year, FAO-56 chapter 3. Latitudes −90 to 90°, south negative; day of the year 1 to 366. In polar
 * day and night the sunset hour angle is π and 0, as the geometry has it.
 */
public final class Sun {
    /** Solar constant, MJ m⁻² min⁻¹. */
    private static final double SOLAR_CONSTANT = 0.0820;

    private Sun() {}

    /** Degrees as radians (FAO-56 Eq. 22). */
    public static double radians(double latitude) {
        return Math.PI / 180 * within("latitude", latitude, -90, 90, "°");
    }

    /** Inverse relative distance from earth to sun (FAO-56 Eq. 23). */
    public static double inverseDistance(int dayOfYear) {
        return 1 + 0.033 * Math.cos(2 * Math.PI / 365 * day(dayOfYear));
    }

    /** Declination of the sun, radians (FAO-56 Eq. 24). */
    public static double declination(int dayOfYear) {
        return 0.409 * Math.sin(2 * Math.PI / 365 * day(dayOfYear) - 1.39);
    }

    /** Hour angle at sunset, radians (FAO-56 Eq. 25), 0 in polar night and π in polar day. */
    public static double sunsetHourAngle(double latitude, int dayOfYear) {
        double cosine = -Math.tan(radians(latitude)) * Math.tan(declination(dayOfYear));
        return Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** Extraterrestrial radiation, MJ m⁻² a day (FAO-56 Eq. 21). */
    public static double extraterrestrialMj(double latitude, int dayOfYear) {
        double phi = radians(latitude);
        double delta = declination(dayOfYear);
        double sunset = sunsetHourAngle(latitude, dayOfYear);
        double geometry = sunset * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(sunset);
        return Math.max(0, 24 * 60 / Math.PI * SOLAR_CONSTANT * inverseDistance(dayOfYear) * geometry);
    }

    /** Daylight hours, h (FAO-56 Eq. 34): the sun's middle above a flat horizon, without the air's refraction; see {@link DayLength}. */
    public static double daylightHours(double latitude, int dayOfYear) {
        return 24 / Math.PI * sunsetHourAngle(latitude, dayOfYear);
    }

    /** Seasonal correction of solar time, h (FAO-56 Eq. 32, 33). */
    public static double seasonalCorrectionHours(int dayOfYear) {
        double b = 2 * Math.PI * (day(dayOfYear) - 81) / 364;
        return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
    }

    /**
     * Hour angle of the sun, radians (FAO-56 Eq. 31), morning negative.
     *
     * @param clockHour the middle of the hour by the clock, 0 to 24 h, without summer time
     * @param zoneWestDegrees middle of the clock's time zone, degrees west of Greenwich, 0 to 360
     * @param placeWestDegrees the place, degrees west of Greenwich, 0 to 360
     */
    public static double hourAngle(int dayOfYear, double clockHour, double zoneWestDegrees, double placeWestDegrees) {
        within("clockHour", clockHour, 0, 24, "h");
        within("zoneWestDegrees", zoneWestDegrees, 0, 360, "°");
        within("placeWestDegrees", placeWestDegrees, 0, 360, "°");
        double solar = clockHour + 0.06667 * (zoneWestDegrees - placeWestDegrees) + seasonalCorrectionHours(dayOfYear);
        return Math.PI / 12 * (solar - 12);
    }

    /**
     * Extraterrestrial radiation in an hour, MJ m⁻² an hour (FAO-56 Eq. 28 to 30), 0 when the sun is down.
     *
     * @param hourAngle hour angle at the middle of the hour, −2π to 2π
     */
    public static double extraterrestrialMjPerHour(double latitude, int dayOfYear, double hourAngle) {
        within("hourAngle", hourAngle, -2 * Math.PI, 2 * Math.PI, "rad");
        double sunset = sunsetHourAngle(latitude, dayOfYear);
        double from = Math.max(-sunset, hourAngle - Math.PI / 24);
        double to = Math.min(sunset, hourAngle + Math.PI / 24);
        if (from >= to) {
            return 0;
        }
        double phi = radians(latitude);
        double delta = declination(dayOfYear);
        double geometry = (to - from) * Math.sin(phi) * Math.sin(delta)
                + Math.cos(phi) * Math.cos(delta) * (Math.sin(to) - Math.sin(from));
        return Math.max(0, 12 * 60 / Math.PI * SOLAR_CONSTANT * inverseDistance(dayOfYear) * geometry);
    }

    private static double day(int dayOfYear) {
        return within("dayOfYear", dayOfYear, 1, 366, "");
    }
}
