package bothy.replying;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.advice.reckoned.FeedMix;
import bothy.advice.reckoned.FeedTooStrong;
import bothy.advice.reckoned.FeedWeighed;
import bothy.advice.reckoned.PowderTooStrong;
import bothy.advice.reckoning.FeedReckoning;
import bothy.garden.FeedLabel;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** As a grower reads it, in millilitres, spoons or fluid ounces, a dose is never stronger than the label (the label is the source). */
class FeedAsWordedTest {
    @RepeatedTest(200)
    void rounding_never_makes_it_stronger(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        FeedLabel label = new FeedLabel(1 + 60 * random.nextDouble(), 1 + 9 * random.nextDouble());
        double canLitres = 1 + 14 * random.nextDouble();
        double allowedMl = label.feed() * canLitres / label.waterLitres() + 1e-6;
        Inquiry asked = Inquiry.of(Question.FEED_DOSE, null, List.of()).withFeed(label, canLitres);

        for (Units units : Units.values()) {
            Quantities quantities = new Quantities(units, LocalDate.of(2027, 6, 1));
            if (1000 * label.waterLitres() / label.feed() < 10) {
                assertThat(FeedReckoning.mix(null, asked, units)).isInstanceOf(FeedTooStrong.class);
                continue;
            }
            FeedMix mix = (FeedMix) FeedReckoning.mix(null, asked, units);
            assertThat(number(quantities.write("feedMl", mix.feedMl()))).isLessThanOrEqualTo(allowedMl);
            double spoons = units.teaspoonMl() * worded(quantities, "teaspoons", mix.teaspoons())
                    + units.tablespoonMl() * worded(quantities, "tablespoons", mix.tablespoons())
                    + units.teaspoonMl() * worded(quantities, "moreTeaspoons", mix.moreTeaspoons());
            assertThat(spoons).isLessThanOrEqualTo(allowedMl);
            assertThat(allowedMl - spoons)
                    .as("nor half a spoon weaker, where spoons are worded")
                    .isLessThan(spoons == 0 ? 2.5 + 0.1 : units.teaspoonMl() / 2 + 1e-5);
            assertThat(units.fluidOunceMl() * worded(quantities, "fluidOunces", mix.fluidOunces()))
                    .isLessThanOrEqualTo(allowedMl);
        }
    }

    @RepeatedTest(50)
    void a_powder_is_never_weighed_out_stronger(RepetitionInfo run) {
        Random random = new Random(run.getCurrentRepetition());
        FeedLabel label = FeedLabel.weighed(1 + 9 * random.nextDouble(), 1 + 9 * random.nextDouble());
        double canLitres = 1 + 14 * random.nextDouble();
        double allowedG = label.feed() * canLitres / label.waterLitres();
        Inquiry asked = Inquiry.of(Question.FEED_DOSE, null, List.of()).withFeed(label, canLitres);

        FeedWeighed weighed = (FeedWeighed) FeedReckoning.mix(null, asked, Units.METRIC);
        double worded = number(new Quantities(Units.METRIC, LocalDate.of(2027, 6, 1)).write("feedG", weighed.feedG()));

        assertThat(worded).isLessThanOrEqualTo(allowedG + 1e-6);
        assertThat(allowedG - worded).isLessThan(1);
    }

    @Test
    void a_label_stronger_than_any_powder_is_read_again_and_a_can_that_is_none_is_the_usual_one() {
        Inquiry asked = Inquiry.of(Question.FEED_DOSE, null, List.of());

        assertThat(FeedReckoning.mix(null, asked.withFeed(FeedLabel.weighed(2, 1), 5000.0), Units.METRIC))
                .isEqualTo(new FeedWeighed(null, 20, 10, 2, 1));
        assertThat(FeedReckoning.mix(null, asked.withFeed(FeedLabel.weighed(50, 1), 10.0), Units.METRIC))
                .isInstanceOf(PowderTooStrong.class);
    }

    private static double worded(Quantities quantities, String name, Double figure) {
        return figure == null ? 0 : number(quantities.write(name, figure));
    }

    private static double number(String worded) {
        return Double.parseDouble(worded);
    }
}
