package bothy.advice.facts;

import java.time.LocalDate;

/**
 * A note that belongs to a crop.
 *
 * @param planting the planting that it is a lesson for
 * @param earlier whether it was noted before this planting was begun, of another one of the crop
 */
public record Lesson(String planting, String text, LocalDate on, boolean earlier) {}
