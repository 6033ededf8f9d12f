package bothy.garden;

import java.time.LocalDate;

/**
 * Plants of one crop that were begun together and are looked after together.
 *
 * @param id stable within one grower's diary: the crop and a number ("tomato-2")
 * @param crop the sheet's or the names list's name of the crop
 * @param variety as the grower calls it
 * @param place where it is now
 * @param container what it grows in now, {@code null} in open ground or when not told
 * @param start what it was begun from
 * @param begun the day it was sown, or set, or bought in; {@code null} when not told
 * @param count how many are left, {@code null} when not told
 * @param sown how many were sown or set, {@code null} when not told
 * @param ended the day it was cleared, died or was eaten up, {@code null} while it goes on
 */
public record Planting(
        String id,
        String crop,
        String variety,
        String place,
        String container,
        Start start,
        LocalDate begun,
        Integer count,
        Integer sown,
        LocalDate ended) {
    /** No crop shows sooner after sowing, days; common practice. */
    public static final int SOONEST_UP_DAYS = 3;

    /** What a planting was begun from. {@code PACKET}: asked about, not begun. */
    public enum Start {
        PACKET,
        SEED,
        SET,
        CLOVE,
        TUBER,
        PLANT
    }

    public boolean begunAtAll() {
        return start != Start.PACKET;
    }

    public boolean over() {
        return ended != null;
    }
}
