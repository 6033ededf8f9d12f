package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.List;

/** Counts told in a list after a list of crops. */
final class Listed {
    private Listed() {}

    /** "4 each of kale, cabbage and leeks", "6 of each: kale, leeks". */
    static Integer ofEach(Passage passage, Clause clause, List<NumberSaid> numbers) {
        return clause.crops().size() < 2
                ? null
                : numbers.stream()
                        .filter(number -> passage.word(number.end()).equals("each")
                                        && passage.word(number.end() + 1).equals("of")
                                || passage.word(number.end()).equals("of")
                                        && passage.word(number.end() + 1).equals("each"))
                        .map(number -> Integer.valueOf((int) number.value()))
                        .findFirst()
                        .orElse(null);
    }

    /** "The courgettes and pumpkins, 3 and 2": as many numbers as crops, all after the last. */
    static Integer count(Passage passage, Clause clause, List<NumberSaid> numbers, CropSaid crop) {
        int crops = clause.crops().size();
        int last = crops == 0 ? 0 : clause.crops().get(crops - 1).end();
        boolean each = crops > 1
                && numbers.size() == crops
                && numbers.get(0).start() >= last
                && numbers.stream()
                        .noneMatch(number -> passage.tokens().size() > number.end()
                                && passage.tokens().get(number.end()).aWord()
                                && !passage.word(number.end()).equals("and"))
                && numbers.get(crops - 1).start() - numbers.get(0).start() <= 2 * crops;
        return each
                ? Integer.valueOf(
                        (int) Math.min(numbers.get(clause.crops().indexOf(crop)).value(), 2_000_000_000))
                : null;
    }
}
