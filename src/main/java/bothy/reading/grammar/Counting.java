package bothy.reading.grammar;

import bothy.reading.said.Clause;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** A sentence that only says how many or how much the doing before it was of: "Pulled the garlic. 112 bulbs". */
final class Counting {
    /** What is counted of a crop: "112 bulbs". */
    static final Set<String> THINGS = Set.of(
            "bulbs",
            "plants",
            "ones",
            "heads",
            "tubers",
            "roots",
            "seeds",
            "cloves",
            "fruit",
            "fruits",
            "pods",
            "cobs",
            "sets",
            "seedlings",
            "ears",
            "plugs",
            "slips",
            "babies",
            "cells",
            "shoots");

    /** How what is counted looks. */
    private static final Set<String> LOOKING = Set.of(
            "good", "big", "nice", "lovely", "fine", "decent", "little", "small", "tiny", "wee", "strong", "fat",
            "young");

    private static final Set<String> COUNTED = Set.of(
            "sown",
            "planted",
            "planted-out",
            "pricked-out",
            "potted-on",
            "harvested",
            "emerged",
            "died",
            "thinned",
            "moved",
            "stored",
            "cured");

    private Counting() {}

    /** The doing with what a later sentence adds to it. */
    static Clause upTo(Clause last, int end) {
        return new Clause(last.action(), last.from(), end, last.sentence(), last.crops(), last.mood(), last.relative());
    }

    /** Whether a doing is one that is counted. */
    static boolean counts(Clause last) {
        return COUNTED.contains(last.action().action());
    }

    static boolean only(Passage passage, int[] sentence, Clause last) {
        return counts(last) && counting(passage, sentence, last)
                || weighing(passage, sentence, last)
                || pouring(passage, sentence, last);
    }

    /** "Fed the toms on Friday. Half a litre each." */
    private static boolean pouring(Passage passage, int[] sentence, Clause last) {
        return Set.of("watered", "fed").contains(last.action().action())
                && Passage.within(passage.actions(), sentence[0], sentence[1]).isEmpty()
                && passage.quantities().stream()
                        .anyMatch(quantity -> quantity.unit().equals("L")
                                && quantity.start() - sentence[0] <= 1
                                && quantity.start() >= sentence[0]
                                && sentence[1] - quantity.end() <= 2);
    }

    /** "First courgette picked! 300 g". */
    private static boolean weighing(Passage passage, int[] sentence, Clause last) {
        return last.action().action().equals("harvested")
                && (sentence[1] - sentence[0] <= 4
                        || passage.quantities().stream().anyMatch(quantity -> quantity.start() == sentence[0])
                                && Passage.within(passage.actions(), sentence[0], sentence[1])
                                        .isEmpty())
                && Passage.within(passage.quantities(), sentence[0], sentence[1]).stream()
                        .anyMatch(quantity -> quantity.unit().equals("kg"));
    }

    private static boolean onlyNumbers(Passage passage, int[] sentence) {
        return IntStream.range(sentence[0], sentence[1])
                .allMatch(at -> passage.tokens().get(at).mark()
                        || passage.tokens().get(at).sort() == Token.Sort.NUMBER
                        || Set.of("and", "n", "then").contains(passage.word(at))
                        || passage.numbers().stream().anyMatch(number -> number.covers(at)));
    }

    /** "Got the spuds in. 30 of them." */
    private static boolean counting(Passage passage, int[] sentence, Clause last) {
        List<NumberSaid> numbers = passage.counts(sentence[0], sentence[1]);
        if (numbers.size() == 1
                && numbers.get(0).end() == sentence[1]
                && Set.of("count", "counted", "counting")
                        .contains(passage.word(numbers.get(0).start() - 1))) {
            return true; // "Not all, I count 41."
        }
        if (numbers.size() > 1 && numbers.size() == last.crops().size() && onlyNumbers(passage, sentence)) {
            return true; // "Cucumbers and squash went in. 5 and 4."
        }
        if (numbers.isEmpty() || numbers.get(0).start() - sentence[0] > 1) {
            return false;
        }
        int end = numbers.get(0).end();
        int thing = LOOKING.contains(passage.word(end)) ? end + 1 : end;
        if (Set.of("counted", "count").contains(passage.word(sentence[0]))) {
            return true;
        }
        return end == sentence[1]
                || THINGS.contains(passage.word(thing))
                || THINGS.contains(passage.word(end + 1))
                || Set.of("of", "out", "in", "so", "altogether", "seeds", "plants", "total", "up", "cells")
                        .contains(passage.word(end));
    }
}
