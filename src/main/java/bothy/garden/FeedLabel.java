package bothy.garden;

/**
 * The strength that a feed's label says.
 *
 * @param feedMl feed, ml, above 0
 * @param waterLitres in so much water, L, above 0
 * @param capMl what the cap or scoop that it was told in holds, ml, above 0; {@code null} when it was told in millilitres or spoons
 */
public record FeedLabel(double feedMl, double waterLitres, Double capMl) {
    /** A label told in millilitres, spoons or parts. */
    public FeedLabel(double feedMl, double waterLitres) {
        this(feedMl, waterLitres, null);
    }

    /** The same label, told in caps, now that it is known what a cap holds. */
    public FeedLabel withCap(double ml) {
        return new FeedLabel(feedMl * ml / capMl, waterLitres, ml);
    }
}
