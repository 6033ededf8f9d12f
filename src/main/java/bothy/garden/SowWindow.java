package bothy.garden;

import java.time.LocalDate;

/**
 * When a crop can be sown or set.
 *
 * @param from the first day, {@code null} when it has come
 * @param until the last sensible day
 */
public record SowWindow(String crop, LocalDate from, LocalDate until) {}
