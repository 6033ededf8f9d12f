package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

/**
 * What grass uses in a day by kind of climate, for when no temperature range is known: FAO-56 Table 2, printed for mean temperatures of
 * about 10, of 20 and above 30 °C; joined by straight lines in between, and the outer rows hold beyond.
 *
 * @param lowMm mm a day
 * @param highMm mm a day
 */
public record TypicalEvapotranspiration(double lowMm, double highMm) {

    /** Zone and moisture of the climate, with the printed low and high ends at 10, 20 and 30 °C. */
    public enum Climate {
        TEMPERATE_HUMID(new double[] {1, 2, 4}, new double[] {2, 4, 7}),
        TEMPERATE_DRY(new double[] {1, 4, 6}, new double[] {3, 7, 9}),
        TROPICAL_HUMID(new double[] {2, 3, 5}, new double[] {3, 5, 7}),
        TROPICAL_DRY(new double[] {2, 4, 6}, new double[] {4, 6, 8});

        private final double[] low;
        private final double[] high;

        Climate(double[] low, double[] high) {
            this.low = low;
            this.high = high;
        }
    }

    /** @param meanC mean daily temperature, −30 to 50 °C */
    public static TypicalEvapotranspiration in(Climate climate, double meanC) {
        within("meanC", meanC, -30, 50, "°C");
        return new TypicalEvapotranspiration(at(climate.low, meanC), at(climate.high, meanC));
    }

    /** The middle of the span, mm a day. */
    public double middleMm() {
        return (lowMm + highMm) / 2;
    }

    private static double at(double[] printed, double meanC) {
        double position = Math.max(0, Math.min(2, (meanC - 10) / 10));
        int row = Math.min(1, (int) position);
        return printed[row] + (position - row) * (printed[row + 1] - printed[row]);
    }
}
