package bothy.reading.said;

/**
 * A measured quantity.
 *
 * @param value in {@code unit}
 * @param unit "°C", "L", "mm", "kg", "m", "m²"; "°" when it is not known which degrees
 * @param told the number as the grower gave it
 */
public record Quantity(int start, int end, double value, String unit, double told) implements Span {
    public Quantity spanning(int newStart, int newEnd) {
        return new Quantity(newStart, newEnd, value, unit, told);
    }

    /** The same with another value. */
    public Quantity of(double other) {
        return new Quantity(start, end, other, unit, other);
    }

    public boolean degrees() {
        return unit.startsWith("°");
    }
}
