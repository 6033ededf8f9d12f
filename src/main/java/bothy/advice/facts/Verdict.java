package bothy.advice.facts;

import java.time.LocalDate;

/**
 * How a cause stands after the case was weighed.
 *
 * @param of id of the case
 * @param planting id of the planting, {@code null} when not known
 * @param crop name of the crop, {@code null} when not told
 * @param chance between 0 and 1
 * @param rank 1 for the likeliest
 * @param decided whether the likeliest cause is taken as the cause for now
 * @param harmless whether nothing needs doing when it is so
 * @param nextCheck when to look again
 * @param justTold whether the message at hand told something of the case
 */
public record Verdict(
        String of,
        String planting,
        String crop,
        String cause,
        double chance,
        int rank,
        boolean decided,
        boolean harmless,
        LocalDate nextCheck,
        boolean justTold) {}
