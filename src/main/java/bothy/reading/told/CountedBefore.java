package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "Picked up 3 tomato plants and planted them": how many "they" are was told where they were got or raised. */
final class CountedBefore {
    private static final Set<What> OF_EACH = EnumSet.of(
            What.SOWN, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT, What.MOVED, What.HARDENING_STARTED);
    private static final Set<String> THEM = Set.of("them", "they", "these", "those");
    /** What may stand between the number and the crop. */
    private static final Set<String> BETWEEN = Set.of(
            "little", "small", "big", "nice", "good", "healthy", "sturdy", "cheap", "young", "baby", "more", "new",
            "lovely", "potted", "plug", "sad", "half", "dead", "leggy", "strong");

    private CountedBefore() {}

    static Told with(Passage passage, Clause clause, Told told) {
        boolean open = told.event().count() == null
                && told.event().crop() != null
                && OF_EACH.contains(told.event().what())
                && (them(passage, clause) || half(passage, clause));
        List<CropSaid> named = !open
                ? List.of()
                : Passage.within(
                                passage.crops(),
                                clause.sentence()[0],
                                clause.action().start())
                        .stream()
                        .filter(crop -> !crop.thing())
                        .toList();
        if (named.size() != 1) {
            return told;
        }
        CropSaid crop = named.get(0);
        return passage.counts(clause.sentence()[0], crop.start()).stream()
                .filter(number ->
                        IntStream.range(number.end(), crop.start()).allMatch(at -> BETWEEN.contains(passage.word(at))))
                .findFirst()
                .map(number -> number.value() / (half(passage, clause) ? 2 : 1))
                .filter(number -> number == Math.rint(number))
                .map(number -> told.with(told.event().withCount((int) (double) number)))
                .orElse(told);
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
