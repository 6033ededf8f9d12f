package bothy.garden;

import java.time.LocalDate;
import java.util.List;

/**
 * What a grower means to do, or weather told to come. Never written as done.
 *
 * @param what what is to be done or to come
 * @param crop the crop, {@code null} when not told
 * @param plantings ids of the plantings, empty when not begun yet
 * @param on the day planned, {@code null} when not told
 */
public record Plan(What what, String crop, List<String> plantings, LocalDate on) {
    public Plan {
        plantings = List.copyOf(plantings);
    }
}
