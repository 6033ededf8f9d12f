package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/** Pressure, moisture and movement of the air, FAO-56 chapter 3. Temperatures −60 to 60 °C, humidity 0 to 100 %. */
public final class Air {
    private static final double MOST_KPA = 20;

    private Air() {}

    /**
     * Atmospheric pressure, kPa (FAO-56 Eq. 7).
     *
     * @param elevationM −430 to 6000 m above the sea
     */
    public static double pressureKPa(double elevationM) {
        within("elevationM", elevationM, -430, 6000, "m");
        return 101.3 * Math.pow((293 - 0.0065 * elevationM) / 293, 5.26);
    }

    /**
     * Psychrometric constant, kPa/°C (FAO-56 Eq. 8).
     *
     * @param pressureKPa 40 to 110 kPa
     */
    public static double psychrometricKPaPerC(double pressureKPa) {
        return 0.665e-3 * within("pressureKPa", pressureKPa, 40, 110, "kPa");
    }

    /** Saturation vapour pressure, kPa (FAO-56 Eq. 11). */
    public static double saturationKPa(double tempC) {
        within("tempC", tempC, -60, 60, "°C");
        return 0.6108 * Math.exp(17.27 * tempC / (tempC + 237.3));
    }

    /** Mean saturation vapour pressure of a day, kPa (FAO-56 Eq. 12): the mean of those at both temperatures, not that at their mean. */
    public static double meanSaturationKPa(double tminC, double tmaxC) {
        notSwapped(tminC, tmaxC);
        return (saturationKPa(tmaxC) + saturationKPa(tminC)) / 2;
    }

    /** Slope of the saturation vapour pressure curve, kPa/°C (FAO-56 Eq. 13). */
    public static double slopeKPaPerC(double tempC) {
        return 4098 * saturationKPa(tempC) / Math.pow(tempC + 237.3, 2);
    }

    /** Actual vapour pressure from the dew point, kPa (FAO-56 Eq. 14); the lowest temperature stands in for it where it is not known. */
    public static double actualFromDewPointKPa(double dewPointC) {
        return saturationKPa(dewPointC);
    }

    /**
     * Actual vapour pressure from wet and dry bulb, kPa (FAO-56 Eq. 15, 16).
     *
     * @param dryC dry bulb, not below {@code wetC}
     * @param coefficientPerC 0.000662 for ventilated, 0.000800 for naturally ventilated, 0.001200 for indoor instruments
     * @param pressureKPa 40 to 110 kPa
     * @return not below 0
     */
    public static double actualFromWetBulbKPa(double dryC, double wetC, double coefficientPerC, double pressureKPa) {
        notSwapped(wetC, dryC);
        within("coefficientPerC", coefficientPerC, 0.0005, 0.002, "/°C");
        within("pressureKPa", pressureKPa, 40, 110, "kPa");
        return Math.max(0, saturationKPa(wetC) - coefficientPerC * pressureKPa * (dryC - wetC));
    }

    /** Actual vapour pressure from the highest and lowest relative humidity, kPa (FAO-56 Eq. 17). */
    public static double actualFromHumidityKPa(
            double tminC, double tmaxC, double highestPercent, double lowestPercent) {
        notSwapped(tminC, tmaxC);
        within("highestPercent", highestPercent, 0, 100, "%");
        within("lowestPercent", lowestPercent, 0, highestPercent, "%");
        return (saturationKPa(tminC) * highestPercent + saturationKPa(tmaxC) * lowestPercent) / 200;
    }

    /** Actual vapour pressure from the mean relative humidity, kPa (FAO-56 Eq. 19). */
    public static double actualFromMeanHumidityKPa(double tminC, double tmaxC, double meanPercent) {
        return within("meanPercent", meanPercent, 0, 100, "%") / 100 * meanSaturationKPa(tminC, tmaxC);
    }

    /**
     * Wind speed at 2 m, m/s (FAO-56 Eq. 47).
     *
     * @param windMs wind speed, 0 to 60 m/s
     * @param heightM height of the measurement above the ground, 0.5 to 100 m
     */
    public static double windAtTwoMetresMs(double windMs, double heightM) {
        within("windMs", windMs, 0, 60, "m/s");
        within("heightM", heightM, 0.5, 100, "m");
        return heightM == 2 ? windMs : windMs * 4.87 / Math.log(67.8 * heightM - 5.42);
    }

    /** Lets a vapour pressure pass, kPa. */
    static double vapour(String name, double kPa) {
        return within(name, kPa, 0, MOST_KPA, "kPa");
    }

    static void notSwapped(double tminC, double tmaxC) {
        within("tminC", tminC, -60, 60, "°C");
        within("tmaxC", tmaxC, -60, 60, "°C");
        if (tminC > tmaxC) {
            throw new IllegalArgumentException("tminC " + tminC + " °C is above tmaxC " + tmaxC + " °C");
        }
    }
}
