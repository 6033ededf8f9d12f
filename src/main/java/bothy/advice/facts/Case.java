package bothy.advice.facts;

import java.time.LocalDate;
import java.util.List;

/**
 * A trouble that is being looked into: signs told of one planting within days of each other.
 *
 * @param id names the case: the planting, or the crop when no planting is known
 * @param planting id of the planting, {@code null} when not known
 * @param crop name of the crop, {@code null} when not told
 * @param groups groups of crops that the crop belongs to ("brassica")
 * @param signs the signs told
 * @param opened the day of the first
 * @param justTold whether the message at hand told something of it
 * @param outcome what became of it when the message at hand told that, else {@code null}
 */
public record Case(
        String id,
        String planting,
        String crop,
        List<String> groups,
        List<String> signs,
        LocalDate opened,
        boolean justTold,
        String outcome) {}
