package bothy.garden;

/**
 * What someone asks to eat, or to give to an animal.
 *
 * @param by who would eat it where it is no person: "dog", "cat", "rabbits", "hens", "livestock"; "child" for children; {@code null} else
 * @param part the part of the plant, or "raw" for uncooked, {@code null} where the crop itself is meant
 * @param fault what is wrong with it ("split", "grubs"), {@code null} when nothing was told
 */
public record Eaten(String by, String part, String fault) {}
