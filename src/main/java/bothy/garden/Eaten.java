package bothy.garden;

/**
 * What someone asks to eat, or to give to an animal.
 *
 * @param by who would eat it where it is no person: "dog", "cat", "rabbits", "hens", "livestock"; "child" for children; {@code null} else
 * @param part the part of the plant, or "raw" for uncooked, {@code null} where the crop itself is meant
 * @param fault what is wrong with it ("split", "grubs"), {@code null} when nothing was told
 * @param named whether the message names a crop; else the crop answered for is only taken for granted
 * @param harm whether it is asked if it does harm ("are they poisonous"), so that a yes or no to whether it is food would say the reverse
 */
public record Eaten(String by, String part, String fault, boolean named, boolean harm) {}
