package bothy.almanac;

/**
 * A published figure that is a span.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}; equal to it when the source gives one figure
 */
public record Range(double low, double high) {
    public Range {
        if (!(low <= high)) {
            throw new IllegalArgumentException("low " + low + " is above high " + high);
        }
    }

    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    public double middle() {
        return (low + high) / 2;
    }
}
