package bothy.advice.facts;

import bothy.garden.What;
import java.time.LocalDate;

/**
 * An event that the message at hand told.
 *
 * @param planting id of the planting, {@code null} for the whole plot
 * @param daysAgo days from the day that it was on to today: what was told long after its day wants the advice of now
 * @param detail what the kind of entry leaves open ("dry", "last", "female"), {@code null} when not told
 * @param place place named with what concerns no planting ("bed 2"), {@code null} for none
 */
public record Told(
        String planting,
        What what,
        LocalDate on,
        int daysAgo,
        Integer count,
        Double amount,
        String unit,
        String detail,
        String place) {}
