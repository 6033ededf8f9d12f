package bothy.garden;

/**
 * The strength that a feed's label says.
 *
 * @param feed feed, ml, or g of a powder that is weighed out, above 0
 * @param waterLitres in so much water, L, above 0
 * @param capMl what the cap or scoop that it was told in holds, ml, above 0; {@code null} when it was told in millilitres, spoons or grams
 * @param weighed whether it is told in grams
 */
public record FeedLabel(double feed, double waterLitres, Double capMl, boolean weighed) {
    /** A label told in millilitres, spoons or parts. */
    public FeedLabel(double feedMl, double waterLitres) {
        this(feedMl, waterLitres, null, false);
    }

    /** A label told in grams of powder. */
    public static FeedLabel weighed(double grams, double waterLitres) {
        return new FeedLabel(grams, waterLitres, null, true);
    }

    /** A label told in caps or scoops, as if each held 1 ml. */
    public static FeedLabel inCaps(double caps, double waterLitres) {
        return new FeedLabel(caps, waterLitres, 1.0, false);
    }

    /** Whether it was told in caps or scoops of which it is not known what one holds; none holds as little as 1 ml. */
    public boolean capUnknown() {
        return capMl != null && capMl == 1.0;
    }

    /** The same label, told in caps, now that it is known what a cap holds. */
    public FeedLabel withCap(double ml) {
        return new FeedLabel(feed * ml / capMl, waterLitres, ml, false);
    }
}
