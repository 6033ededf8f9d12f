package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;
import java.util.stream.IntStream;

/** What happens of itself in the words of something done: ash falls, leaves dry, spots move up the plant. */
final class OfItself {
    /** How what nobody spread comes down. */
    private static final Set<String> FALLEN = Set.of(
            "fallen",
            "fell",
            "falling",
            "falls",
            "landed",
            "landing",
            "settled",
            "settling",
            "drifted",
            "drifting",
            "raining",
            "rained",
            "blown",
            "blew",
            "blowing",
            "floating",
            "floated",
            "dropping",
            "dropped",
            "snowing");

    private static final Set<String> PARTS = Set.of(
            "leaf",
            "leaves",
            "tops",
            "tips",
            "edges",
            "foliage",
            "stem",
            "stems",
            "stalks",
            "haulms",
            "vines",
            "shoots",
            "needles",
            "fronds",
            "flowers",
            "buds",
            "spots",
            "patches",
            "blotches",
            "yellowing",
            "browning",
            "rot",
            "mould",
            "rust",
            "mildew",
            "blight",
            "wilting",
            "bottom",
            "margins");

    private static final Set<String> ALONG = Set.of(
            "up",
            "upwards",
            "upward",
            "down",
            "downwards",
            "inward",
            "inwards",
            "outward",
            "outwards",
            "along",
            "across",
            "through",
            "from",
            "to",
            "higher");

    private static final Set<String> PERKING = Set.of(
            "perk",
            "perks",
            "perked",
            "perking",
            "pick",
            "picks",
            "picked",
            "picking",
            "bounce",
            "bounced",
            "stand",
            "stood",
            "straighten",
            "straightened",
            "lift",
            "lifted");

    private static final Set<String> GROWN_NEW = Set.of(
            "new", "fresh", "some", "more", "a", "few", "lots", "of", "loads", "big", "good", "nice", "lovely",
            "green");

    private static final Set<String> GROWTH = Set.of(
            "leaf",
            "leaves",
            "shoots",
            "growth",
            "flowers",
            "flower",
            "roots",
            "buds",
            "tendrils",
            "vines",
            "pods",
            "blossom");

    private static final Set<String> OBJECTS =
            Set.of("the", "my", "our", "some", "all", "them", "it", "those", "these", "both", "a");
    /** So many words may stand between "drying" and where: "drying nicely in the shed". */
    private static final int PLACE_REACH = 4;

    private OfItself() {}

    static boolean only(Passage passage, ActionSaid action) {
        return switch (action.action()) {
            case "planted-out", "planted" -> grows(passage, action);
            case "emerged" -> perks(passage, action);
            case "fed" -> fell(passage, action);
            case "cured" -> dries(passage, action);
            case "moved" -> spreads(passage, action);
            default -> false;
        };
    }

    /** "Ash has fallen on the tomatoes" feeds none. */
    private static boolean fell(Passage passage, ActionSaid action) {
        // "Dropped some feed on them" was done: what fell stands before its verb.
        return IntStream.range(action.start() + 1, action.end()).anyMatch(at -> FALLEN.contains(passage.word(at)));
    }

    /** "Wilt every afternoon and perk back up overnight". */
    private static boolean perks(Passage passage, ActionSaid action) {
        return IntStream.range(action.start(), action.end() + 1)
                .anyMatch(at -> passage.word(at).equals("up")
                        && passage.word(at - 1).equals("back")
                        && PERKING.contains(passage.word(at - 2)));
    }

    /** "Have put out new leaves", "putting out runners". */
    private static boolean grows(Passage passage, ActionSaid action) {
        int behind = action.lastWord() + 1;
        while (GROWN_NEW.contains(passage.word(behind))) {
            behind++;
        }
        return passage.word(action.lastWord()).equals("out")
                && passage.word(action.start()).startsWith("put")
                && GROWTH.contains(passage.word(behind));
    }

    /** "The leaves are turning yellow and drying": neither things laid somewhere to dry nor a doing to them. */
    private static boolean dries(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        int behind = action.lastWord() + 1;
        return action.words().stream()
                        .mapToObj(passage::word)
                        .anyMatch(word -> word.startsWith("dry") || word.startsWith("drie"))
                && partBefore(passage, verb)
                && !OBJECTS.contains(passage.word(behind))
                && passage.cropAt(behind).isEmpty()
                && passage.places().stream()
                        .noneMatch(place -> place.start() >= verb && place.start() - verb <= PLACE_REACH);
    }

    /** "Brown spots on the lower leaves, moving up". */
    private static boolean spreads(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        boolean goesOn = action.form() == Form.ING || passage.word(verb).endsWith("s");
        return goesOn
                && action.words().cardinality() == 1
                && (ALONG.contains(passage.word(verb + 1))
                        || Set.of("", ".", ",").contains(passage.word(verb + 1)))
                && !Set.of("i", "we", "am", "me").contains(passage.word(verb - 1))
                && partBefore(passage, verb);
    }

    private static boolean partBefore(Passage passage, int verb) {
        int from = verb;
        while (from > 0 && !passage.tokens().get(from - 1).endsSentence()) {
            from--;
        }
        return IntStream.range(from, verb).anyMatch(at -> PARTS.contains(passage.word(at)))
                && IntStream.range(from, verb).noneMatch(at -> Set.of("i", "we").contains(passage.word(at)));
    }
}
