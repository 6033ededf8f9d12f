package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** What is done to the ground, or cut and spread on it, is done to no plant: "dug the ground over", "cut a drain along the bed". */
final class Groundwork {
    private static final int DIG_REACH = 6;
    private static final Set<String> SOIL = Set.of(
            "ground",
            "bed",
            "beds",
            "plot",
            "soil",
            "trench",
            "trenches",
            "hole",
            "holes",
            "manure",
            "muck",
            "compost",
            "garden",
            "patch",
            "border",
            "earth",
            "pond",
            "path",
            "weeds");

    private static final Set<String> CUT = Set.of(
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

    private static final Set<String> SPREAD = Set.of(
            "compost", "mulch", "manure", "bark", "topsoil", "soil", "straw", "chippings", "chips", "gravel", "sand");

    /** So many words may stand between the cutting and what was cut. */
    private static final int REACH = 5;

    private Groundwork() {}

    static boolean only(Passage passage, ActionSaid action) {
        return dugOver(passage, action) || cutIn(passage, action) || spread(passage, action);
    }

    /** "Dug the ground over", "dug muck into the trench" gathers none. */
    private static boolean dugOver(Passage passage, ActionSaid action) {
        boolean digs = action.action().equals("harvested")
                && Set.of("dug", "digging", "dig", "forked").contains(passage.word(action.start()));
        for (int at = action.start() + 1; digs && at < Math.min(passage.size(), action.start() + DIG_REACH); at++) {
            if (passage.cropAt(at).isPresent() || passage.tokens().get(at).mark()) {
                return false;
            }
            if (SOIL.contains(passage.word(at)) && !Set.of("from", "of").contains(passage.word(at - 1))) {
                return true;
            }
        }
        return false;
    }

    /** "Cut holes in the plastic", "cut a drain along the bed". */
    private static boolean cutIn(Passage passage, ActionSaid action) {
        return action.action().equals("harvested")
                && Set.of("cut", "cutting").contains(passage.word(action.start()))
                && within(passage, action, CUT);
    }

    /** Whether something cut is a drain, a path or a piece of string, and no plant: "cut a drain along the back". */
    static boolean cut(Passage passage, int from, int to) {
        for (int at = from; at < Math.min(passage.size(), to + REACH); at++) {
            if (Set.of("cut", "cutting").contains(passage.word(at))
                    && (CUT.contains(passage.word(at + 1)) || CUT.contains(passage.word(at + 2)))) {
                return true;
            }
        }
        return false;
    }

    /** "Got half a yard of compost, spread it about 2 inches": no rain. */
    private static boolean spread(Passage passage, ActionSaid action) {
        if (!action.action().equals("rain")) {
            return false;
        }
        for (int at = action.start();
                at < passage.size() && !passage.tokens().get(at).endsSentence();
                at++) {
            if (SPREAD.contains(passage.word(at))) {
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
