package bothy.reading.said;

/**
 * A place or container named in a message.
 *
 * @param name its name as kept ("greenhouse", "bed 2", "9 cm pots")
 * @param container whether it is a container
 */
public record PlaceSaid(int start, int end, String name, boolean container) implements Span {}
