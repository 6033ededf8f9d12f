package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.Set;
import java.util.stream.IntStream;

/** What is binned, burnt or composted: plants that are lost, or what was cut off plants that live on. */
final class ThrownAway {
    private static final Set<String> OBJECTS = Set.of("them", "it", "these", "those", "that");
    /** What is cut off a plant that lives on, or pulled up beside it. */
    private static final Set<String> CUT_OFF = Set.of(
            "leaf",
            "leaves",
            "foliage",
            "tops",
            "haulm",
            "haulms",
            "shaws",
            "vines",
            "stems",
            "sideshoots",
            "suckers",
            "shoots",
            "flowers",
            "weeds",
            "caterpillars",
            "slugs",
            "snails",
            "eggs",
            "beetles",
            "grubs");

    private static final Set<String> CUTTING = Set.of(
            "cut",
            "took",
            "picked",
            "pulled",
            "stripped",
            "snipped",
            "nipped",
            "pinched",
            "trimmed",
            "removed",
            "clipped",
            "cleared",
            "gathered",
            "raked",
            "ripped",
            "plucked");
    /** So many words may stand between the cutting and what is cut off. */
    private static final int CUT_REACH = 5;

    private static final Set<String> OF_THINGS = Set.of(
            "out", "away", "the", "all", "my", "our", "its", "their", "old", "outer", "some", "any", "of", "spent");
    /** What is thrown away and is no plant. */
    private static final Set<String> THROWN = Set.of(
            "tops", "tails", "leaves", "foliage", "husks", "shells", "skins", "stalks", "compost", "potting", "soil",
            "label", "labels", "packet", "packets", "pot", "pots", "tray", "trays", "weeds");

    private ThrownAway() {}

    /** "Took the old leaves off the courgettes and binned them": what was cut off, not the plants. */
    static boolean noPlant(Passage passage, Clause clause) {
        if (!clause.action().action().equals("died") || clause.action().form() == null) {
            return false;
        }
        if (thrownPart(passage, clause)) {
            return true;
        }
        int behind = clause.action().lastWord() + 1;
        behind += OBJECTS.contains(passage.word(behind)) ? 1 : 0;
        boolean nothingElse = behind >= passage.size()
                || passage.tokens().get(behind).mark()
                || Set.of("and", "too", "today", "yesterday", "all", "in", "on", "so", "just", "after")
                        .contains(passage.word(behind));
        return nothingElse
                && IntStream.range(clause.sentence()[0], clause.action().start())
                        .anyMatch(at -> CUT_OFF.contains(passage.word(at)) && cutBefore(passage, clause, at));
    }

    /** "Threw the tops away", "binned the small ones" of what was gathered. */
    private static boolean thrownPart(Passage passage, Clause clause) {
        int thing = clause.action().words().nextSetBit(0) + 1;
        while (OF_THINGS.contains(passage.word(thing))) {
            thing++;
        }
        boolean gathered = passage.word(thing + 1).equals("ones")
                && !passage.word(thing).equals("dead")
                && passage.actions().stream()
                        .anyMatch(other -> other.action().equals("harvested")
                                && other.start() >= clause.sentence()[0]
                                && other.start() < clause.action().start());
        boolean plantsInIt = passage.word(thing + 1).equals("of");
        return gathered || THROWN.contains(passage.word(thing)) && !plantsInIt;
    }

    private static boolean cutBefore(Passage passage, Clause clause, int part) {
        return IntStream.range(Math.max(clause.sentence()[0], part - CUT_REACH), part)
                .anyMatch(at -> CUTTING.contains(passage.word(at)));
    }

    /** "Pulled the lettuces and composted them": nobody eats what goes on the heap. */
    static boolean pulled(Passage passage, Clause clause, CropSaid crop) {
        boolean pulled = crop != null
                && Set.of("pulled", "dug", "ripped", "yanked", "lifted")
                        .contains(passage.word(clause.action().words().nextSetBit(0)));
        return pulled
                && IntStream.range(crop.end(), clause.sentence()[1])
                        .anyMatch(at -> Set.of("composted", "binned", "chucked", "threw", "burnt", "burned")
                                        .contains(passage.word(at))
                                && Set.of("them", "it", "the").contains(passage.word(at + 1))
                                && !Set.of(
                                                "tops", "leaves", "foliage", "rest", "bad", "rotten", "bolted", "tails",
                                                "small")
                                        .contains(passage.word(at + 2)));
    }

    /** "Pulled that plant so I am down to two": one that was pointed at is taken out. */
    static boolean pointedOut(Passage passage, Clause clause, CropSaid crop) {
        int at = clause.action().lastWord() + 1;
        return crop == null
                && Set.of("pulled", "pull", "dug", "ripped", "yanked", "removed")
                        .contains(passage.word(clause.action().words().nextSetBit(0)))
                && Set.of("that", "this").contains(passage.word(at))
                && Set.of("plant", "vine", "seedling").contains(passage.word(at + 1));
    }
}
