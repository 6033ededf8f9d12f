package bothy.garden;

/**
 * Puts another entry in the place of an earlier one, or takes the earlier one back.
 *
 * @param entry number of the diary line that it amends
 * @param instead what stands there from now on, {@code null} when the line is taken back
 */
public record Amendment(long entry, Entry instead) implements Entry {}
