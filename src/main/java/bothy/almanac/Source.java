package bothy.almanac;

/**
 * Where a figure comes from.
 *
 * @param source author and title, or "common practice"
 * @param read "copy" when a copy of the source was read, "memory" when it was recalled
 */
public record Source(String source, String read) {}
