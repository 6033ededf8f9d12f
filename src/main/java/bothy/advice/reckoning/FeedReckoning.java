package bothy.advice.reckoning;

import bothy.advice.reckoned.CapsForCan;
import bothy.advice.reckoned.FeedForBed;
import bothy.advice.reckoned.FeedMix;
import bothy.advice.reckoned.FeedTooStrong;
import bothy.advice.reckoned.FeedWeighed;
import bothy.advice.reckoned.PowderTooStrong;
import bothy.agronomy.FeedDose;
import bothy.garden.FeedLabel;
import bothy.garden.Inquiry;
import bothy.garden.Units;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The label's strength for the can told. */
public final class FeedReckoning {
    /** Soluble feeds for watering are told at 1 to 5 g to the litre; more than this is taken for a slip (common practice). */
    private static final double STRONGEST_POWDER = 10;

    private static final double LEAST_CAN_LITRES = 0.1;
    private static final double MOST_CAN_LITRES = 1000;
    private static final double WORDED_WHOLE_FROM = 20;
    private static final double SPOONS_FROM_ML = 2.5;
    private static final double TEASPOONS_TO_ML = 20;

    private static final double G_PER_KG = 1000;
    /** Manure is forked on at some kilograms to the square metre; more is no rate, and a plot is seldom larger than this. */
    private static final double MOST_G_PER_M2 = 20_000;

    private static final double MOST_M2 = 10_000;

    private static final double TENTHS = 10;
    /** What the eye does not see in a cap. */
    private static final double HARDLY = 0.005;

    /** How a part of a cap is judged by eye, from which part on; no word says more than its part, as the label is the most. */
    private static final Map<Double, String> SHARES = new TreeMap<>(Map.ofEntries(
            Map.entry(0.0, "cap-few-drops"),
            Map.entry(0.1, "cap-about-a-tenth"),
            Map.entry(0.2, "cap-about-a-fifth"),
            Map.entry(0.25, "cap-about-a-quarter"),
            Map.entry(1 / 3.0, "cap-about-a-third"),
            Map.entry(0.4, "cap-under-half"),
            Map.entry(0.5, "cap-half"),
            Map.entry(0.55, "cap-over-half"),
            Map.entry(2 / 3.0, "cap-about-two-thirds"),
            Map.entry(0.75, "cap-three-quarters"),
            Map.entry(0.9, "cap-almost-full")));

    private FeedReckoning() {}

    static Optional<?> of(Subject subject) {
        Optional<FeedForBed> bed = subject.inquiries().stream()
                .flatMap(inquiry -> forBed(subject.id(), inquiry).stream())
                .findFirst();
        if (bed.isPresent()) {
            return bed;
        }
        return subject.inquiries().stream()
                .filter(inquiry -> inquiry.label() != null)
                .findFirst()
                .map(inquiry -> mix(subject.id(), inquiry, subject.grower().units()));
    }

    /** What the rate told comes to on the bed told; empty where either was not told or cannot be. */
    public static Optional<FeedForBed> forBed(String planting, Inquiry inquiry) {
        boolean told = "by-area".equals(inquiry.topic())
                && inquiry.amount() != null
                && inquiry.length() != null
                && inquiry.width() != null;
        if (!told || inquiry.amount() > MOST_G_PER_M2 || inquiry.length() * inquiry.width() > MOST_M2) {
            return Optional.empty();
        }
        double areaM2 = inquiry.length() * inquiry.width();
        double rateKg = inquiry.amount() / G_PER_KG;
        return Optional.of(new FeedForBed(planting, rateKg * areaM2, rateKg, areaM2));
    }

    /** The mix for a question that told a label; a label that cannot be is said to be so. */
    public static Object mix(String planting, Inquiry inquiry, Units units) {
        FeedLabel label = inquiry.label();
        boolean can = inquiry.amount() != null
                && "L".equals(inquiry.unit())
                && inquiry.amount() >= LEAST_CAN_LITRES
                && inquiry.amount() <= MOST_CAN_LITRES;
        // A can that no one carries is a slip: the reply names the usual one.
        double canLitres = can ? inquiry.amount() : units.canLitres();
        try {
            if (label.weighed()) {
                return weighed(planting, label, canLitres);
            }
            if (label.capUnknown()) {
                return caps(planting, label, canLitres);
            }
            FeedDose dose = new FeedDose(label.feed(), label.waterLitres());
            double exact = dose.exactMlFor(canLitres);
            double ml = dose.mlFor(canLitres);
            boolean many = ml > TEASPOONS_TO_ML;
            Double tablespoons = many ? FeedDose.measures(exact, units.tablespoonMl(), 1) : null;
            Double caps = caps(exact, label);
            double left = many ? Math.max(0, exact - tablespoons * units.tablespoonMl()) : 0;
            double besides = FeedDose.measures(left, units.teaspoonMl(), 2);
            boolean us = units == Units.US;
            return new FeedMix(
                    planting,
                    ml,
                    ml < SPOONS_FROM_ML || many ? null : FeedDose.measures(exact, units.teaspoonMl(), 2),
                    tablespoons,
                    besides == 0 ? null : Double.valueOf(besides),
                    us ? fluidOunces(exact) : null,
                    caps,
                    caps == null ? null : label.capMl(),
                    canLitres,
                    us ? null : Double.valueOf(ml),
                    us ? Double.valueOf(ml) : null,
                    us ? Double.valueOf(canLitres) : null,
                    label.feed(),
                    label.waterLitres());
        } catch (IllegalArgumentException outOfRange) {
            if (label.weighed()) {
                return new PowderTooStrong(planting, label.feed(), label.waterLitres());
            }
            return new FeedTooStrong(planting, label.feed(), label.waterLitres());
        }
    }

    private static Object weighed(String planting, FeedLabel label, double canLitres) {
        double gramsPerLitre = label.feed() / label.waterLitres();
        if (gramsPerLitre > STRONGEST_POWDER) {
            return new PowderTooStrong(planting, label.feed(), label.waterLitres());
        }
        double grams = new FeedDose(label.feed(), label.waterLitres()).mlFor(canLitres);
        return new FeedWeighed(planting, grams, canLitres, label.feed(), label.waterLitres());
    }

    /** Never more than the label says: 0.44 of a cap is told as 0.4, a little less than half. */
    private static CapsForCan caps(String planting, FeedLabel label, double canLitres) {
        double exact = label.feed() / label.waterLitres() * canLitres;
        double tenths = Math.floor(exact * TENTHS + HARDLY) / TENTHS;
        String share = null;
        for (Map.Entry<Double, String> step : SHARES.entrySet()) {
            share = exact < 1 && exact >= step.getKey() - HARDLY ? step.getValue() : share;
        }
        return new CapsForCan(planting, tenths, share, canLitres, label.feed(), label.waterLitres());
    }

    private static Double caps(double ml, FeedLabel label) {
        double caps = label.capMl() == null ? 0 : FeedDose.measures(ml, label.capMl(), 2);
        return caps == 0 ? null : caps;
    }

    /** As finely as it is worded. */
    private static double fluidOunces(double ml) {
        double ounce = Units.US.fluidOunceMl();
        return FeedDose.measures(ml, ounce, ml < WORDED_WHOLE_FROM * ounce ? 10 : 1);
    }
}
