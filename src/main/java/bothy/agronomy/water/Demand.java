package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

import java.time.LocalDate;

/**
 * What the reference grass uses at a place, by the best that is known of the day: Hargreaves with latitude and both temperatures, otherwise
 * the middle of FAO-56 Table 2.
 *
 * @param latitude −90 to 90°, {@code null} when not known
 * @param climate kind of climate for the table
 * @param usualMeanC mean temperature that the season usually has there, −30 to 50 °C, for days without any
 */
public record Demand(Double latitude, TypicalEvapotranspiration.Climate climate, double usualMeanC) {
    public Demand {
        if (latitude != null) {
            within("latitude", latitude, -90, 90, "°");
        }
        within("usualMeanC", usualMeanC, -30, 50, "°C");
    }

    /**
     * Reference evapotranspiration of a day, mm.
     *
     * @param tminC −60 to 60 °C, {@code null} when not known
     * @param tmaxC not below {@code tminC}, to 60 °C, {@code null} when not known
     */
    public double referenceMm(LocalDate date, Double tminC, Double tmaxC) {
        if (tminC == null || tmaxC == null) {
            return TypicalEvapotranspiration.in(climate, usualMeanC).middleMm();
        }
        Air.notSwapped(tminC, tmaxC);
        if (latitude == null) {
            double meanC = Math.max(-30, Math.min(50, (tminC + tmaxC) / 2));
            return TypicalEvapotranspiration.in(climate, meanC).middleMm();
        }
        return Math.min(25, ReferenceEvapotranspiration.hargreavesMm(latitude, date.getDayOfYear(), tminC, tmaxC));
    }
}
