package bothy.replying;

import bothy.almanac.Range;
import bothy.garden.Units;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Set;

/** Writes numbers, quantities and days as the grower reads them. The end of a figure's name tells its unit. */
final class Quantities {
    private static final DateTimeFormatter DAY_FIRST = DateTimeFormatter.ofPattern("EEE d MMMM", Locale.UK);
    private static final DateTimeFormatter MONTH_FIRST = DateTimeFormatter.ofPattern("EEE, MMMM d", Locale.US);
    /** Frost dates are averages: no weekday, no year. */
    private static final Set<String> FROSTS =
            Set.of("lastSpring", "firstAutumn", "frostDay", "earlyFrost", "evenFrost", "lateFrost");

    private static final DateTimeFormatter FROST = DateTimeFormatter.ofPattern("d MMMM", Locale.UK);
    private static final DateTimeFormatter US_FROST = DateTimeFormatter.ofPattern("MMMM d", Locale.US);
    static final double CM_PER_INCH = 2.54;
    private static final double LEAST_PERCENT = 0.5;
    private static final double KM_PER_MILE = 1.609344;
    private static final double DAYS_PER_MONTH = 30.4;
    private static final double M2_PER_SQUARE_FOOT = 0.09290304;
    private static final double LITRES_PER_CUP = 0.2366;
    static final double G_PER_POUND = 453.59237;
    private static final int OUNCES = 16;
    private static final double LEAST_POUNDS = 0.495;
    private final Units units;
    private final LocalDate today;

    Quantities(Units units, LocalDate today) {
        this.units = units;
        this.today = today;
    }

    String day(LocalDate date) {
        long away = ChronoUnit.DAYS.between(today, date);
        String written = date.format(units == Units.US ? MONTH_FIRST : DAY_FIRST);
        return date.getYear() != today.getYear() || Math.abs(away) > 300 ? written + " " + date.getYear() : written;
    }

    /** Without its weekday: one of several in a list. */
    String dayOfYear(LocalDate date) {
        return date.format(units == Units.US ? US_FROST : FROST);
    }

    /** "today", "tomorrow", "yesterday" or the day. */
    String nearDay(LocalDate date) {
        long away = ChronoUnit.DAYS.between(today, date);
        return away == 0 ? "today" : away == 1 ? "tomorrow" : away == -1 ? "yesterday" : day(date);
    }

    /** "today", "tomorrow", "yesterday" or "on" the day. */
    String onDay(LocalDate date) {
        String near = nearDay(date);
        return near.equals(day(date)) ? "on " + near : near;
    }

    String write(String name, Object value) {
        if (value instanceof LocalDate date) {
            return FROSTS.contains(name) ? date.format(units == Units.US ? US_FROST : FROST) : day(date);
        }
        if (value instanceof Range range) {
            return span(name, range.low(), range.high());
        }
        if (value instanceof Number number) {
            return span(name, number.doubleValue(), number.doubleValue());
        }
        if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        return String.valueOf(value);
    }

    private String span(String name, double low, double high) {
        boolean us = units == Units.US;
        if (name.endsWith("C")) {
            return us
                    ? span(fahrenheit(low), fahrenheit(high), 0, " °F")
                    : span(low, high, low == high ? whole(low, high, 1) : 0, " °C");
        }
        if (name.equals("rainMm")
                || name.equals("allRainMm")
                || name.equals("wettestMm")
                || name.equals("yearRainMm")
                || name.equals("waterMm")) {
            // Rain is told in inches however much of it falls in a year.
            return us ? rain(low / 10 / CM_PER_INCH, high / 10 / CM_PER_INCH) : span(low, high, 0, " mm");
        }
        if (name.equals("degreeDays")) {
            return span(us ? low * 9 / 5 : low, us ? high * 9 / 5 : high, 0, "");
        }
        if (name.endsWith("Mm") || name.endsWith("MmPerWeek")) {
            return us
                    ? inches(low / 10, high / 10)
                    : low >= 20 ? centimetres(low / 10, high / 10) : span(low, high, 0, " mm");
        }
        if (name.endsWith("Cm")) {
            return us ? inches(low, high) : centimetres(low, high);
        }
        if (name.equals("rowLength")) {
            return us
                    ? span(low * 100 / CM_PER_INCH / 12, high * 100 / CM_PER_INCH / 12, 0, " feet")
                    : span(low, high, whole(low, high, 1), " m");
        }
        if (name.equals("bedArea")) {
            return us
                    ? span(low / M2_PER_SQUARE_FOOT, high / M2_PER_SQUARE_FOOT, 0, " square feet")
                    : span(low, high, whole(low, high, 1), " square metres");
        }
        if (name.endsWith("LitresOnBed")) {
            return us
                    ? span(perSquareFoot(low), perSquareFoot(high), 1, " gal to the square foot")
                    : span(low, high, 0, " litres to the square metre");
        }
        if (name.endsWith("Litres") || name.endsWith("litresPerPlant")) {
            return us ? american(low, high) : span(low, high, whole(low, high, 1), high == 1 ? " litre" : " litres");
        }
        if (name.endsWith("Kg")) {
            return us
                    ? pounds(low * 1000 / G_PER_POUND, high * 1000 / G_PER_POUND)
                    : weight(low, high, name.equals("Kg") && high < 10);
        }
        if (name.endsWith("Kmh")) {
            String miles = span(low / KM_PER_MILE, high / KM_PER_MILE, 0, " mph");
            return us ? miles : span(low, high, 0, " km/h") + " (" + miles + ")";
        }
        if (name.endsWith("Percent") && low == high && low > 0 && low < LEAST_PERCENT) {
            return "less than 1%";
        }
        if (name.endsWith("Percent")) {
            return span(low, high, 0, "%");
        }
        if (name.endsWith("lifeDays")) {
            return lifetime(low, high);
        }
        return span(low, high, whole(low, high, 1), "");
    }

