package bothy.agronomy;

import java.util.List;

/**
 * Why seeds are not up: chances by Bayes' rule. Own model, no source for the whole; its parts are the emergence table, the life of
 * seed ({@link SeedAge}) and these own judgements: the told soil temperature is off by an error with a standard deviation of 2 °C, one
 * guessed from season and latitude by 4 °C;
 * one packet differs from the next like 8 trial seeds; 3 packets in 100 are wholly dead (kept damp or hot), and of sowings in open ground
 * 5 in 100 are lost wholly (that, and mice, birds, rot, a crust); seed told "dry" has had no
 * water at all in half the cases, seed of which nothing was told in one case of ten (out of doors after three weeks, when rain has
 * likely come, in 3 of 100), seed told "moist" in two of a thousand; in soil told "wet" four seeds in ten rot.
 */
public final class NothingUp {
    /** Standard deviation of a soil temperature that was told, °C. */
    public static final double TOLD_ERROR_C = 2;

    /** Standard deviation of one guessed from the season, °C. */
    public static final double GUESSED_ERROR_C = 4;

    private static final double PACKET_WEIGHT = 8;
    /** Sowings under cover that are lost wholly. */
    public static final double LOST_UNDER_COVER = 0.03;

    /** Sowings in open ground that are lost wholly. */
    public static final double LOST_IN_OPEN_GROUND = 0.05;

    private static final double ROT_IN_WET = 0.4;
    private static final int SHARES = 40;

    private final Emergence emergence;
    private final SoilTemperatureError error;
    private final double lost;

    /** @param emergence table of the crop, for a soil temperature that was told, under cover */
    public NothingUp(Emergence emergence) {
        this(emergence, TOLD_ERROR_C, LOST_UNDER_COVER);
    }

    /**
     * @param emergence table of the crop
     * @param errorC standard deviation of the soil temperature, 0.5 to 6 °C
     * @param lost share of such sowings that are lost wholly, 0.01 to 0.5
     */
    public NothingUp(Emergence emergence, double errorC, double lost) {
        this.emergence = emergence;
        this.lost = Stated.within("lost", lost, 0.01, 0.5, "");
        this.error = new SoilTemperatureError(errorC);
    }

    /** How the soil was told to be. */
    public enum Moisture {
        DRY(0.5),
        MOIST(0.002),
        WET(0),
        UNKNOWN(0.1),
        UNKNOWN_FOR_WEEKS(0.03);

        private final double noWater;

        Moisture(double noWater) {
            this.noWater = noWater;
        }
    }

    /**
     * What is true of a seed that is not up yet; the chances add up to 1.
     *
     * @param slow alive and on its way
     * @param tooCold waiting: the soil is below the lowest temperature at which this crop comes
     * @param tooHot waiting: above the highest
     * @param tooDry waiting: it has had no water
     * @param dead it will not come
     */
    public record Chances(double slow, double tooCold, double tooHot, double tooDry, double dead) {
        /**
         * Seedlings still to be expected when warmth and water are put right: all that are not dead.
         *
         * @param notUp seeds not up yet, 0 to 10 000
         */
        public double stillToCome(int notUp) {
            return Stated.within("notUp", notUp, 0, 10_000, "seeds") * (1 - dead);
        }
    }

    /**
     * @param sown seeds sown, 1 to 10 000
     * @param up seedlings seen, 0 to {@code sown}
     * @param dailySoilTempC mean soil temperature of each day since sowing, −10 to 50 °C, at least one day; repeat the told one
     * @param viableShare share of seeds that can still grow by their age, 0 to 1 ({@link SeedAge#viableShare})
     * @param moisture how the soil was told to be
     */
    public Chances chances(int sown, int up, List<Double> dailySoilTempC, double viableShare, Moisture moisture) {
        Stated.within("sown", sown, 1, 10_000, "seeds");
        Stated.within("up", up, 0, sown, "seedlings");
        Stated.within("viableShare", viableShare, 0, 1, "");
        Stated.within("days since sowing", dailySoilTempC.size(), 1, 400, "days");
        dailySoilTempC.forEach(tempC -> Stated.within("dailySoilTempC", tempC, -10, 50, "°C"));
        Sums sums = new Sums();
        double alive = moisture == Moisture.WET ? viableShare * (1 - ROT_IN_WET) : viableShare;
        double[] prior = packets(Math.min(0.99, Math.max(0.01, alive)));
        error.each(dailySoilTempC, (weight, temps) -> {
            weigh(sums, weight * (1 - moisture.noWater), emergence.share(temps), recent(temps), sown, up, prior);
            if (up == 0) {
                sums.tooDry += weight * moisture.noWater;
            }
        });
        return sums.chances();
    }

    /** All packets of one temperature error: how likely is what was seen, and what is then true of a seed not up. */
    private void weigh(Sums sums, double weight, double come, double nowC, int sown, int up, double[] prior) {
        for (int i = 0; i <= SHARES; i++) {
            double viable = (double) i / SHARES;
            double seen = weight * prior[i] * Binomial.exactly(sown, up, viable * come);
            double deadIfNotUp = viable * come == 1 ? 0 : (1 - viable) / (1 - viable * come);
            sums.dead += seen * deadIfNotUp;
            double waiting = seen * (1 - deadIfNotUp);
            if (nowC < emergence.lowestC()) {
                sums.tooCold += waiting;
            } else if (nowC > emergence.highestC()) {
                sums.tooHot += waiting;
            } else {
                sums.slow += waiting;
            }
        }
    }

    private static double recent(List<Double> temps) {
        return temps.subList(Math.max(0, temps.size() - 7), temps.size()).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    /** Chances of packets with 0, 1/40 … 40/40 of their seeds alive: a beta distribution on a grid, and the wholly dead ones. */
    private double[] packets(double mean) {
        double[] chance = new double[SHARES + 1];
        double sum = 0;
        for (int i = 1; i < SHARES; i++) {
            double share = (double) i / SHARES;
            chance[i] = Math.pow(share, PACKET_WEIGHT * mean - 1) * Math.pow(1 - share, PACKET_WEIGHT * (1 - mean) - 1);
            sum += chance[i];
        }
        for (int i = 1; i < SHARES; i++) {
            chance[i] *= (1 - lost) / sum;
        }
        chance[0] = lost;
        return chance;
    }

    private static final class Sums {
        private double slow;
        private double tooCold;
        private double tooHot;
        private double tooDry;
        private double dead;

        Chances chances() {
            double all = slow + tooCold + tooHot + tooDry + dead;
            return all > 0
                    ? new Chances(slow / all, tooCold / all, tooHot / all, tooDry / all, dead / all)
                    : new Chances(1, 0, 0, 0, 0);
        }
    }
}
