package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The words for plants that were raised already, and the bags that they are set out in. */
final class YoungPlants {
    static final Set<String> WORDS = Set.of(
            "plants",
            "plant",
            "seedlings",
            "seedling",
            "plugs",
            "punnet",
            "punnets",
            "transplants",
            "starts",
            "babies");

    private YoungPlants() {}

    /** These words and others beside them. */
    static Set<String> and(String... others) {
        return Stream.concat(WORDS.stream(), Stream.of(others)).collect(Collectors.toUnmodifiableSet());
    }

    static boolean named(Passage passage, Clause clause) {
        return IntStream.range(clause.from(), clause.to()).anyMatch(at -> WORDS.contains(passage.word(at)));
    }

    /** "Planted 3 toms in growbags": where plants go to stay, no nursery. */
    static boolean intoGrowbag(Passage passage, Clause clause) {
        return Passage.within(passage.places(), clause.from(), clause.to()).stream()
                .anyMatch(place -> place.name().startsWith("growbag"));
    }
}
