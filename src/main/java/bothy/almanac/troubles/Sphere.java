package bothy.almanac.troubles;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * Causes that belong to one time of a crop's life only, as those of seed in the ground: their signs, and the words one of which a
 * description must hold before it is likened to them.
 */
public final class Sphere {
    private final Set<String> signs;
    private final Set<String> stems;

    Sphere(List<String> signs, String words) {
        this.signs = Set.copyOf(signs);
        this.stems = Stems.of(Stems.words(words));
    }

    /** Whether a cause with these signs belongs here and nowhere else. */
    public boolean holds(Collection<String> signsOfCause) {
        return !signsOfCause.isEmpty() && signs.containsAll(signsOfCause);
    }

    /** Whether a description is of it, by its signs or a word. */
    public boolean told(Collection<String> signsSeen, Collection<String> words) {
        return signsSeen.stream().anyMatch(signs::contains)
                || words.stream().anyMatch(word -> stems.contains(Stems.stem(word)));
    }
}
