package bothy.reading;

import bothy.garden.SignSeen;
import bothy.reading.said.Passage;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;

/** The signs of a message, each by the name that says most of it. */
final class ClosestSigns {
    /**
     * "Patchy, bare stretches where nothing came up" tells of gaps, not that none is up; "full size and just sitting there green" of
     * fruit that stands still, not of seedlings.
     */
    private static final Map<String, String> OF_ANOTHER =
            Map.of("no-emergence", "patchy-emergence", "seedlings-stalled", "not-ripening");

    /** What frost leaves behind of leaves, as growers see it. */
    private static final Set<String> FROSTED =
            Set.of("black", "blackened", "mushy", "soft", "limp", "soggy", "slimy", "glassy", "collapsed");

    private final Signs signs;

    ClosestSigns(Signs signs) {
        this.signs = signs;
    }

    /** Each sign once, and no wider one beside the closer: "wilting every afternoon. They hang down like rags." */
    List<SignSeen> of(Passage passage, List<SignSeen> seen) {
        Set<String> wider = new HashSet<>();
        seen.forEach(sign -> wider.add(Objects.requireNonNullElse(signs.wider(sign.sign()), "")));
        return seen.stream()
                .distinct()
                .filter(sign ->
                        !wider.contains(sign.sign()) && !Signs.rotOfSeedlings(sign, seen) && !saidBy(sign, seen))
                .map(sign -> afterFrost(passage, sign))
                .toList();
    }

    /** Whether the words of a sign are those of another that is told of the same crop. */
    private static boolean saidBy(SignSeen sign, List<SignSeen> seen) {
        String closer = OF_ANOTHER.get(sign.sign());
        return seen.stream()
                .anyMatch(other -> other.sign().equals(closer) && Objects.equals(other.crop(), sign.crop()));
    }

    /** "Frost on Monday. The leaves went black and soft from it": told of in another sentence, and behind it all the same. */
    private static SignSeen afterFrost(Passage passage, SignSeen sign) {
        boolean frosted = sign.sign().equals("brown-leaves")
                && passage.actions().stream().anyMatch(action -> action.action().equals("frost"))
                && IntStream.range(0, passage.size()).anyMatch(at -> FROSTED.contains(passage.word(at)));
        return frosted
                ? new SignSeen(
                        "frost-damage",
                        sign.planting(),
                        sign.crop(),
                        sign.on(),
                        sign.where(),
                        sign.count(),
                        sign.seedAge())
                : sign;
    }
}
