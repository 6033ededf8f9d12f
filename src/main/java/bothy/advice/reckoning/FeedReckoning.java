package bothy.advice.reckoning;

import bothy.advice.reckoned.FeedMix;
import bothy.advice.reckoned.FeedTooStrong;
import bothy.agronomy.FeedDose;
import bothy.garden.FeedLabel;
import bothy.garden.Inquiry;
import bothy.garden.Units;
import java.util.Optional;

/** The label's strength for the can told. */
public final class FeedReckoning {
    private static final double METRIC_CAN_LITRES = 10;
    private static final double US_CAN_LITRES = 2 * 3.785411784;

    /** Level metric spoons; a US spoon is a little less, which never makes it stronger. */
    private static final double TEASPOON_ML = 5;

    private static final double TABLESPOON_ML = 15;
    private static final double US_FLUID_OUNCE_ML = 29.5735295625;
    private static final double WORDED_WHOLE_FROM = 20;
    private static final double SPOONS_FROM_ML = 2.5;
    private static final double TEASPOONS_TO_ML = 20;

    private FeedReckoning() {}

    static Optional<?> of(Subject subject) {
        return subject.inquiries().stream()
                .filter(inquiry -> inquiry.label() != null)
                .findFirst()
                .map(inquiry -> mix(subject.id(), inquiry, subject.grower().units()));
    }

    /** The mix for a question that told a label; a label that cannot be is said to be so. */
    public static Object mix(String planting, Inquiry inquiry, Units units) {
        FeedLabel label = inquiry.label();
        boolean can = inquiry.amount() != null && "L".equals(inquiry.unit());
        double canLitres = can ? inquiry.amount() : usualCanLitres(units);
        try {
            double ml = new FeedDose(label.feedMl(), label.waterLitres()).mlFor(canLitres);
            Double tablespoons = ml > TEASPOONS_TO_ML ? FeedDose.measures(ml, TABLESPOON_ML, 1) : null;
            Double caps = caps(ml, label);
            double besides = FeedDose.measures(ml % TABLESPOON_ML, TEASPOON_ML, 2);
            return new FeedMix(
                    planting,
                    ml,
                    ml < SPOONS_FROM_ML || ml > TEASPOONS_TO_ML ? null : FeedDose.measures(ml, TEASPOON_ML, 2),
                    tablespoons,
                    tablespoons == null || besides == 0 ? null : Double.valueOf(besides),
                    units == Units.US ? fluidOunces(ml) : null,
                    caps,
                    caps == null ? null : label.capMl(),
                    canLitres,
                    label.feedMl(),
                    label.waterLitres());
        } catch (IllegalArgumentException outOfRange) {
            return new FeedTooStrong(planting, label.feedMl(), label.waterLitres());
        }
    }

    private static Double caps(double ml, FeedLabel label) {
        double caps = label.capMl() == null ? 0 : FeedDose.measures(ml, label.capMl(), 2);
        return caps == 0 ? null : caps;
    }

    /** As finely as it is worded. */
    private static double fluidOunces(double ml) {
        return FeedDose.measures(ml, US_FLUID_OUNCE_ML, ml < WORDED_WHOLE_FROM * US_FLUID_OUNCE_ML ? 10 : 1);
    }

    /** The usual watering can: 10 litres, 2 gallons in the US (common practice). */
    static double usualCanLitres(Units units) {
        return units == Units.US ? US_CAN_LITRES : METRIC_CAN_LITRES;
    }
}
