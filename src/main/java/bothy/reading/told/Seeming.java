package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** Words in the form of a doing that tell of none, or of a lesser one. */
final class Seeming {
    private static final Set<String> PARTS = Set.of(
            "stem", "stems", "stalk", "stalks", "leaf", "leaves", "foliage", "tops", "haulm", "haulms", "roots", "tips",
            "veins", "edges", "shoots", "flowers", "soil", "ends", "bottoms", "bases");
    private static final Set<String> SMALL_PARTS = Set.of(
            "thing",
            "tendril",
            "tendrils",
            "bit",
            "bits",
            "patch",
            "patches",
            "flower",
            "bud",
            "buds",
            "branch",
            "branches",
            "tip",
            "root",
            "vein",
            "edge",
            "growth",
            "shoot",
            "end",
            "top",
            "part",
            "parts",
            "skin",
            "leaflets");
    private static final int PART_REACH = 4;
    /** What has a colour of its own and is not the fruit: "got orange dusty streaks". */
    private static final Set<String> BLEMISHES = Set.of(
            "spot",
            "spots",
            "speck",
            "specks",
            "speckles",
            "pimple",
            "pimples",
            "pustule",
            "pustules",
            "blister",
            "blisters",
            "bump",
            "bumps",
            "lump",
            "lumps",
            "streak",
            "streaks",
            "stripe",
            "stripes",
            "dot",
            "dots",
            "dust",
            "powder",
            "blotch",
            "blotches",
            "freckle",
            "freckles",
            "stain",
            "stains",
            "patch",
            "patches",
            "mark",
            "marks",
            "rust",
            "edges",
            "tips",
            "veins",
            "leaves",
            "leaf",
            "stems",
            "fuzz",
            "mould",
            "slime");

    private static final Set<String> DETERMINERS = Set.of("the", "my", "our", "their", "its", "some");
    /** So many words may stand between a colour and what has it. */
    private static final int BLEMISH_REACH = 4;

    private static final Set<String> CAUGHT = Set.of(
            "got", "caught", "had", "took", "hit", "nipped", "touched", "burnt", "burned", "zapped", "blackened");
    private static final Set<String> WHOLE = Set.of("everything", "all", "every", "both", "each");
    private static final Set<String> DEAD = Set.of("dead", "died", "killed", "lost", "goners", "kaput", "mush");

    private Seeming() {}

    /** "The frost got the potatoes": caught is not killed, where neither a number nor a "dead" says so. */
    static Told caught(Passage passage, Clause clause, Told told) {
        int verb = clause.action().start() + 1;
        boolean caught = told.event().what() == What.DIED
                && told.event().count() == null
                && passage.word(clause.action().start()).equals("frost")
                && CAUGHT.contains(passage.word(verb))
                && !WHOLE.contains(passage.word(verb + 1))
                && passage.words().stream().noneMatch(DEAD::contains);
        return caught ? Told.of(Event.of(What.FROST, null, null, told.event().on()), told.from(), told.to()) : told;
    }

    /** "The stems are going black", "it's got orange rusty pimples" tell of no fruit. */
    static boolean ofAnotherPart(Passage passage, Clause clause) {
        for (int at = clause.action().lastWord(); at <= clause.action().lastWord() + BLEMISH_REACH; at++) {
            if (BLEMISHES.contains(passage.word(at))) {
                return true;
            }
            if (at >= passage.size()
                    || passage.tokens().get(at).mark()
                    || Set.of("but", "with", "though").contains(passage.word(at))
                    || passage.word(at).equals("and") && DETERMINERS.contains(passage.word(at + 1))) {
                break;
            }
        }
        for (int at = Math.max(clause.sentence()[0], clause.action().start() - PART_REACH);
                at < clause.action().start();
                at++) {
            if (PARTS.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "The curly thing by the stem is dead": a part of the plant, not the plant. */
    static boolean partDead(Passage passage, Clause clause) {
        boolean dead = clause.action().action().equals("died")
                && clause.action().form() == null
                && passage.word(clause.action().lastWord()).equals("dead");
        for (int at = clause.action().start() - 1; dead && at >= clause.sentence()[0]; at--) {
            String word = passage.word(at);
            if (PARTS.contains(word) || SMALL_PARTS.contains(word)) {
                return true;
            }
            if (passage.cropAt(at).isPresent()
                    || Set.of(",", "plant", "plants", "seedling", "seedlings", "they", "it", "and")
                            .contains(word)) {
                return false;
            }
        }
        return false;
    }

    /** "Slugs had one strawberry leaf", "frost killed the potato tops" cost no plant. */
    static boolean bitten(Passage passage, Clause clause, CropSaid crop) {
        return clause.action().action().equals("died")
                && Set.of(
                                "leaf", "leaves", "tips", "tip", "tops", "top", "haulm", "haulms", "foliage", "flower",
                                "flowers", "bud", "buds", "petals", "shoots")
                        .contains(passage.word(crop.end()));
    }

    /** "Dug a trench for the beans" gathers none. */
    static boolean dugFor(Passage passage, Clause clause, CropSaid crop) {
        int before = Set.of("the", "my", "our", "some", "next").contains(passage.word(crop.start() - 1)) ? 2 : 1;
        return clause.action().action().equals("harvested")
                && passage.word(crop.start() - before).equals("for")
                && passage.word(clause.action().start()).startsWith("d");
    }
}
