package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.told.PlotEvents;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** How cold a night is told to be beside a question when something goes out: "low says 39 Sunday", "nights are still 6". */
final class NightAhead {
    /** No night that anybody waits for is as warm in Celsius. */
    private static final double NO_NIGHT_C = 28;

    private static final double COLDEST_C = -30;

    private static final Set<String> NIGHT = Set.of(
            "low",
            "lows",
            "min",
            "minimum",
            "night",
            "nights",
            "nite",
            "nites",
            "overnight",
            "tonight",
            "tonite",
            "nighttime");
    private static final Set<String> LEADING = Set.of(
            "low",
            "lows",
            "min",
            "minimum",
            "nights",
            "night",
            "says",
            "say",
            "of",
            "to",
            "is",
            "its",
            "are",
            "at",
            "be",
            "hit",
            "hits",
            "about",
            "around",
            "below",
            "under",
            "only",
            "still",
            "near",
            "nearly",
            "as",
            "like",
            "giving",
            "gives",
            "forecast",
            "down");

    private NightAhead() {}

    /** The question with the coldest night told; as it was where none is. */
    static Inquiry asked(Inquiry inquiry, Passage passage) {
        if (inquiry.question() != Question.WHEN_PLANT_OUT || inquiry.unit() != null) {
            return inquiry;
        }
        OptionalDouble coldest = passage.sentences().stream()
                .filter(sentence -> ofTheNight(passage, sentence))
                .flatMapToDouble(sentence -> told(passage, sentence))
                .filter(celsius -> celsius >= COLDEST_C && celsius < NO_NIGHT_C)
                .min();
        return coldest.isPresent()
                ? inquiry.with(inquiry.count(), inquiry.length(), coldest.getAsDouble(), Inquiry.CELSIUS)
                : inquiry;
    }

    private static boolean ofTheNight(Passage passage, int[] sentence) {
        return IntStream.range(sentence[0], sentence[1]).anyMatch(at -> NIGHT.contains(passage.word(at)));
    }

    private static DoubleStream told(Passage passage, int[] sentence) {
        DoubleStream degrees = Passage.within(passage.quantities(), sentence[0], sentence[1]).stream()
                .filter(Quantity::degrees)
                .mapToDouble(one -> ColdNight.celsius(one, passage));
        DoubleStream bare = Passage.within(passage.numbers(), sentence[0], sentence[1]).stream()
                .filter(number -> bare(passage, number))
                .mapToDouble(number -> celsius(number.value(), passage));
        return DoubleStream.concat(degrees, bare);
    }

    /** A number behind a word of how cold it gets that counts and measures nothing. */
    private static boolean bare(Passage passage, NumberSaid number) {
        return !number.ordinal()
                && LEADING.contains(passage.word(number.start() - 1))
                && passage.end("crop", number.end()) < 0
                && passage.quantities().stream().noneMatch(number::overlaps)
                && passage.days().stream().noneMatch(number::overlaps);
    }

    /** Bare degrees are the grower's own, unless no night is as warm in them. */
    private static double celsius(double told, Passage passage) {
        boolean fahrenheit = passage.situation().grower().units() == Units.US || told >= NO_NIGHT_C;
        return fahrenheit ? PlotEvents.celsius(told) : told;
    }
}
