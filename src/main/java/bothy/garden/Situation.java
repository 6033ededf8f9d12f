package bothy.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What reading may know besides the text itself.
 *
 * @param today the grower's day
 * @param grower settings that reading needs: units and the order of day and month
 * @param plantings the grower's plantings, oldest first, the ended ones too
 * @param pending the question that the bot asked last, {@code null} when none waits
 * @param lately the diary lines of the last message that wrote any, for "no, that was Tuesday"
 * @param earlier the diary lines that stand, newest first, for a correction of what was told long before
 * @param mentioned ids of the plantings that were talked about last, for "they"
 * @param crops the crops that were talked about last, whether they grow already or not
 * @param happened what the diary tells already of each planting, by its id
 * @param asked what the last message asked, for "and onions?"; empty when it told something
 */
public record Situation(
        LocalDate today,
        Grower grower,
        List<Planting> plantings,
        Doubt pending,
        List<Logged> lately,
        List<Logged> earlier,
        List<String> mentioned,
        List<String> crops,
        Map<String, Set<What>> happened,
        List<Inquiry> asked) {
    public Situation {
        plantings = List.copyOf(plantings);
        lately = List.copyOf(lately);
        earlier = List.copyOf(earlier);
        mentioned = List.copyOf(mentioned);
        crops = List.copyOf(crops);
        happened = Map.copyOf(happened);
        asked = List.copyOf(asked);
    }

    /** Where nothing is known to have happened yet. */
    public Situation(
            LocalDate today,
            Grower grower,
            List<Planting> plantings,
            Doubt pending,
            List<Logged> lately,
            List<String> mentioned) {
        this(today, grower, plantings, pending, lately, List.of(), mentioned, List.of(), Map.of(), List.of());
    }

    /** The same where no question waits. */
    public Situation withoutPending() {
        return new Situation(today, grower, plantings, null, lately, earlier, mentioned, crops, happened, asked);
    }

    /** Whether the diary tells one of these of a planting. */
    public boolean has(Planting planting, Set<What> any) {
        return happened.getOrDefault(planting.id(), Set.of()).stream().anyMatch(any::contains);
    }
}
