package bothy.garden;

import java.time.LocalDate;

/**
 * Something done to or seen on a planting, or on the whole plot.
 *
 * @param what what was done or seen
 * @param planting id of the planting, {@code null} for the whole plot
 * @param crop the sheet's or the names list's name of the crop ("winter-squash"), {@code null} for the whole plot
 * @param variety the variety as the grower calls it
 * @param count how many seeds, cells, plants, fruits; at least 0
 * @param amount a measured quantity in {@code unit}
 * @param unit "°C", "L", "mm", "kg", "m", "m²" (SI; the grower's own unit was converted by reading)
 * @param on the day it happened
 * @param place where the planting is or was put ("greenhouse", "windowsill", "bed 2")
 * @param container what it grows in ("modules", "9 cm pots", "growbag")
 * @param detail what the kind of entry leaves open: soil "dry", "moist" or "wet"; flowers "male" or "female"; harvest "first"
 *     or "last"; seedlings "more" when others were up before; a loss "some" when neither count nor all was told; seed "old seed" when no
 *     age was told; the text of a note
 * @param seedAge how old the seed was when it was sown, whole years; {@code null} when not told
 */
public record Event(
        What what,
        String planting,
        String crop,
        String variety,
        Integer count,
        Double amount,
        String unit,
        LocalDate on,
        String place,
        String container,
        String detail,
        Integer seedAge)
        implements Entry {
    /** Detail of seedlings that came up after others. */
    public static final String MORE = "more";

    /** Detail of a loss without a count: not all of the planting. */
    public static final String SOME = "some";

    /** Detail of seed potatoes that were set up to sprout before planting. */
    public static final String CHITTING = "chitting";

    /** An event of which no age of seed is told. */
    public Event(
            What what,
            String planting,
            String crop,
            String variety,
            Integer count,
            Double amount,
            String unit,
            LocalDate on,
            String place,
            String container,
            String detail) {
        this(what, planting, crop, variety, count, amount, unit, on, place, container, detail, null);
    }

    /** An event of which no more than its kind, its planting and its day is known. */
    public static Event of(What what, String planting, String crop, LocalDate on) {
        return new Event(what, planting, crop, null, null, null, null, on, null, null, null);
    }

    public Event withPlanting(String planting, String crop) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    public Event withOn(LocalDate on) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    public Event withCount(Integer count) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    public Event withAmount(Double amount, String unit) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    public Event withVariety(String variety) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    public Event withPlace(String place, String container) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    public Event withDetail(String detail) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    /** The same with the age of its seed, whole years. */
    public Event withSeedAge(Integer seedAge) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }

    /** The same as another kind of event. */
    public Event withWhat(What what) {
        return new Event(what, planting, crop, variety, count, amount, unit, on, place, container, detail, seedAge);
    }
}
