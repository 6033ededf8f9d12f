package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * What a crop uses against the reference grass, through its stages (FAO-56 chapter 6, Table 12).
 *
 * @param initial Kc while the plants are small, 0 to 1.5
 * @param middle Kc from full cover to the first yellowing, 0 to 1.5
 * @param end Kc at the end, 0 to 1.5
 */
public record CropCoefficient(double initial, double middle, double end) {
    public CropCoefficient {
        within("initial", initial, 0, 1.5, "");
        within("middle", middle, 0, 1.5, "");
        within("end", end, 0, 1.5, "");
    }

    /**
     * Kc on a day (FAO-56 Eq. 66): level, rising in a straight line, level, falling in a straight line.
     *
     * @param day days since the start, 0 to 1000; after the end the end's value holds
     * @param stages lengths of the four stages
     */
    public double on(double day, Stages stages) {
        within("day", day, 0, 1000, "days");
        double mid = stages.initialDays() + stages.developmentDays();
        double late = mid + stages.middleDays();
        if (day <= stages.initialDays()) {
            return initial;
        }
        if (day < mid) {
            return initial + (day - stages.initialDays()) / stages.developmentDays() * (middle - initial);
        }
        if (day <= late) {
            return middle;
        }
        double part = stages.lateDays() == 0 ? 1 : Math.min(1, (day - late) / stages.lateDays());
        return middle + part * (end - middle);
    }

    /**
     * The same crop in other wind and moisture than the table's (FAO-56 Eq. 62, 65): the middle always, the end only when it is at
     * least 0.45.
     *
     * @param windMs mean wind at 2 m in the stage, held to 1 to 6 m/s
     * @param lowestHumidityPercent mean of the lowest humidity of the days, held to 20 to 80 %
     * @param heightM height of the plants, 0.1 to 10 m
     */
    public CropCoefficient adjusted(double windMs, double lowestHumidityPercent, double heightM) {
        double more = climate(windMs, lowestHumidityPercent, heightM);
        return new CropCoefficient(initial, clip(middle + more), end < 0.45 ? end : clip(end + more));
    }

    /** The correction for climate that FAO-56 Eq. 62, 65, 70 and 72 share. */
    static double climate(double windMs, double lowestHumidityPercent, double heightM) {
        double wind = Math.max(1, Math.min(6, within("windMs", windMs, 0, 60, "m/s")));
        double humidity =
                Math.max(20, Math.min(80, within("lowestHumidityPercent", lowestHumidityPercent, 0, 100, "%")));
        within("heightM", heightM, 0.1, 10, "m");
        return (0.04 * (wind - 2) - 0.004 * (humidity - 45)) * Math.pow(heightM / 3, 0.3);
    }

    /**
     * Kc while the plants are small, from the two figures read for light and heavy wetting (FAO-56 Eq. 59).
     *
     * @param lightKc read in Figure 29 for 3 to 10 mm
     * @param heavyKc read in Figure 30 for over 40 mm
     * @param wettingMm water that a wetting gives to the wetted part, 0 to 200 mm; the ends hold outside 10 to 40
     */
    public static double initialFromWetting(double lightKc, double heavyKc, double wettingMm) {
        within("lightKc", lightKc, 0, 1.5, "");
        within("heavyKc", heavyKc, 0, 1.5, "");
        double depth = Math.max(10, Math.min(40, within("wettingMm", wettingMm, 0, 200, "mm")));
        return lightKc + (depth - 10) / (40 - 10) * (heavyKc - lightKc);
    }

    /** The same where only a part of the surface is wetted (FAO-56 Eq. 60). */
    public static double initialPartlyWetted(double initialKc, double wettedShare) {
        within("initialKc", initialKc, 0, 1.5, "");
        return initialKc * within("wettedShare", wettedShare, 0, 1, "");
    }

    private static double clip(double kc) {
        return Math.max(0, Math.min(1.5, kc));
    }
}
