package bothy.advice.reckoned;

import java.time.LocalDate;
import java.util.Map;
import java.util.stream.DoubleStream;

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
 * @param likeliest "slow", "cold", "hot", "dry" or "dead"; "open" where none of them is about as likely as not
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

    private static final double AS_LIKELY_AS_NOT = 0.45;
    private static final double WORTH_TELLING_PERCENT = 10;

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

    /** The chance of cold where it is worth telling, else {@code null}. */
    public Double coldToTell() {
        return toTell(coldPercent);
    }

    /** As {@link #coldToTell}, of heat. */
    public Double hotToTell() {
        return toTell(hotPercent);
    }

    /** As {@link #coldToTell}, of drought. */
    public Double dryToTell() {
        return toTell(dryPercent);
    }

    private static Double toTell(double percent) {
        return percent < WORTH_TELLING_PERCENT ? null : percent;
    }

    /** The word for the greatest of the chances, "open" where it is less than {@value #AS_LIKELY_AS_NOT} of them all. */
    public static String likeliest(double slow, double cold, double hot, double dry, double dead) {
        double greatest = DoubleStream.of(slow, cold, hot, dry, dead).max().orElseThrow();
        if (greatest < AS_LIKELY_AS_NOT * (slow + cold + hot + dry + dead)) {
            return "open";
        }
        return Map.of("slow", slow, "cold", cold, "hot", hot, "dry", dry, "dead", dead).entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }
}
