package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/** Radiation that reaches the grass and leaves it, FAO-56 chapter 3; MJ m⁻² a day, 0 to 60. */
public final class Radiation {
    /** Depth of water that 1 MJ m⁻² evaporates, mm (FAO-56 Eq. 20, 1/2.45). */
    public static final double MM_PER_MJ = 0.408;

    /** Rate of radiation from temperature away from the sea, and at the coast, °C⁻⁰·⁵ (FAO-56 Eq. 50). */
    public static final double INLAND = 0.16;

    public static final double COAST = 0.19;

    private static final double STEFAN_BOLTZMANN = 4.903e-9;
    private static final double MOST_MJ = 60;
    private static final double MOST_CLOUD_LEAVES = 0.05;

    private Radiation() {}

    /** Radiation as depth of evaporated water, mm (FAO-56 Eq. 20). */
    public static double asMm(double radiationMj) {
        return MM_PER_MJ * within("radiationMj", radiationMj, -MOST_MJ, MOST_MJ, "MJ/m²");
    }

    /**
     * Solar radiation from sunshine (FAO-56 Eq. 35 with as = 0.25 and bs = 0.50).
     *
     * @param sunshineHours 0 to 24 h; more than the daylight counts as all of it
     * @param daylightHours 0 to 24 h
     */
    public static double fromSunshineMj(double extraterrestrialMj, double sunshineHours, double daylightHours) {
        within("sunshineHours", sunshineHours, 0, 24, "h");
        within("daylightHours", daylightHours, 0, 24, "h");
        double share = daylightHours == 0 ? 0 : Math.min(1, sunshineHours / daylightHours);
        return (0.25 + 0.50 * share) * mj("extraterrestrialMj", extraterrestrialMj);
    }

    /**
     * Solar radiation from the day's range of temperature (FAO-56 Eq. 50), not above that of a clear sky.
     *
     * @param rate {@link #INLAND} or {@link #COAST}; 0.1 to 0.25
     * @param elevationM −430 to 6000 m
     */
    public static double fromTemperaturesMj(
            double extraterrestrialMj, double tminC, double tmaxC, double rate, double elevationM) {
        Air.notSwapped(tminC, tmaxC);
        within("rate", rate, 0.1, 0.25, "");
        double solar = rate * Math.sqrt(tmaxC - tminC) * mj("extraterrestrialMj", extraterrestrialMj);
        return Math.min(solar, clearSkyMj(extraterrestrialMj, elevationM));
    }

    /** Solar radiation on an island of 0 to 100 m height, monthly only (FAO-56 Eq. 51), not below 0. */
    public static double onIslandMj(double extraterrestrialMj) {
        return Math.max(0, 0.7 * mj("extraterrestrialMj", extraterrestrialMj) - 4);
    }

    /** Solar radiation under a clear sky (FAO-56 Eq. 37). */
    public static double clearSkyMj(double extraterrestrialMj, double elevationM) {
        within("elevationM", elevationM, -430, 6000, "m");
        return (0.75 + 2e-5 * elevationM) * mj("extraterrestrialMj", extraterrestrialMj);
    }

    /** Solar radiation kept by grass of albedo 0.23 (FAO-56 Eq. 38). */
    public static double netShortMj(double solarMj) {
        return (1 - 0.23) * mj("solarMj", solarMj);
    }

    /** Radiation of a black body of this temperature for a day (σT⁴ in FAO-56 Eq. 39). */
    public static double blackBodyMj(double tempC) {
        return STEFAN_BOLTZMANN * Math.pow(within("tempC", tempC, -60, 60, "°C") + 273.16, 4);
    }

    /** What the air's moisture lets through of long-wave radiation (FAO-56 Eq. 39), not below 0. */
    public static double moistureFactor(double actualVapourKPa) {
        return Math.max(0, 0.34 - 0.14 * Math.sqrt(Air.vapour("actualVapourKPa", actualVapourKPa)));
    }

    /**
     * What clouds let through of long-wave radiation (FAO-56 Eq. 39); the ratio counts as 1 at most. Not below 0.05, the floor of
     * the ASCE standardized equation 2005 (from memory).
     */
    public static double cloudFactor(double solarMj, double clearSkyMj) {
        mj("solarMj", solarMj);
        mj("clearSkyMj", clearSkyMj);
        double ratio = clearSkyMj == 0 ? 1 : Math.min(1, solarMj / clearSkyMj);
        return Math.max(MOST_CLOUD_LEAVES, 1.35 * ratio - 0.35);
    }

    /** Net long-wave radiation lost in a day (FAO-56 Eq. 39). */
    public static double netLongMj(
            double tminC, double tmaxC, double actualVapourKPa, double solarMj, double clearSkyMj) {
        Air.notSwapped(tminC, tmaxC);
        return (blackBodyMj(tmaxC) + blackBodyMj(tminC))
                / 2
                * moistureFactor(actualVapourKPa)
                * cloudFactor(solarMj, clearSkyMj);
    }

    /** Heat into the soil in a month from the months before and after (FAO-56 Eq. 43). */
    public static double soilHeatMj(double monthBeforeC, double monthAfterC) {
        return 0.07
                * (within("monthAfterC", monthAfterC, -60, 60, "°C")
                        - within("monthBeforeC", monthBeforeC, -60, 60, "°C"));
    }

    /** Heat into the soil in a month when the month after is not known (FAO-56 Eq. 44). */
    public static double soilHeatSoFarMj(double monthBeforeC, double thisMonthC) {
        return 2 * soilHeatMj(monthBeforeC, thisMonthC);
    }

    private static double mj(String name, double value) {
        return within(name, value, 0, MOST_MJ, "MJ/m²");
    }
}
