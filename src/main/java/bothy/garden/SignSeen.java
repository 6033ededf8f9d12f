package bothy.garden;

import java.time.LocalDate;
import java.util.Set;

/**
 * A sign of trouble that the grower saw.
 *
 * @param sign trade term with hyphens ("no-emergence", "blossom-end-rot")
 * @param planting id of the planting, {@code null} when it is not known which
 * @param crop name of the crop, {@code null} when not told
 * @param on the day it was seen
 * @param where on the plant ("lower leaves"), {@code null} when not told
 * @param count how many plants, {@code null} when not told
 * @param seedAge how old the seed is that shows nothing, whole years; {@code null} when not told
 */
public record SignSeen(
        String sign, String planting, String crop, LocalDate on, String where, Integer count, Integer seedAge)
        implements Entry {
    /** Signs of seed that does not come up. */
    private static final Set<String> OF_SEED = Set.of("no-emergence", "patchy-emergence");

    /** A sign with which no age of seed is told. */
    public SignSeen(String sign, String planting, String crop, LocalDate on, String where, Integer count) {
        this(sign, planting, crop, on, where, count, null);
    }

    /** Whether a sign, by its name, is of seed that does not come up. */
    public static boolean ofSeed(String sign) {
        return OF_SEED.contains(sign);
    }

    /** The same with the age of the seed that shows nothing, whole years. */
    public SignSeen withSeedAge(Integer seedAge) {
        return new SignSeen(sign, planting, crop, on, where, count, seedAge);
    }

    /** The same of this planting. */
    public SignSeen of(String planting, String crop) {
        return new SignSeen(sign, planting, crop, on, where, count, seedAge);
    }
}
