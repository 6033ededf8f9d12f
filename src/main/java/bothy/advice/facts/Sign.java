package bothy.advice.facts;

import java.time.LocalDate;

/**
 * A sign of trouble on a planting.
 *
 * @param planting id of the planting, {@code null} when not known
 * @param justTold whether the message at hand told it
 */
public record Sign(String planting, String sign, LocalDate on, boolean justTold) {}
