package bothy.replying;

import bothy.garden.Doubt;
import bothy.garden.Units;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures that stand fixed in the wording, written there with their metric unit in braces ({@code {5–8 cm}}, {@code {18 °C}}), in the
 * grower's own units. They are rules of thumb, so they are rounded as one would say them: "2–3 inches", "64 °F".
 */
final class FixedFigures {
    private static final Pattern FIGURE =
            Pattern.compile("\\{(-?[\\d.]+)(?:(?:–| to )(-?[\\d.]+))? (mm|cm|m|km|°C|degrees|litres?|ml|kg|g)}");

    private static final double G_PER_OUNCE = Quantities.G_PER_POUND / 16;
    private static final double KM_PER_MILE = 1.609344;
    private static final double LITTLE = 0.6;
    private final boolean us;

    FixedFigures(Units units) {
        this.us = units == Units.US;
    }

    String in(String text) {
        if (text.indexOf('{') < 0) {
            return text;
        }
        return FIGURE.matcher(text).replaceAll(found -> Matcher.quoteReplacement(figure(found)));
    }

    /** The same question with its figures, and those on its buttons, in the grower's units. */
    Doubt in(Doubt doubt) {
        Map<String, String> arguments = new HashMap<>();
        doubt.arguments().forEach((name, text) -> arguments.put(name, in(text)));
        return new Doubt(
                doubt.about(),
                arguments,
                doubt.choices().stream()
                        .map(choice -> new Doubt.Choice(in(choice.label()), choice.meaning(), choice.then()))
                        .toList(),
                doubt.draft());
    }

    private String figure(MatchResult found) {
        double low = Double.parseDouble(found.group(1));
        double high = found.group(2) == null ? low : Double.parseDouble(found.group(2));
        String unit = found.group(3);
        if (!us) {
            return span(low, high, " " + unit);
        }
        return switch (unit) {
            case "°C" -> span(Math.rint(low * 9 / 5 + 32), Math.rint(high * 9 / 5 + 32), " °F");
            case "degrees" -> span(Math.rint(low * 9 / 5), Math.rint(high * 9 / 5), " degrees");
            case "mm" -> inches(low / 10, high / 10);
            case "cm" -> inches(low, high);
            case "m" -> inches(low * 100, high * 100);
            case "km" -> counted(rounded(low / KM_PER_MILE, 4), rounded(high / KM_PER_MILE, 4), "mile", "miles");
            case "ml" -> spoons(low, high);
            case "g" -> span(rounded(low / G_PER_OUNCE, 4), rounded(high / G_PER_OUNCE, 4), " oz");
            case "kg" ->
                span(
                        rounded(low * 1000 / Quantities.G_PER_POUND, 2),
                        rounded(high * 1000 / Quantities.G_PER_POUND, 2),
                        " lb");
            default ->
                span(rounded(low / Units.US.gallonLitres(), 4), rounded(high / Units.US.gallonLitres(), 4), " gal");
        };
    }

    private static String inches(double lowCm, double highCm) {
        double low = lowCm / Quantities.CM_PER_INCH;
        double high = highCm / Quantities.CM_PER_INCH;
        if (low >= 35) {
            return counted(rounded(low / 12, 4), rounded(high / 12, 4), "foot", "feet");
        }
        return counted(rounded(low, 4), rounded(high, 4), "inch", "inches");
    }

    private static String spoons(double low, double high) {
        double teaspoons = low / Units.US.teaspoonMl();
        return teaspoons < 3
                ? counted(rounded(teaspoons, 4), rounded(high / Units.US.teaspoonMl(), 4), "teaspoon", "teaspoons")
                : counted(
                        rounded(teaspoons / 3, 4),
                        rounded(high / Units.US.teaspoonMl() / 3, 4),
                        "tablespoon",
                        "tablespoons");
    }

    /** To the half below {@code whole}, to the whole above; what is little over a half or less to the quarter. */
    private static double rounded(double value, int whole) {
        double steps = value < LITTLE ? 4 : value < whole ? 2 : 1;
        return Math.rint(value * steps) / steps;
    }

    private static String counted(double low, double high, String one, String many) {
        return span(low, high, " " + (high <= 1 ? one : many));
    }

    private static String span(double low, double high, String unit) {
        String from = number(low);
        String to = number(high);
        return (from.equals(to) ? from : from + (from.startsWith("-") || to.startsWith("-") ? " to " : "–") + to)
                + unit;
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.2f", value).replaceAll("0+$", "");
    }
}
