package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.told.PlotEvents;
import java.util.List;
import java.util.Set;

/** The sizes and counts that a question tells: sides of a bed, the grower's own spacing, a can, degrees, plants. */
final class SizesAsked {
    private static final Set<String> APART = Set.of("apart", "spacing", "between");
    private static final Set<Question> OF_ROOM =
            Set.of(Question.HOW_MANY_FIT, Question.SPACING, Question.OTHER, Question.HOW_TO);
    private static final Set<String> BY = Set.of("x", "by", "×", "*");
    private static final double FOOT_M = 0.3048;
    /** No bed is so wide: its middle is reached from the path. Common practice. */
    private static final double WIDEST_BED_M = 3;

    private static final Set<String> EVERY = Set.of("every", "each");

    private SizesAsked() {}

    /** The question with the figures of a stretch of the message; the grower's own spacing may stand anywhere before its end. */
    static Inquiry in(Inquiry inquiry, Passage passage, int from, int to) {
        List<Quantity> lengths = Passage.within(passage.quantities(), from, to).stream()
                .filter(quantity -> quantity.unit().equals("m") && !apart(passage, quantity))
                .toList();
        Double length = lengths.isEmpty() ? null : Double.valueOf(lengths.get(0).value());
        Double width = lengths.size() < 2 ? null : Double.valueOf(lengths.get(1).value());
        if (lengths.size() == 1 && shared(passage, lengths.get(0)) != null) {
            width = length;
            length = shared(passage, lengths.get(0));
        }
        if (lengths.isEmpty() && OF_ROOM.contains(inquiry.question())) {
            double[] sides = bareSides(passage, from, to);
            length = sides.length == 0 ? null : Double.valueOf(sides[0]);
            width = sides.length == 0 ? null : Double.valueOf(sides[1]);
        }
        Quantity other = Passage.within(passage.quantities(), from, to).stream()
                .filter(quantity -> !quantity.unit().equals("m"))
                .findFirst()
                .orElse(null);
        // "Leeks 20 cm apart, how many go in 6 m?" tells the spacing before it asks.
        Quantity spaced = Passage.within(passage.quantities(), 0, to).stream()
                .filter(quantity -> apart(passage, quantity))
                .findFirst()
                .orElse(null);
        boolean ofWater = Set.of(Question.WHEN_WATER, Question.HOW_MUCH_WATER).contains(inquiry.question());
        if (other == null && ofWater) {
            // "It is going to be 41 degrees tomorrow, how often do I water?"
            other = passage.quantities().stream()
                    .filter(quantity -> Set.of("°", "°C").contains(quantity.unit()))
                    .findFirst()
                    .orElse(null);
        }
        // Degrees without a scale are the grower's own.
        boolean degrees = other != null && other.unit().equals("°");
        NumberSaid count = passage.counts(from, to).stream()
                .filter(number -> number.value() > 0 && number.value() < 100_000)
                .filter(number -> !Set.of("x", "by", "one").contains(passage.word(number.end()))
                        && !passage.word(number.start()).equals("one"))
                .findFirst()
                .orElse(null);
        if (spaced != null && length != null) {
            return inquiry.sized(length, width).with(null, length, spaced.value(), "m apart");
        }
        return new Inquiry(
                inquiry.question(),
                inquiry.crop(),
                inquiry.plantings(),
                inquiry.topic(),
                inquiry.on(),
                count == null ? null : Integer.valueOf((int) count.value()),
                length,
                width,
                other == null ? null : Double.valueOf(degrees ? celsius(passage, other.value()) : other.value()),
                other == null ? null : degrees ? "°C" : other.unit());
    }

    /** "A 4x8 bed": feet where those are counted, and where no arm would reach its middle if they were metres; in m. */
    static double[] bareSides(Passage passage, int from, int to) {
        for (NumberSaid first : Passage.within(passage.numbers(), from, to)) {
            for (NumberSaid second : Passage.within(passage.numbers(), from, to)) {
                if (second.start() == first.end() + 1 && BY.contains(passage.word(first.end()))) {
                    boolean feet = passage.situation().grower().units() == Units.US
                            || Math.min(first.value(), second.value()) >= WIDEST_BED_M;
                    double unit = feet ? FOOT_M : 1;
                    return new double[] {first.value() * unit, second.value() * unit};
                }
            }
        }
        return new double[0];
    }

    /** The sides of a bed that a message tells anywhere. */
    static Inquiry sides(Inquiry inquiry, Passage passage) {
        Inquiry told = in(inquiry, passage, 0, passage.size());
        return inquiry.sized(told.length(), told.width());
    }

    /** "30 cm apart", "one every 12 inches": the grower's own spacing, and no side of a bed. */
    private static boolean apart(Passage passage, Quantity quantity) {
        return quantity.unit().equals("m")
                && (APART.contains(passage.word(quantity.end())) || EVERY.contains(passage.word(quantity.start() - 1)));
    }

    private static double celsius(Passage passage, double told) {
        return passage.situation().grower().units() == Units.US ? PlotEvents.celsius(told) : told;
    }

    /** "1.2 by 2.4 m": the first figure has the second's unit. */
    private static Double shared(Passage passage, Quantity second) {
        if (!BY.contains(passage.word(second.start() - 1))) {
            return null;
        }
        return passage.numbers().stream()
                .filter(number -> number.end() == second.start() - 1)
                .map(number ->
                        Double.valueOf(Math.round(number.value() * second.value() / second.told() * 1000) / 1000.0))
                .findFirst()
                .orElse(null);
    }
}
