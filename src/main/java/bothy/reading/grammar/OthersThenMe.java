package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;
import java.util.stream.IntStream;

/** Doings that a grower tells of others: "my students planted garlic, I've done nothing of the kind", "saw 12 tomatoes planted there". */
final class OthersThenMe {
    /** Who may do a thing for the grower's own beds, unless the grower says to have done none of it. */
    private static final Set<String> MANY = Set.of(
            "students",
            "pupils",
            "class",
            "classes",
            "members",
            "volunteers",
            "kids",
            "children",
            "group",
            "team",
            "scouts",
            "cubs",
            "brownies",
            "apprentices",
            "residents",
            "tenants",
            "committee",
            "helpers",
            "others");

    private static final Set<String> ME = Set.of("i", "we", "me", "mine", "us", "ours", "home", "myself");
    private static final Set<String> DENYING = Set.of("not", "never", "none", "nothing", "nowt", "no", "nil", "nada");
    private static final Set<String> LIKEWISE =
            Set.of("nothing", "none", "nowt", "nada", "any", "kind", "sort", "same", "yet", "anything", "such", "so");
    private static final Set<String> SEEING = Set.of("saw", "seen", "spotted", "noticed", "admired", "see");
    /** What plants do themselves: "they have flowered, the beans". */
    private static final Set<String> OF_PLANTS =
            Set.of("emerged", "flowering", "fruit-set", "colour-turned", "died", "bolted", "cured");

    private static final Set<String> HELPING = Set.of("have", "had", "all", "just", "also", "even", "already", "only");
    /** So many words of the grower's own may lead to the denial, and so many follow it. */
    private static final int REACH = 5;

    private OthersThenMe() {}

    /** Whether others did it and the grower, behind it, denies having done the like. */
    static boolean denied(Passage passage, ActionSaid action, int from) {
        int verb = action.words().nextSetBit(0);
        boolean many = IntStream.range(from, verb).anyMatch(at -> MANY.contains(passage.word(at)))
                && IntStream.range(from, verb)
                        .noneMatch(at -> Set.of("i", "we", "with").contains(passage.word(at)));
        return many
                && IntStream.range(action.end(), passage.size())
                        .anyMatch(at -> ME.contains(passage.word(at)) && noneOfIt(passage, at + 1));
    }

    private static boolean noneOfIt(Passage passage, int from) {
        int to = Math.min(passage.size(), from + REACH);
        return IntStream.range(from, to)
                .filter(at -> DENYING.contains(passage.word(at)))
                .anyMatch(at -> IntStream.range(at, Math.min(passage.size(), at + REACH))
                        .anyMatch(like -> LIKEWISE.contains(passage.word(like))));
    }

    /** "They've sown the verges with sunflowers", where nobody was named before. */
    static boolean theirs(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        return action.form() == Form.PAST
                && !OF_PLANTS.contains(action.action())
                && passage.word(0).equals("they")
                && IntStream.range(1, verb).allMatch(at -> HELPING.contains(passage.word(at)))
                && passage.crops().stream().anyMatch(crop -> crop.start() > verb && !crop.thing());
    }

    /** "Saw 12 tomatoes planted out at the show garden": a sight, unless they are called the grower's own. */
    static boolean seen(Passage passage, ActionSaid action, int from) {
        int verb = action.words().nextSetBit(0);
        return action.form() == Form.PAST
                && passage.crops().stream()
                        .filter(crop -> crop.end() == verb && crop.start() > from)
                        .anyMatch(crop -> IntStream.range(Math.max(from, crop.start() - REACH), crop.start())
                                        .anyMatch(at -> SEEING.contains(passage.word(at)))
                                && IntStream.range(from, crop.start()).noneMatch(at -> Set.of("my", "our", "and", ",")
                                        .contains(passage.word(at))));
    }

    /** "Doreen has had 40 lb of beans": who tells of themselves says "have", and no plot or plant is its own harvester. */
    static boolean hasHad(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        int subject = verb - 2;
        return action.action().equals("harvested")
                && passage.word(verb).equals("had")
                && Set.of("has", "'s").contains(passage.word(verb - 1))
                && subject >= 0
                && passage.cropAt(subject).isEmpty()
                && (passage.tokens().get(subject).capital()
                        || passage.places().stream().anyMatch(place -> place.end() == subject + 1));
    }
}
