package bothy.advice.facts;

import bothy.garden.What;
import java.time.LocalDate;

/**
 * Something that the grower means to do.
 *
 * @param on the day planned, {@code null} when not told
 */
public record Meant(String planting, What what, LocalDate on) {}
