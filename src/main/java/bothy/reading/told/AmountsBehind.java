package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.said.Span;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Amounts that stand behind the crop they are of: "tomatoes today, 12 oz of them, and 2 lb of beans", "carrots, 18 lb, and the beets, 11 lb". */
final class AmountsBehind {
    private static final Set<String> MARKS = Set.of(",", "-", "(", ":");

    private AmountsBehind() {}

    /** The amount of each crop of a clause that is told behind it. */
    static Map<CropSaid, Quantity> of(Passage passage, Clause clause, List<Quantity> amounts) {
        List<CropSaid> crops = clause.crops();
        Map<CropSaid, Quantity> behind = new HashMap<>();
        List<Span> figures = Stream.<Span>concat(amounts.stream(), passage.counts(clause.from(), clause.to()).stream())
                .sorted(Comparator.comparingInt(Span::start))
                .toList();
        boolean eachItsOwn = crops.size() == figures.size()
                && IntStream.range(0, crops.size()).allMatch(at -> afterMark(passage, crops, at, figures.get(at)));
        for (int at = 0; eachItsOwn && at < crops.size(); at++) {
            if (figures.get(at) instanceof Quantity amount) {
                behind.put(crops.get(at), amount);
            }
        }
        for (Quantity amount : amounts) {
            if (ofThem(passage, amount)
                    || betweenMarks(passage, crops, amount)
                    || beforeACount(passage, crops, amount, figures)) {
                crops.stream()
                        .filter(crop -> crop.end() <= amount.start())
                        .reduce((first, second) -> second)
                        .ifPresent(crop -> behind.put(crop, amount));
            }
        }
        return behind;
    }

    /** "18 lb of them". */
    private static boolean ofThem(Passage passage, Quantity amount) {
        return passage.word(amount.end()).equals("of")
                && Set.of("them", "em", "it", "those", "these").contains(passage.word(amount.end() + 1));
    }

    /** "Lifted the potatoes, 15 kg, and the beetroot": between marks, with crops on both sides. */
    private static boolean betweenMarks(Passage passage, List<CropSaid> crops, Quantity amount) {
        return MARKS.contains(passage.word(amount.start() - 1))
                && Set.of(",", ")", "-").contains(passage.word(amount.end()))
                && Set.of("and", "plus", "&", "then").contains(passage.word(amount.end() + 1))
                && crops.stream().anyMatch(crop -> crop.end() <= amount.start())
                && crops.stream().anyMatch(crop -> crop.start() >= amount.end());
    }

    /** "Picked a mess of beans, must be about three pounds, and two cucumbers": what is counted behind it needs no weight. */
    private static boolean beforeACount(Passage passage, List<CropSaid> crops, Quantity amount, List<Span> figures) {
        int number = amount.end();
        while (Set.of("and", "plus", "&", ",", "then").contains(passage.word(number))) {
            number++;
        }
        int behind = number > amount.end() ? passage.end("n", number) : -1;
        boolean counted = behind > 0
                && figures.stream().noneMatch(figure -> figure instanceof Quantity && figure.start() >= behind)
                && crops.stream().anyMatch(crop -> crop.start() >= behind && crop.start() - behind <= 2);
        return counted
                && crops.stream()
                        .filter(crop -> crop.end() <= amount.start())
                        .reduce((first, second) -> second)
                        .filter(crop -> figures.stream()
                                .filter(figure -> figure instanceof Quantity && figure != amount)
                                .noneMatch(figure -> figure.start() < amount.start()))
                        .isPresent();
    }

    /** Whether a figure stands behind a mark between its crop and the next one. */
    private static boolean afterMark(Passage passage, List<CropSaid> crops, int at, Span figure) {
        int next = at + 1 < crops.size() ? crops.get(at + 1).start() : Integer.MAX_VALUE;
        return crops.get(at).end() < figure.start()
                && figure.end() <= next
                && MARKS.contains(passage.word(figure.start() - 1));
    }
}
