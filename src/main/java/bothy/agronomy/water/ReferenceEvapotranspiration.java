package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/** Evapotranspiration of the reference grass, mm a day. */
public final class ReferenceEvapotranspiration {
    private ReferenceEvapotranspiration() {}

    /**
     * The air of a day or a month.
     *
     * @param meanC mean of the highest and lowest temperature, −60 to 60 °C
     * @param windMs wind at 2 m, 0 to 60 m/s; 2 m/s where it is not known (FAO-56 p. 63)
     * @param saturationKPa mean saturation vapour pressure
     * @param actualKPa actual vapour pressure
     * @param psychrometricKPaPerC psychrometric constant, 0.02 to 0.08 kPa/°C
     */
    public record Conditions(
            double meanC, double windMs, double saturationKPa, double actualKPa, double psychrometricKPaPerC) {
        public Conditions {
            within("meanC", meanC, -60, 60, "°C");
            within("windMs", windMs, 0, 60, "m/s");
            Air.vapour("saturationKPa", saturationKPa);
            Air.vapour("actualKPa", actualKPa);
            within("psychrometricKPaPerC", psychrometricKPaPerC, 0.02, 0.08, "kPa/°C");
        }

        /** Δ + γ(1 + 0.34 u₂), the divisor of FAO-56 Eq. 6. */
        double divisor() {
            return Air.slopeKPaPerC(meanC) + psychrometricKPaPerC * (1 + 0.34 * windMs);
        }
    }

    /** Penman–Monteith (FAO-56 Eq. 6), not below 0. */
    public static double penmanMonteithMm(Conditions air, double netRadiationMj, double soilHeatMj) {
        return Math.max(0, radiationTermMm(air, netRadiationMj, soilHeatMj) + windTermMm(air, 900));
    }

    /**
     * Penman–Monteith for an hour, mm an hour (FAO-56 Eq. 53), not below 0.
     *
     * @param netRadiationMj MJ m⁻² an hour, −60 to 60
     * @param soilHeatMj MJ m⁻² an hour; a tenth of the net radiation by day, half by night (FAO-56 Eq. 45, 46)
     */
    public static double penmanMonteithMmPerHour(Conditions air, double netRadiationMj, double soilHeatMj) {
        return Math.max(0, radiationTermMm(air, netRadiationMj, soilHeatMj) + windTermMm(air, 37));
    }

    /** The part of Eq. 6 or 53 that the sun drives, mm. */
    public static double radiationTermMm(Conditions air, double netRadiationMj, double soilHeatMj) {
        within("netRadiationMj", netRadiationMj, -60, 60, "MJ/m²");
        within("soilHeatMj", soilHeatMj, -30, 30, "MJ/m²");
        return Radiation.MM_PER_MJ * (netRadiationMj - soilHeatMj) * Air.slopeKPaPerC(air.meanC()) / air.divisor();
    }

    /** The part that dry wind drives, mm; the constant is 900 for a day and 37 for an hour. */
    static double windTermMm(Conditions air, double constant) {
        double deficit = Math.max(0, air.saturationKPa() - air.actualKPa());
        return air.psychrometricKPaPerC() * constant / (air.meanC() + 273) * air.windMs() * deficit / air.divisor();
    }

    /**
     * Penman–Monteith where only the temperatures are known (FAO-56 p. 60 to 65 and Example 20): the dew point is taken as the
     * lowest temperature, the sun from the range of temperature, the wind as told or 2 m/s.
     *
     * @param dayOfYear 1 to 366
     * @param elevationM −430 to 6000 m
     */
    public static double penmanMonteithFromTemperaturesMm(
            double latitude, int dayOfYear, double elevationM, double tminC, double tmaxC, double windMs) {
        double above = Sun.extraterrestrialMj(latitude, dayOfYear);
        double solar = Radiation.fromTemperaturesMj(above, tminC, tmaxC, Radiation.INLAND, elevationM);
        double actual = Air.actualFromDewPointKPa(tminC);
        double lost = Radiation.netLongMj(tminC, tmaxC, actual, solar, Radiation.clearSkyMj(above, elevationM));
        Conditions air = new Conditions(
                (tminC + tmaxC) / 2,
                windMs,
                Air.meanSaturationKPa(tminC, tmaxC),
                actual,
                Air.psychrometricKPaPerC(Air.pressureKPa(elevationM)));
        return penmanMonteithMm(air, Radiation.netShortMj(solar) - lost, 0);
    }

    /** Hargreaves, for when only the temperatures are known (FAO-56 Eq. 52), not below 0. */
    public static double hargreavesMm(double latitude, int dayOfYear, double tminC, double tmaxC) {
        Air.notSwapped(tminC, tmaxC);
        double above = Radiation.asMm(Sun.extraterrestrialMj(latitude, dayOfYear));
        return Math.max(0, 0.0023 * ((tminC + tmaxC) / 2 + 17.8) * Math.sqrt(tmaxC - tminC) * above);
    }
}
