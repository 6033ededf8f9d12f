package bothy.agronomy;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Holds a value against the range that a formula states for it. */
public final class Stated {
    private Stated() {}

    /**
     * @param name the parameter's name
     * @param value the value given; NaN and the infinities are never within a range
     * @param low least value allowed
     * @param high greatest value allowed
     * @param unit unit for the message, empty for none
     * @return the value
     * @throws IllegalArgumentException naming the parameter, the value and the range
     */
    public static double within(String name, double value, double low, double high, String unit) {
        if (value >= low && value <= high) {
            return value;
        }
        String behind = unit.isEmpty() ? "" : " " + unit;
        throw new IllegalArgumentException(
                name + " is " + plain(value) + behind + "; allowed is " + plain(low) + " to " + plain(high) + behind);
    }

    /** The same for whole numbers. */
    public static int within(String name, int value, int low, int high, String unit) {
        return (int) within(name, (double) value, low, high, unit);
    }

    /** Lets a range pass whose low end is not above its high end and whose ends are both allowed. */
    public static void ordered(String name, double lowEnd, double highEnd, double low, double high, String unit) {
        within(name, lowEnd, low, high, unit);
        within(name, highEnd, low, high, unit);
        if (lowEnd > highEnd) {
            throw new IllegalArgumentException(
                    name + " runs from " + plain(lowEnd) + " to " + plain(highEnd) + "; the low end must come first");
        }
    }

    private static String plain(double value) {
        return Double.isFinite(value)
                ? new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value)
                : Double.toString(value);
    }
}
