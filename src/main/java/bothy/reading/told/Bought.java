package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "Got 3 strawberry plants from the market, they are in the basket now": as many were planted as were got. */
final class Bought {
    private static final Set<What> SET = EnumSet.of(What.PLANTED_OUT, What.POTTED_ON);

    private final Particulars particulars;

    Bought(Particulars particulars) {
        this.particulars = particulars;
    }

    /** A planting that tells no number, with that of the buying told right before it. */
    Told counted(Told told, Passage passage, Clause clause) {
        boolean open = SET.contains(told.event().what())
                && told.event().count() == null
                && told.event().crop() != null;
        ActionSaid got = !open ? null : before(passage, clause);
        if (got == null || part(passage, clause)) {
            return told;
        }
        return passage.crops().stream()
                .filter(crop ->
                        got.covers(crop.start()) && crop.canMean(told.event().crop()))
                .findFirst()
                .map(crop -> told.with(told.event().withCount(number(passage, got, clause, crop))))
                .orElse(told);
    }

    /** "Planted most of them". */
    private static boolean part(Passage passage, Clause clause) {
        return IntStream.range(clause.action().start(), clause.to())
                .anyMatch(at -> Set.of("half", "some", "most", "few", "couple", "rest", "part", "third")
                        .contains(passage.word(at)));
    }

    private static ActionSaid before(Passage passage, Clause clause) {
        return passage.actions().stream()
                .filter(action -> action.end() <= clause.action().start())
                .reduce((first, second) -> second)
                .filter(action -> action.action().equals("chore"))
                .orElse(null);
    }

    private Integer number(Passage passage, ActionSaid got, Clause clause, CropSaid crop) {
        return particulars.count(
                passage,
                new Clause(got, got.start(), clause.from(), clause.sentence(), List.of(crop), Mood.DONE, -1),
                crop);
    }
}
