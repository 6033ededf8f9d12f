package bothy.agronomy;

import java.time.LocalDate;

/**
 * What a feed's label says to use, and the same strength for another can. Rounded down, so that a can is never stronger than the label.
 *
 * @param feedMl feed, 0.01 to 1000 ml
 * @param waterLitres in so much water, 0.1 to 1000 L; not stronger than 1 to 10, which no liquid feed for watering is
 */
public record FeedDose(double feedMl, double waterLitres) {
    private static final double LEAST_WATER_PER_FEED = 10;

    public FeedDose {
        Stated.within("feedMl", feedMl, 0.01, 1000, "ml");
        Stated.within("waterLitres", waterLitres, 0.1, 1000, "L");
        Stated.within("parts of water to one of feed", 1000 * waterLitres / feedMl, LEAST_WATER_PER_FEED, 1e7, "");
    }

    /** A label that says 1 to so many, 10 to 10 000. */
    public static FeedDose oneTo(double partsOfWater) {
        Stated.within("partsOfWater", partsOfWater, LEAST_WATER_PER_FEED, 10_000, "");
        return new FeedDose(1000 / partsOfWater, 1);
    }

    /**
     * Feed for a can, ml, down to the whole millilitre, below 20 ml to the half and below 5 ml to the tenth: no finer than it is worded.
     *
     * @param canLitres 0.1 to 1000 L
     */
    public double mlFor(double canLitres) {
        double exact = exactMlFor(canLitres);
        double stepsPerMl = exact < 5 ? 10 : exact < 20 ? 2 : 1;
        return Math.floor(exact * stepsPerMl + 1e-9) / stepsPerMl;
    }

    /**
     * Feed for a can before any rounding, ml: what spoons and caps are counted from.
     *
     * @param canLitres 0.1 to 1000 L
     */
    public double exactMlFor(double canLitres) {
        Stated.within("canLitres", canLitres, 0.1, 1000, "L");
        return feedMl * canLitres / waterLitres;
    }

    /** Half the label's strength, for young plants. */
    public FeedDose halfStrength() {
        return new FeedDose(feedMl / 2, waterLitres);
    }

    /**
     * The next feed.
     *
     * @param last day of the last feed, {@code null} when none was given
     * @param start day on which feeding begins by rule
     * @param everyDays label's or sheet's interval, 3 to 60 days
     */
    public static LocalDate next(LocalDate last, LocalDate start, int everyDays) {
        Stated.within("everyDays", everyDays, 3, 60, "days");
        return last == null || last.plusDays(everyDays).isBefore(start) ? start : last.plusDays(everyDays);
    }

    /**
     * How many measures hold no more than the feed: rounded down, so that the can is never stronger.
     *
     * @param feedMl 0 to 100 000 ml
     * @param measureMl 1 to 1000 ml
     * @param parts parts of a measure that can be told apart: 4 for quarters
     */
    public static double measures(double feedMl, double measureMl, int parts) {
        Stated.within("feedMl", feedMl, 0, 100_000, "ml");
        Stated.within("measureMl", measureMl, 1, 1000, "ml");
        return Math.floor(feedMl / measureMl * parts + 1e-9) / parts;
    }
}
