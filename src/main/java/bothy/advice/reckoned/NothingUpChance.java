package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * What is likely of seed that is not up.
 *
 * @param sown seeds sown, or ten when not told
 * @param up seedlings seen
 * @param soilTempC °C where they stand
 * @param nineInTenBy day by which nine in ten of those that will come are up
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
        double soilTempC,
        LocalDate nineInTenBy,
        LocalDate lookOn,
        int slowPercent,
        int coldPercent,
        int hotPercent,
        int dryPercent,
        int deadPercent,
        String likeliest,
        boolean told) {}
