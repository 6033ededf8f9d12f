package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Litres, cans and the next day to water: one mm is one litre on a square metre. */
public final class Watering {
    private Watering() {}

    /**
     * Litres for a plant.
     *
     * @param depthMm 0 to 1000 mm
     * @param areaM2 ground that the plant's roots draw on: spacing in the row times between rows, 0.0001 to 100 m²
     */
    public static double litres(double depthMm, double areaM2) {
        return within("depthMm", depthMm, 0, 1000, "mm") * within("areaM2", areaM2, 0.0001, 100_000, "m²");
    }

    /**
     * Depth of the litres told, mm.
     *
     * @param litres 0 to 1 000 000 L
     * @param areaM2 ground watered, 0.0001 to 100 000 m²
     */
    public static double depthMm(double litres, double areaM2) {
        return within("litres", litres, 0, 1_000_000, "L") / within("areaM2", areaM2, 0.0001, 100_000, "m²");
    }

    /**
     * Cans to carry, to the next half can upward.
     *
     * @param litres 0 to 1 000 000 L
     * @param canLitres 0.5 to 50 L
     */
    public static double cans(double litres, double canLitres) {
        within("litres", litres, 0, 1_000_000, "L");
        within("canLitres", canLitres, 0.5, 50, "L");
        return Math.ceil(2 * litres / canLitres - 1e-9) / 2;
    }

    /**
     * A day to come.
     *
     * @param date the day
     * @param day what it is expected to bring, without watering
     */
    public record Ahead(LocalDate date, SoilWater.Day day) {}

    /**
     * The next watering.
     *
     * @param date morning on which to water
     * @param depthMm depth that fills the soil up again; 0 when even full soil does not last that day, as in a small pot
     */
    public record Next(LocalDate date, double depthMm) {}

    /**
     * The next day to water: the first day on which, without watering, the plants would use up the freely taken water by evening (FAO-56
     * p. 171: water before or at the moment when it is used up).
     *
     * @param soil the soil on the morning of the first day
     * @param ahead days in order; empty when no forecast is known
     * @return empty when none of those days needs it
     */
    public static Optional<Next> next(SoilWater soil, List<Ahead> ahead) {
        SoilWater now = soil;
        for (Ahead day : ahead) {
            SoilWater evening = now.after(day.day()).after();
            if (evening.depletionMm() > day.day().freeMm()) {
                double depthMm = Math.max(0, now.depletionMm() - day.day().rainMm());
                return Optional.of(
                        new Next(day.date(), Math.min(depthMm, day.day().totalAvailableMm())));
            }
            now = evening;
        }
        return Optional.empty();
    }
}
