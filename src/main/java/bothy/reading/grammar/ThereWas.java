package bothy.reading.grammar;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "Picked the beans, and there was a courgette too, I cut that yesterday": what there was is of the doing that points to it. */
final class ThereWas {
    private ThereWas() {}

    static void of(Passage passage, List<Clause> clauses) {
        for (int at = 1; at < clauses.size(); at++) {
            Clause before = clauses.get(at - 1);
            Clause next = clauses.get(at);
            boolean points = next.crops().isEmpty()
                    && next.action().form() == Form.PAST
                    && Set.of("that", "it", "this", "those", "these", "them")
                            .contains(passage.word(next.action().lastWord() + 1));
            int there = points && before.crops().size() > 1 ? there(passage, before) : -1;
            if (there > 0) {
                int last = before.crops().size() - 1;
                List<CropSaid> own = before.crops().subList(last, last + 1);
                clauses.set(
                        at - 1,
                        stretch(before, before.from(), there, before.crops().subList(0, last)));
                clauses.set(at, stretch(next, there, next.to(), own));
            }
        }
    }

    private static Clause stretch(Clause clause, int from, int to, List<CropSaid> crops) {
        return new Clause(clause.action(), from, to, clause.sentence(), crops, clause.mood(), clause.relative());
    }

    /** Where the last crop of a clause is told of by a "there was" of its own, −1 when it is not. */
    private static int there(Passage passage, Clause clause) {
        List<CropSaid> crops = clause.crops();
        CropSaid last = crops.get(crops.size() - 1);
        return IntStream.range(crops.get(crops.size() - 2).end(), last.start())
                .filter(at -> passage.word(at).equals("there")
                        && Set.of("was", "were", "is", "are", "'s").contains(passage.word(at + 1)))
                .findFirst()
                .orElse(-1);
    }
}
