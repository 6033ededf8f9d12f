package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;

/** What the words around a verb make of it: who did it, and what for. */
final class Around {
    private static final int CURE_REACH = 5;
    private static final Set<String> ANIMALS = Set.of(
            "pigeon",
            "pigeons",
            "bird",
            "birds",
            "cat",
            "cats",
            "dog",
            "dogs",
            "fox",
            "foxes",
            "rabbit",
            "rabbits",
            "blackbird",
            "blackbirds",
            "crow",
            "crows",
            "rook",
            "rooks",
            "squirrel",
            "squirrels",
            "badger",
            "badgers",
            "mouse",
            "mice",
            "rat",
            "rats",
            "slug",
            "slugs",
            "snails",
            "deer",
            "hens",
            "chickens",
            "chook",
            "chooks",
            "caterpillars",
            "wallabies",
            "gophers",
            "groundhog",
            "voles",
            "possum",
            "possums",
            "monkey",
            "monkeys",
            "parrots",
            "cockatoos",
            "toddler");

    private Around() {}

    /** "Hung in the porch to cure", "put in the greenhouse to dry". */
    static boolean toCure(Passage passage, Clause clause) {
        for (int at = clause.action().start();
                at < Math.min(passage.size() - 1, clause.action().end() + CURE_REACH);
                at++) {
            if (passage.tokens().get(at).endsSentence()) {
                return false;
            }
            if (passage.word(at).equals("to")
                    && Set.of("cure", "dry", "harden").contains(passage.word(at + 1))
                    && !passage.word(at + 2).equals("off")) {
                return true;
            }
        }
        return false;
    }

    /** "A pigeon pulled up 12 of my onions". */
    static boolean byAnimal(Passage passage, Clause clause) {
        return clause.action().form() == Form.PAST && animal(passage, clause);
    }

    /** "Birds are nipping the tops off", "something has dug up my beans". */
    static boolean animal(Passage passage, Clause clause) {
        int at = clause.action().words().nextSetBit(0) - 1;
        while (at > clause.from()
                && Set.of("has", "have", "had", "are", "is", "been", "just", "all", "were", "was", "keep")
                        .contains(passage.word(at))) {
            at--;
        }
        return at >= clause.from()
                && (ANIMALS.contains(passage.word(at)) || passage.word(at).equals("something"));
    }
}
