package bothy.advice.reckoned;

/**
 * What a feed's label says for another can.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param feedMl feed for the can, ml, never more than the label says
 * @param teaspoons the same in level teaspoons of the grower, down to the next half; {@code null} when there are too many or too little
 * @param tablespoons whole level tablespoons of the grower in it; {@code null} when there are too few
 * @param moreTeaspoons level teaspoons beside them, down to the next half; {@code null} for none
 * @param fluidOunces the same in US fluid ounces, down to the next tenth; {@code null} outside the US
 * @param caps the same in caps or scoops of the size told, down to the next half; {@code null} when none was told or it is less than half
 * @param capMl what the cap or scoop told holds, ml; {@code null} with {@code caps}
 * @param canLitres the can, L
 * @param metricMl {@code feedMl} for whom ml come first; {@code null} in the US
 * @param besidesMl {@code feedMl} for whom spoons come first; {@code null} outside the US
 * @param usCanLitres the can of a US grower, L; {@code null} outside the US
 * @param labelMl feed that the label says, ml
 * @param labelLitres in so much water, L
 */
public record FeedMix(
        String planting,
        double feedMl,
        Double teaspoons,
        Double tablespoons,
        Double moreTeaspoons,
        Double fluidOunces,
        Double caps,
        Double capMl,
        double canLitres,
        Double metricMl,
        Double besidesMl,
        Double usCanLitres,
        double labelMl,
        double labelLitres) {}
