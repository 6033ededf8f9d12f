package bothy.advice.facts;

import java.time.LocalDate;

/** A note of an earlier season that belongs to a crop now begun again. */
public record Lesson(String planting, String text, LocalDate on) {}
