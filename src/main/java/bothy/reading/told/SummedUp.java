package bothy.reading.told;

import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** The number that a reckoning comes to. */
final class SummedUp {
    private SummedUp() {}

    /** "2 at each cane, 20 in all", "potting on, got 12 done": the number that sums up. */
    static Integer count(Passage passage, List<NumberSaid> numbers) {
        return numbers.stream()
                .filter(number -> {
                    String next = passage.word(number.end());
                    String behind = passage.word(number.end() + 1);
                    String last = passage.word(number.start() - 1);
                    return next.equals("in") && Set.of("all", "total").contains(behind)
                            || next.equals("altogether")
                            || sums(passage, number, numbers)
                            || next.equals("all") && behind.equals("told")
                            || next.equals("done")
                                    && Set.of("got", "have", "did", "managed", "about")
                                            .contains(last);
                })
                .map(number -> Counts.whole(number.value()))
                .findFirst()
                .orElse(null);
    }

    /** "4 seeds each in 3 buckets so 12", "2 each, total 6": behind the reckoning stands what it comes to. */
    private static boolean sums(Passage passage, NumberSaid number, List<NumberSaid> numbers) {
        String last = passage.word(number.start() - 1);
        int lead = last.equals("of") ? number.start() - 2 : number.start() - 1;
        return Set.of("so", "total", "totalling", "totaling", "makes", "making", "=")
                        .contains(passage.word(lead))
                && !numbers.isEmpty()
                && numbers.get(0).start() < lead
                && passage.tokens().subList(numbers.get(0).end(), lead).stream()
                        .anyMatch(token ->
                                Set.of("each", "per", "to", "in", "of", "x").contains(token.word()));
    }
}
