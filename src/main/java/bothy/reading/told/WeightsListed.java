package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "Cut the first two cabbages, 1.1 kg and 1.4 kg": weights in a row of one crop are those of its pieces and are added up. */
final class WeightsListed {
    private static final Set<String> JOINTS = Set.of(",", "and", "&", "+", "plus", "then");

    private WeightsListed() {}

    /** Their sum, {@code null} where they stand in no row. */
    static Quantity sum(What what, Passage passage, Clause clause, List<Quantity> weights) {
        boolean eachOne = passage.counts(clause.from(), clause.to()).stream()
                .anyMatch(number -> number.value() == weights.size()
                        && number.end() <= weights.get(0).start());
        boolean row = what == What.HARVESTED
                && weights.size() > 1
                && eachOne
                && weights.stream().allMatch(weight -> weight.unit().equals("kg"))
                // "2 courgettes, 1 kg, 2.2 lb" tells one weight twice.
                && weights.stream()
                                .map(weight -> word(passage, weight))
                                .distinct()
                                .count()
                        == 1
                && IntStream.range(1, weights.size())
                        .allMatch(at -> joined(
                                passage,
                                weights.get(at - 1).end(),
                                weights.get(at).start()));
        return row
                ? weights.get(0)
                        .of(weights.stream().mapToDouble(Quantity::value).sum())
                : null;
    }

    private static String word(Passage passage, Quantity weight) {
        return passage.word(weight.end() - 1);
    }

    private static boolean joined(Passage passage, int from, int to) {
        return to > from && IntStream.range(from, to).allMatch(at -> JOINTS.contains(passage.word(at)));
    }
}
