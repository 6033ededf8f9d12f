package bothy.reading.grammar;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * "Bought four tomato plants and two basil and planted them in bed 2": what was got is told with its counts, and as plants or seed, where
 * it was got; what was done then was done to all of it.
 */
public final class GotThenSet {
    /** Ways of coming by plants. */
    public static final Set<String> GOT =
            Set.of("bought", "got", "picked", "was", "were", "been", "collected", "ordered", "grabbed", "given");

    private static final Set<String> SETTING =
            Set.of("planted", "planted-out", "potted-on", "pricked-out", "sown", "moved", "hardening-started");
    private static final Set<String> THEM = Set.of("them", "those", "these", "both", "it");

    private GotThenSet() {}

    /** The clauses, each doing to "them" that follows a getting taken together with it. */
    static void of(Passage passage, List<Clause> clauses) {
        for (int i = clauses.size() - 1; i > 0; i--) {
            Clause got = clauses.get(i - 1);
            Clause set = clauses.get(i);
            if (gets(passage, got) && SETTING.contains(set.action().action()) && toThem(passage, set)) {
                List<CropSaid> all = new ArrayList<>(got.crops());
                set.crops().stream().filter(crop -> !all.contains(crop)).forEach(all::add);
                clauses.set(
                        i,
                        new Clause(
                                set.action(),
                                got.crops().get(0).start() - lead(got),
                                set.to(),
                                set.sentence(),
                                all,
                                set.mood(),
                                oneAfterTheOther(passage, set)
                                        ? set.relative()
                                        : got.action().start()));
                clauses.remove(i - 1);
            }
        }
    }

    private static boolean gets(Passage passage, Clause clause) {
        return clause.action().action().equals("chore")
                && clause.mood() == Mood.DONE
                && !clause.crops().isEmpty()
                && GOT.contains(passage.word(clause.action().words().nextSetBit(0)));
    }

    /** How many words stand between the getting and the first crop, its number among them. */
    private static int lead(Clause got) {
        return got.crops().get(0).start() - got.action().start() - 1;
    }

    /** All of them, not "8 of them". */
    private static boolean toThem(Passage passage, Clause set) {
        int verb = set.action().words().nextSetBit(0);
        return set.mood() == Mood.DONE
                && passage.counts(
                                verb,
                                set.crops().isEmpty()
                                        ? set.to()
                                        : set.crops().get(0).start() - 1)
                        .isEmpty()
                && IntStream.range(verb + 1, Math.min(set.to(), verb + 4))
                        .anyMatch(at -> THEM.contains(passage.word(at))
                                && !passage.word(at - 1).equals("of"));
    }

    /** "… and planted them", "yesterday I planted them": the day of the getting is told of both, or the setting has its own. */
    private static boolean oneAfterTheOther(Passage passage, Clause set) {
        int verb = set.action().words().nextSetBit(0);
        return IntStream.range(Math.max(0, verb - 3), verb)
                .anyMatch(
                        at -> passage.word(at).equals("and") || passage.word(at).equals("then"));
    }
}
