package bothy.advice.facts;

import bothy.garden.What;
import java.time.LocalDate;

/**
 * An event of the diary.
 *
 * @param planting id of the planting, {@code null} for the whole plot
 * @param detail what the kind of entry leaves open ("dry", "last", "female"), {@code null} when not told
 */
public record Happened(
        String planting, What what, LocalDate on, Integer count, Double amount, String unit, String detail) {}
