package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** What is put back, thrown away or drowned is neither planted nor moved: "pushed them back in", "took the tops to the tip". */
final class PutBack {
    private static final Set<String> PLANTING = Set.of("planted", "planted-out", "sown");
    private static final Set<String> BACK_IN = Set.of(
            "pushed", "poked", "pressed", "popped", "stuck", "tucked", "shoved", "put", "set", "firmed", "planted");
    private static final Set<String> TIPS =
            Set.of("tip", "dump", "skip", "council", "landfill", "recycling", "bonfire");
    private static final Set<String> PESTS = Set.of(
            "caterpillars",
            "caterpillar",
            "slugs",
            "snails",
            "beetles",
            "grubs",
            "bugs",
            "aphids",
            "greenfly",
            "blackfly",
            "worms",
            "hornworms",
            "loopers",
            "larvae",
            "maggots",
            "eggs",
            "insects");

    private static final Set<String> BAD = Set.of(
            "bad",
            "dead",
            "yellow",
            "yellowing",
            "brown",
            "browning",
            "mouldy",
            "mildewed",
            "spotted",
            "spotty",
            "diseased",
            "dying",
            "rusty",
            "worst",
            "infected",
            "damaged",
            "blighted",
            "manky",
            "ratty",
            "tatty");

    private static final Set<String> PEOPLE = Set.of(
            "grandad",
            "granddad",
            "grandpa",
            "gran",
            "granny",
            "grandma",
            "nan",
            "nana",
            "mum",
            "mam",
            "mom",
            "mother",
            "dad",
            "father",
            "neighbour",
            "neighbours",
            "friend",
            "friends",
            "mate",
            "sister",
            "brother",
            "aunt",
            "auntie",
            "uncle",
            "colleague",
            "bloke",
            "guy",
            "lady",
            "woman",
            "man",
            "cousin",
            "boss",
            "work",
            "teacher",
            "plotholder",
            "swap");

    private static final Set<String> OF_THE_GROUND = Set.of(
            "hole",
            "holes",
            "drain",
            "drains",
            "trench",
            "trenches",
            "channel",
            "channels",
            "ditch",
            "path",
            "paths",
            "slit",
            "slits",
            "edge",
            "edges",
            "edging",
            "grass",
            "string",
            "twine",
            "canes",
            "sticks",
            "poles",
            "lawn",
            "hedge");

    /** So many words may stand between the doing and where it goes. */
    private static final int REACH = 5;

    private PutBack() {}

    static boolean only(Passage passage, ActionSaid action) {
        return backIn(passage, action)
                || thrownAway(passage, action)
                || drowned(passage, action)
                || pestsPicked(passage, action)
                || cutOfTheGround(passage, action)
                || badLeaves(passage, action)
                || fromSomebody(passage, action)
                || spread(passage, action);
    }

    /** "Birds pulled the sets out, I pushed them back in": what stood there stands there again. */
    private static boolean backIn(Passage passage, ActionSaid action) {
        if (!PLANTING.contains(action.action()) || !BACK_IN.contains(passage.word(action.start()))) {
            return false;
        }
        for (int at = action.start() + 1; at <= action.start() + REACH; at++) {
            if (passage.word(at).equals("back")) {
                return Set.of("in", "into", "down").contains(passage.word(at + 1));
            }
        }
        return false;
    }

    private static boolean thrownAway(Passage passage, ActionSaid action) {
        return action.action().equals("moved") && within(passage, action, TIPS);
    }

    /** "Dropped them in soapy water": beetles, not plants. */
    private static boolean drowned(Passage passage, ActionSaid action) {
        return PLANTING.contains(action.action()) && within(passage, action, Set.of("soapy"));
    }

    /** "Caterpillars on the cabbages. Picked off 23 by hand". */
    private static boolean pestsPicked(Passage passage, ActionSaid action) {
        boolean off = action.action().equals("harvested")
                && Set.of("picked", "picking", "pulled", "took", "plucked").contains(passage.word(action.start()))
                && (passage.word(action.start() + 1).equals("off")
                        || passage.word(action.lastWord()).equals("off"));
        int end = action.start();
        while (end < passage.size() && !passage.tokens().get(end).endsSentence()) {
            if (passage.cropAt(end).isPresent() && end <= action.lastWord() + 2) {
                return false;
            }
            end++;
        }
        return off
                && passage.tokens().subList(0, action.start()).stream().anyMatch(token -> PESTS.contains(token.word()));
    }

    /** "Cut holes in the plastic", "cut a drain along the bed". */
    private static boolean cutOfTheGround(Passage passage, ActionSaid action) {
        return action.action().equals("harvested")
                && Set.of("cut", "cutting").contains(passage.word(action.start()))
                && within(passage, action, OF_THE_GROUND);
    }

    /** Whether something cut is a drain, a path or a piece of string, and no plant: "cut a drain along the back". */
    static boolean ofTheGround(Passage passage, int from, int to) {
        for (int at = from; at < Math.min(passage.size(), to + REACH); at++) {
            if (Set.of("cut", "cutting").contains(passage.word(at))
                    && (OF_THE_GROUND.contains(passage.word(at + 1)) || OF_THE_GROUND.contains(passage.word(at + 2)))) {
                return true;
            }
        }
        return false;
    }

    /** "Picked off the bad beet leaves": no picking of leaves to eat. */
    private static boolean badLeaves(Passage passage, ActionSaid action) {
        if (!action.action().equals("harvested")) {
            return false;
        }
        boolean bad = false;
        for (int at = action.start(); at <= action.lastWord() + REACH; at++) {
            bad |= BAD.contains(passage.word(at));
            if (bad && Set.of("leaf", "leaves").contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Got 15 British Queens off grandad": given, not gathered. */
    private static boolean fromSomebody(Passage passage, ActionSaid action) {
        boolean got = action.action().equals("harvested")
                && Set.of("got", "had", "get", "given").contains(passage.word(action.start()));
        return got
                && passage.crops().stream()
                        .filter(crop -> crop.start() > action.start() && crop.start() - action.start() <= REACH)
                        .anyMatch(crop -> {
                            int from = crop.end();
                            int who = Set.of("my", "our", "the", "a", "an", "some")
                                            .contains(passage.word(from + 1))
                                    ? from + 2
                                    : from + 1;
                            return Set.of("off", "from").contains(passage.word(from))
                                    && PEOPLE.contains(passage.word(who));
                        });
    }

    /** "Got half a yard of compost, spread it about 2 inches": no rain. */
    private static boolean spread(Passage passage, ActionSaid action) {
        if (!action.action().equals("rain")) {
            return false;
        }
        for (int at = action.start();
                at < passage.size() && !passage.tokens().get(at).endsSentence();
                at++) {
            if (Set.of(
                            "compost",
                            "mulch",
                            "manure",
                            "bark",
                            "topsoil",
                            "soil",
                            "straw",
                            "chippings",
                            "chips",
                            "gravel",
                            "sand")
                    .contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(Passage passage, ActionSaid action, Set<String> words) {
        for (int at = action.start(); at <= action.lastWord() + REACH; at++) {
            if (at >= passage.size() || passage.tokens().get(at).endsSentence()) {
                return false;
            }
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
