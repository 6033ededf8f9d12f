package bothy.reading;

import bothy.garden.Doubt;
import bothy.garden.Doubt.About;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A label told in caps or scoops says nothing until it is known what one holds: that is asked first, the question waiting behind it. */
final class CapAsked {
    private static final double ML_PER_LITRE = 1000;

    private CapAsked() {}

    /** What was heard, with the question back where a cap's size is missing. */
    static Heard back(Heard heard, Passage passage) {
        List<Inquiry> byCap = heard.inquiries().stream().filter(CapAsked::byCap).toList();
        String unknown = byCap.isEmpty()
                ? null
                : FeedLabels.in(passage).map(FeedLabels.Found::unknown).orElse(null);
        if (unknown == null) {
            return heard;
        }
        List<Inquiry> others =
                heard.inquiries().stream().filter(inquiry -> !byCap(inquiry)).toList();
        Heard rest = heard.asking(others);
        return heard.doubt() != null
                ? rest
                : rest.withDoubt(new Doubt(
                        About.CAP_HOLDS,
                        Map.of("found", unknown),
                        List.of(),
                        Heard.nothing(heard.kind()).asking(byCap.subList(0, 1))));
    }

    private static boolean byCap(Inquiry inquiry) {
        return inquiry.question() == Question.FEED_DOSE
                && inquiry.label() != null
                && inquiry.label().capMl() != null
                // "A capful to 5 litres, my can holds 2": parts of a cap will do.
                && inquiry.amount() == null;
    }

    /** "20 ml", "4 teaspoons", "20": the waiting question with the cap's size known. */
    static Optional<Heard> answered(Passage passage, Doubt pending) {
        Optional<Double> ml = passage.quantities().stream()
                .filter(quantity -> quantity.unit().equals("L"))
                .map(Quantity::value)
                .map(litres -> litres * ML_PER_LITRE)
                .findFirst()
                .or(() -> passage.quantities().isEmpty()
                        ? passage.numbers().stream().map(NumberSaid::value).findFirst()
                        : Optional.empty());
        return ml.filter(told -> told > 0).map(told -> pending.draft()
                .asking(pending.draft().inquiries().stream()
                        .map(inquiry -> inquiry.withFeed(inquiry.label().withCap(told), inquiry.amount()))
                        .toList()));
    }
}
