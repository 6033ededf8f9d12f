package bothy.reading.said;

/**
 * A number told.
 *
 * @param value the number; of a range the lower end, which overstates nothing
 * @param ordinal whether it was told as "3rd"
 */
public record NumberSaid(int start, int end, double value, boolean ordinal) implements Span {
    public boolean whole() {
        return value == Math.rint(value);
    }
}
