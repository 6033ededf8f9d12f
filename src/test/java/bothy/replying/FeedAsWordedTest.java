package bothy.replying;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.FeedDose;
import bothy.garden.Units;
import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** As a grower reads it, in millilitres, spoons or fluid ounces, a dose is never stronger than the label (the label is the source). */
class FeedAsWordedTest {
    private static final double TEASPOON_ML = 5;
    private static final double US_FLUID_OUNCE_ML = 29.5735295625;

    @RepeatedTest(200)
    void rounding_never_makes_it_stronger(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        double labelMl = 1 + 60 * random.nextDouble();
        double waterLitres = 1 + 9 * random.nextDouble();
        double canLitres = 1 + 14 * random.nextDouble();
        double allowedMl = labelMl * canLitres / waterLitres;
        double feedMl = new FeedDose(labelMl, waterLitres).mlFor(canLitres);

        for (Units units : Units.values()) {
            Quantities quantities = new Quantities(units, LocalDate.of(2027, 6, 1));
            assertThat(number(quantities.write("feedMl", feedMl))).isLessThanOrEqualTo(allowedMl + 1e-6);
            // whole tablespoons of 15 ml, and teaspoons for what is left
            double spoons = FeedDose.measures(feedMl % 15, TEASPOON_ML, 2);
            assertThat(15 * FeedDose.measures(feedMl, 15, 1)
                            + TEASPOON_ML * number(quantities.write("moreTeaspoons", spoons)))
                    .isLessThanOrEqualTo(allowedMl + 1e-6);
            double ounces = FeedDose.measures(feedMl, US_FLUID_OUNCE_ML, feedMl < 20 * US_FLUID_OUNCE_ML ? 10 : 1);
            assertThat(US_FLUID_OUNCE_ML * number(quantities.write("fluidOunces", ounces)))
                    .isLessThanOrEqualTo(allowedMl + 1e-6);
        }
    }

    private static double number(String worded) {
        return Double.parseDouble(worded);
    }
}
