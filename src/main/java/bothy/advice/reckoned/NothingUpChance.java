package bothy.advice.reckoned;

import java.time.LocalDate;
import java.util.Map;

/**
 * What is likely of seed that is not up.
 *
 * @param sown seeds sown, or ten when not told
 * @param up seedlings seen
 * @param seedAgeYears age of the seed, or one year when not told
 * @param soilTempC °C where they stand, {@code null} when it is not known
 * @param nineInTenBy day by which nine in ten of those that will come are up, {@code null} when they never would or the warmth is not
 *     known
 * @param lookOn day to look again
 * @param slowPercent chance that a seed not up is alive and on its way, %
 * @param coldPercent that it waits for warmth, %
 * @param hotPercent that it waits for a cooler soil, %
 * @param dryPercent that it has had no water, %
 * @param deadPercent that it will not come, %
 * @param likeliest "slow", "cold", "hot", "dry" or "dead"
 * @param told false: whatever was told, part of the chances is judgement
 */
public record NothingUpChance(
        String planting,
        int sown,
        int up,
        double seedAgeYears,
        Double soilTempC,
        LocalDate nineInTenBy,
        LocalDate lookOn,
        double slowPercent,
        double coldPercent,
        double hotPercent,
        double dryPercent,
        double deadPercent,
        String likeliest,
        boolean told) {

    /** The same case with other chances, %, and the likeliest of them. */
    public NothingUpChance with(double slow, double cold, double hot, double dry, double dead) {
        return new NothingUpChance(
                planting,
                sown,
                up,
                seedAgeYears,
                soilTempC,
                nineInTenBy,
                lookOn,
                slow,
                cold,
                hot,
                dry,
                dead,
                likeliest(slow, cold, hot, dry, dead),
                told);
    }

    /** The word for the greatest of the chances. */
    public static String likeliest(double slow, double cold, double hot, double dry, double dead) {
        return Map.of("slow", slow, "cold", cold, "hot", hot, "dry", dry, "dead", dead).entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }
}
