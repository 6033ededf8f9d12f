package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** "Picked up 3 tomato plants and planted them": how many "they" are was told where they were got or raised. */
final class CountedBefore {
    private static final Set<What> OF_EACH = EnumSet.of(
            What.SOWN, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT, What.MOVED, What.HARDENING_STARTED);
    private static final Set<String> THEM = Set.of("them", "they", "these", "those");
    private static final Set<String> PART = Set.of("half", "some", "most", "few", "couple", "rest", "part", "third");
    /** What may stand between the number and the crop. */
    private static final Set<String> BETWEEN = Set.of(
            "little", "small", "big", "nice", "good", "healthy", "sturdy", "cheap", "young", "baby", "more", "new",
            "lovely", "potted", "plug", "sad", "half", "dead", "leggy", "strong");

    private CountedBefore() {}

    static Told with(Passage passage, Clause clause, Told told) {
        boolean open = (told.event().count() == null || half(passage, clause))
                && told.event().crop() != null
                && OF_EACH.contains(told.event().what());
        List<CropSaid> named = open ? spokenOf(passage, clause) : List.of();
        if (named.size() != 1 || !named.get(0).canMean(told.event().crop())) {
            return told;
        }
        CropSaid crop = named.get(0);
        return passage.counts(0, crop.start()).stream()
                .filter(number ->
                        IntStream.range(number.end(), crop.start()).allMatch(at -> BETWEEN.contains(passage.word(at))))
                .findFirst()
                .map(number -> number.value() / (half(passage, clause) ? 2 : 1))
                .filter(number -> number == Math.rint(number))
                .map(number -> told.with(told.event().withCount((int) (double) number)))
                .orElse(told);
    }

    /** What "they" are: named in the sentence ahead, or got right before, "bought 3 tomato plants Saturday. Planted out today". */
    private static List<CropSaid> spokenOf(Passage passage, Clause clause) {
        int doing = clause.action().start();
        boolean half = half(passage, clause);
        boolean pointed = half || them(passage, clause);
        Optional<ActionSaid> got = passage.actions().stream()
                .filter(action -> action.end() <= doing)
                .reduce((first, second) -> second)
                .filter(action -> action.action().equals("chore") && (half || !part(passage, clause)));
        return passage.crops().stream()
                .filter(crop -> !crop.thing() && crop.end() <= doing)
                .filter(crop -> pointed && crop.start() >= clause.sentence()[0]
                        || got.isPresent() && got.get().covers(crop.start()))
                .toList();
    }

    /** "Planted most of them". */
    private static boolean part(Passage passage, Clause clause) {
        return IntStream.range(clause.action().start(), clause.to()).anyMatch(at -> PART.contains(passage.word(at)));
    }

    /** "Bought 12 kale plants and planted half of them". */
    private static boolean half(Passage passage, Clause clause) {
        int at = clause.action().words().nextSetBit(0) + 1;
        at += Set.of("out", "on", "up").contains(passage.word(at)) ? 1 : 0;
        int behind = passage.word(at + 1).equals("of") ? at + 3 : at + 1;
        return passage.word(at).equals("half")
                && (behind >= passage.size()
                        || passage.tokens().get(behind).mark()
                        || passage.end("date", behind) > 0
                        || Set.of("of", "in", "out", "on", "so").contains(passage.word(at + 1))
                                && Set.of("them", "those", "these", "in", "out", "on", "so", "")
                                        .contains(passage.word(at + 2)));
    }

    /** Whether all of them are meant: not "some of them", not "two of those". */
    private static boolean them(Passage passage, Clause clause) {
        return IntStream.range(clause.from(), clause.to())
                .anyMatch(at ->
                        THEM.contains(passage.word(at)) && !passage.word(at - 1).equals("of"));
    }
}
