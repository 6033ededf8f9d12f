package bothy.almanac.troubles;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * A time of a crop's life to which some causes belong alone, as those of seed in the ground: its signs, and the words one of which a
 * description must hold before it is likened to them.
 */
final class Sphere {
    private final Set<String> signs;
    private final Set<String> stems;
    private final Set<String> causes;
    private final Set<String> ofOtherTimes;

    /**
     * @param causes those that stand behind no other signs
     * @param ofOtherTimes those that stand behind none of its signs
     */
    Sphere(List<String> signs, String words, Set<String> causes, Set<String> ofOtherTimes) {
        this.signs = Set.copyOf(signs);
        this.stems = Stems.of(Stems.words(words));
        this.causes = Set.copyOf(causes);
        this.ofOtherTimes = Set.copyOf(ofOtherTimes);
    }

    /** The causes that a description with these signs and words is not of. */
    Set<String> outOfPlace(Collection<String> seen, Collection<String> told) {
        if (!seen.isEmpty() && signs.containsAll(seen)) {
            return ofOtherTimes; // What never came up has no spots on its leaves.
        }
        boolean ofIt = seen.stream().anyMatch(signs::contains)
                || told.stream().anyMatch(word -> stems.contains(Stems.stem(word)));
        return ofIt ? Set.of() : causes;
    }
}
