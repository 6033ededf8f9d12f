package bothy.advice.facts;

import java.time.LocalDate;

/** The most of a planting was harvested; some pulled before it to see how far they are do not count. */
public record Lifted(String planting, LocalDate on) {}