    /** A weighed harvest to two decimals, a reckoned one to one; less than a kilogram in grams: "0.2 kg" is not what 150 g weigh. */
    private static String weight(double lowKg, double highKg, boolean weighed) {
        return highKg < 1 ? span(lowKg * 1000, highKg * 1000, 0, " g") : span(lowKg, highKg, weighed ? 2 : 1, " kg");
    }

    /** Less than half a pound in ounces. */
    private static String pounds(double low, double high) {
        return high < LEAST_POUNDS ? span(low * OUNCES, high * OUNCES, 0, " oz") : span(low, high, 1, " lb");
    }

    /** Less than a quarter gallon is told in cups: "0 gal" waters nothing. */
    private static String american(double lowLitres, double highLitres) {
        return highLitres < Units.US.gallonLitres() / 4
                ? cups(Math.max(1, lowLitres / LITRES_PER_CUP), Math.max(1, highLitres / LITRES_PER_CUP))
                : span(lowLitres / Units.US.gallonLitres(), highLitres / Units.US.gallonLitres(), 1, " gal");
    }

    private static double perSquareFoot(double litresPerM2) {
        return litresPerM2 * M2_PER_SQUARE_FOOT / Units.US.gallonLitres();
    }

    private static String cups(double low, double high) {
        return span(low, high, 0, Math.round(high) == 1 ? " cup" : " cups");
    }

    /** How long something keeps, in the largest unit that fits: "2–6 months", "1–2 weeks", "4–10 days". */
    private static String lifetime(double lowDays, double highDays) {
        if (lowDays >= 28) {
            return span(lowDays / DAYS_PER_MONTH, highDays / DAYS_PER_MONTH, 0, " months");
        }
        return lowDays >= 7 ? span(lowDays / 7, highDays / 7, 0, " weeks") : span(lowDays, highDays, 0, " days");
    }

    private static double fahrenheit(double celsius) {
        return celsius * 9 / 5 + 32;
    }

    private static String centimetres(double low, double high) {
        return low >= 100
                ? span(low / 100, high / 100, whole(low / 100, high / 100, 1), " m")
                : span(low, high, high < 10 ? whole(low, high, 1) : 0, " cm");
    }

    private static String inches(double lowCm, double highCm) {
        double low = lowCm / CM_PER_INCH;
        double high = highCm / CM_PER_INCH;
        if (high < 1) {
            return span(low, high, 1, " inch");
        }
        return low >= 36 ? span(low / 12, high / 12, 1, " feet") : span(low, high, low < 3 ? 1 : 0, " inches");
    }

    private static String rain(double low, double high) {
        int decimals = high < 3 ? 1 : 0;
        return span(low, high, decimals, high <= 1 ? " inch" : " inches");
    }

    private static int whole(double low, double high, int otherwise) {
        return low == Math.rint(low) && high == Math.rint(high) || Math.abs(high) >= 20 ? 0 : otherwise;
    }

    private static String span(double low, double high, int decimals, String unit) {
        String from = number(low, decimals);
        String to = number(high, decimals);
        boolean negative = from.startsWith("-") || to.startsWith("-");
        return (from.equals(to) ? from : from + (negative ? " to " : "–") + to) + unit;
    }

    private static String number(double value, int decimals) {
        String written = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return written.contains(".") ? written.replaceAll("\\.?0+$", "") : written.equals("-0") ? "0" : written;
    }
}
