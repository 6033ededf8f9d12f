package bothy.agronomy;

import java.util.Arrays;
import java.util.List;

/**
 * How many seedlings may be expected to be up: not a number but a distribution, since neither the warmth of the soil nor the seed is
 * known exactly. Own model: each seed comes up by itself (binomial) with the share of {@link Emergence} times the share of seed that
 * can still grow; the soil temperature is off by a normal error, as in {@link NothingUp}.
 *
 * @param low as few or fewer come in one case of twenty
 * @param likely as many or more come in half of the cases
 * @param high more come in one case of twenty
 */
public record SeedlingsByNow(int low, int likely, int high) {
    private static final double LOW = 0.05;
    private static final double HALF = 0.5;
    private static final double HIGH = 0.95;

    /**
     * @param emergence table of the crop
     * @param errorC standard deviation of the soil temperature, 0.5 to 6 °C
     * @param sown seeds sown, 1 to 2000
     * @param dailySoilTempC mean soil temperature of each day since sowing, −10 to 50 °C, at most 400 days
     * @param viableShare share of seeds that can still grow, 0 to 1
     */
    public static SeedlingsByNow of(
            Emergence emergence, double errorC, int sown, List<Double> dailySoilTempC, double viableShare) {
        Stated.within("sown", sown, 1, 2000, "seeds");
        Stated.within("viableShare", viableShare, 0, 1, "");
        Stated.within("days since sowing", dailySoilTempC.size(), 0, 400, "days");
        dailySoilTempC.forEach(tempC -> Stated.within("dailySoilTempC", tempC, -10, 50, "°C"));
        double[] chance = new double[sown + 1];
        new SoilTemperatureError(errorC).each(dailySoilTempC, (weight, temps) -> {
            double each = viableShare * emergence.share(temps);
            for (int up = 0; up <= sown; up++) {
                chance[up] += weight * Binomial.exactly(sown, up, each);
            }
        });
        double all = Arrays.stream(chance).sum();
        return new SeedlingsByNow(least(chance, LOW * all), least(chance, HALF * all), least(chance, HIGH * all));
    }

    /** The least number of seedlings that is not exceeded with this chance. */
    private static int least(double[] chance, double wanted) {
        double sum = 0;
        for (int up = 0; up < chance.length; up++) {
            sum += chance[up];
            if (sum >= wanted) {
                return up;
            }
        }
        return chance.length - 1;
    }
}
