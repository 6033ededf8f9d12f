package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** Counts told in a list after a list of crops. */
final class Listed {
    private static final Set<String> TRAY = Set.of("tray", "row", "pack", "box", "bed", "flat", "strip");
    private static final Set<String> TRAYS = Set.of("trays", "rows", "packs", "boxes", "beds", "flats", "strips");

    private Listed() {}

    /** "4 each of kale, cabbage and leeks", "6 of each: kale, leeks", "kale and leeks sown, 4 each". */
    static Integer ofEach(Passage passage, Clause clause, List<NumberSaid> numbers) {
        return clause.crops().size() < 2
                ? null
                : numbers.stream()
                        .filter(number -> passage.word(number.end()).equals("each")
                                        && (passage.word(number.end() + 1).equals("of")
                                                || closes(passage, clause, number))
                                || passage.word(number.end()).equals("of")
                                        && passage.word(number.end() + 1).equals("each"))
                        .map(number -> Integer.valueOf((int) number.value()))
                        .findFirst()
                        .orElse(null);
    }

    /** Behind a comma, with nothing after it: no litres and no canes. */
    private static boolean closes(Passage passage, Clause clause, NumberSaid number) {
        int end = number.end() + 1;
        return Set.of(",", "-", ":", "(").contains(passage.word(number.start() - 1))
                && clause.crops().stream().allMatch(crop -> crop.end() <= number.start())
                && (end >= passage.size() || passage.tokens().get(end).mark());
    }

    /** "Three trays of leeks, 24 to a tray". */
    static Integer perTray(Passage passage, List<NumberSaid> numbers) {
        for (NumberSaid trays : numbers) {
            for (NumberSaid each : numbers) {
                String next = passage.word(each.end());
                boolean per = Set.of("to", "in").contains(next)
                                && Set.of("a", "each").contains(passage.word(each.end() + 1))
                                && TRAY.contains(passage.word(each.end() + 2))
                        || next.equals("per") && TRAY.contains(passage.word(each.end() + 1))
                        || next.equals("a") && TRAY.contains(passage.word(each.end() + 1));
                if (trays.end() <= each.start() && TRAYS.contains(passage.word(trays.end())) && per) {
                    return (int) Math.min(trays.value() * each.value(), 2_000_000_000);
                }
            }
        }
        return null;
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
