package bothy.reading.said;

/**
 * The age of seed told.
 *
 * @param at the token before which it was told
 * @param years whole years, {@code null} when seed was only called old
 */
public record SeedSaid(int at, Integer years) {}
