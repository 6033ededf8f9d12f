package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * What a planting has borne, by what was told.
 *
 * @param totalKg kg, {@code null} when no weight was told
 * @param pieces fruits, heads or roots, {@code null} when none were counted
 * @param first the first day of picking
 * @param last the last one, {@code null} when it was one day
 */
public record HarvestTold(String planting, Double totalKg, Integer pieces, LocalDate first, LocalDate last) {}
