package bothy.reading.told;

import bothy.garden.Event;

/** Amounts that can be: what cannot is asked back, so that no reckoning rests on it. Limits are own choice, far beyond any plot. */
public final class Plausible {
    /** The wettest days on record brought more, but not in a garden that is still asked about. */
    private static final double MOST_RAIN_MM = 500;

    private static final double MOST_LITRES = 1000;
    private static final double MOST_KG = 10_000;

    private Plausible() {}

    static boolean amount(Event event) {
        return event.amount() == null || event.unit() == null || amount(event.amount(), event.unit());
    }

    /** @param unit as in entries: "mm", "L", "kg", "°C" … */
    public static boolean amount(double amount, String unit) {
        if (unit.startsWith("°")) {
            // What can be in one scale only is asked about with both.
            return PlotEvents.possible(amount) || PlotEvents.possible(PlotEvents.celsius(amount));
        }
        double most =
                switch (unit) {
                    case "mm" -> MOST_RAIN_MM;
                    case "L" -> MOST_LITRES;
                    case "kg" -> MOST_KG;
                    default -> Double.MAX_VALUE;
                };
        return amount >= 0 && amount <= most;
    }

    /** The amount in the grower's eyes: "minus 5 mm", "-300". */
    static String told(Event event) {
        double amount = Math.abs(event.amount());
        String figure = amount == Math.rint(amount) ? String.valueOf((long) amount) : String.valueOf(amount);
        return event.unit().startsWith("°")
                ? PlotEvents.figures(event.amount())
                : (event.amount() < 0 ? "minus " : "") + figure + " " + event.unit();
    }
}
