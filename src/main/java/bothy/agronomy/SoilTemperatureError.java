package bothy.agronomy;

import java.util.List;
import java.util.function.BiConsumer;

/**
 * What soil temperatures may have been when they were told or guessed: the same each day off by a normal error, taken in steps up to
 * three standard deviations either way.
 *
 * @param deviationC standard deviation of the error, 0.5 to 6 °C
 */
record SoilTemperatureError(double deviationC) {
    private static final int STEPS = 12;
    private static final double COLDEST_C = -20;
    private static final double HOTTEST_C = 60;

    SoilTemperatureError {
        Stated.within("errorC", deviationC, 0.5, 6, "°C");
    }

    /** @param course takes the weight of each possible course and its temperatures, °C; the weights do not add up to 1 */
    void each(List<Double> dailySoilTempC, BiConsumer<Double, List<Double>> course) {
        for (int step = -STEPS; step <= STEPS; step++) {
            double offC = 3 * deviationC * step / STEPS;
            double weight = Math.exp(-offC * offC / (2 * deviationC * deviationC));
            course.accept(
                    weight,
                    dailySoilTempC.stream()
                            .map(tempC -> Math.max(COLDEST_C, Math.min(HOTTEST_C, tempC + offC)))
                            .toList());
        }
    }
}
