package bothy.reading;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The amount of a label in the diary's unit: a label may repeat it as it was told ("22lb", "0.5in", "34°F"), so that whoever labels a
 * message need not reckon. Exact definitions of the yard, pound and gallon, as in {@code rules/words/units.yaml}.
 */
final class LabelledAmount {
    private static final Pattern FIGURE_AND_UNIT = Pattern.compile("(-?[0-9.]+)(\\D+)");
    private static final Map<String, Turned> UNITS = Map.of(
            "g", new Turned(0.001, "kg"),
            "lb", new Turned(0.45359237, "kg"),
            "oz", new Turned(0.028349523125, "kg"),
            "l", new Turned(1, "L"),
            "ml", new Turned(0.001, "L"),
            "in", new Turned(25.4, "mm"));
    private static final double IMPERIAL_GALLON = 4.54609;
    private static final double US_GALLON = 3.785411784;

    /** How many of the diary's unit one is. */
    private record Turned(double factor, String unit) {}

    private LabelledAmount() {}

    static String inTheDiarysUnit(String labelled, boolean us) {
        Matcher parts = FIGURE_AND_UNIT.matcher(labelled);
        if (!parts.matches()) {
            return labelled;
        }
        double figure = Double.parseDouble(parts.group(1));
        return switch (parts.group(2)) {
            case "°F" -> rounded((figure - 32) / 1.8) + "°C";
            case "gal" -> rounded(figure * (us ? US_GALLON : IMPERIAL_GALLON)) + "L";
            default -> {
                Turned turned = UNITS.get(parts.group(2));
                yield turned == null ? labelled : rounded(figure * turned.factor()) + turned.unit();
            }
        };
    }

    /** To the thousandth, a whole number without its point: as {@link Score} writes what was read. */
    static String rounded(double value) {
        double thousandths = Math.round(value * 1000) / 1000.0;
        return thousandths == Math.rint(thousandths) ? String.valueOf((long) thousandths) : String.valueOf(thousandths);
    }
}
