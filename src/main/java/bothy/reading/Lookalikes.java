package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;

/** Doings in the words of another: "dug the ground over" gathers nothing, "went in the salad" plants nothing. */
final class Lookalikes {
    private static final Set<String> KITCHEN = Set.of(
            "salad",
            "soup",
            "stew",
            "pan",
            "pie",
            "curry",
            "compost",
            "bin",
            "dustbin",
            "rubbish",
            "trash",
            "garbage",
            "freezer",
            "fridge",
            "kitchen",
            "oven",
            "jar",
            "jars",
            "chutney",
            "basket",
            "bowl",
            "car",
            "mouth",
            "sandwich",
            "risotto",
            "sauce",
            "chickens");

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

    private static final int LEAVES_REACH = 5;

    private static final Set<String> COVERS = Set.of(
            "cover",
            "covers",
            "fleece",
            "net",
            "nets",
            "netting",
            "mesh",
            "cloche",
            "cloches",
            "lid",
            "lids",
            "tops",
            "leaves",
            "suckers",
            "sideshoots",
            "cuttings",
            "afternoon",
            "morning",
            "day",
            "week",
            "label",
            "labels",
            "flowers",
            "caterpillars",
            "slugs",
            "snails",
            "weeds");

    /** What a plant sheds by itself. */
    private static final Set<String> SHED = Set.of(
            "flower", "flowers", "blossom", "blossoms", "bloom", "blooms", "bud", "buds", "leaf", "leaves", "petals");

    /** What is done to seed that goes into compost to grow. */
    private static final Set<String> PRESSING =
            Set.of("poked", "pushed", "pressed", "popped", "stuck", "tucked", "set", "placed");

    private static final Set<String> HEAPS = Set.of("bin", "bins", "heap", "heaps", "pile", "caddy", "bucket", "bag");

    private static final int WEED_REACH = 8;
    private static final Set<String> WEEDS = Set.of(
            "weed",
            "weeds",
            "nettle",
            "nettles",
            "couch",
            "grass",
            "bindweed",
            "dandelion",
            "dandelions",
            "dock",
            "docks",
            "buttercup",
            "buttercups",
            "bramble",
            "brambles",
            "thistle",
            "thistles",
            "groundsel",
            "chickweed",
            "moss",
            "ivy",
            "hawthorn",
            "stones",
            "slug",
            "slugs",
            "caterpillar",
            "caterpillars",
            "aphids",
            "greenfly",
            "snails");

    private Lookalikes() {}

    /** Whether a doing only looks like what its words say. */
    static boolean only(Passage passage, ActionSaid action) {
        return inThere(passage, action)
                || UsualWarmth.told(passage, action)
                || felt(passage, action)
                || weeded(passage, action)
                || coveredIn(passage, action)
                || uncovered(passage, action)
                || badLeaves(passage, action)
                || cooked(passage, action)
                || Groundwork.only(passage, action)
                || GotElsewhere.only(passage, action)
                || NotThePlants.toBeSet(passage, action)
                || NotThePlants.dish(passage, action)
                || NotThePlants.calledSo(passage, action)
                || drunk(passage, action)
                || grown(passage, action)
                || setDown(passage, action)
                || trimmedWeight(passage, action)
                || OfItself.only(passage, action)
                || PutBack.only(passage, action)
                || OtherSenses.meant(passage, action);
    }

    /** "Covered in scabs" is no cover. */
    private static boolean coveredIn(Passage passage, ActionSaid action) {
        return action.action().equals("protected")
                && passage.word(action.lastWord()).equals("covered")
                && passage.word(action.lastWord() + 1).equals("in");
    }

    /** "Took the covers off the potatoes" picks none. */
    private static boolean uncovered(Passage passage, ActionSaid action) {
        boolean harvested = action.action().equals("harvested");
        if (harvested
                && SHED.contains(passage.word(action.start() - 1))
                && action.words().stream().anyMatch(at -> passage.word(at).equals("off"))) {
            return true; // "The flowers have come off the courgettes".
        }
        boolean off = harvested && passage.word(action.lastWord()).equals("off");
        for (int at = action.start(); off && at < action.lastWord(); at++) {
            if (COVERS.contains(passage.word(at))) {
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
        for (int at = action.start(); at <= action.lastWord() + LEAVES_REACH; at++) {
            bad |= BAD.contains(passage.word(at));
            if (bad && Set.of("leaf", "leaves").contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "The thinnings went in the salad" plants none. */
    private static boolean cooked(Passage passage, ActionSaid action) {
        int last = action.lastWord();
        if (action.action().startsWith("planted") && passage.word(last).equals("compost")) {
            return !PRESSING.contains(passage.word(action.start()))
                    || HEAPS.contains(passage.word(last + 1))
                    || passage.counts(action.start(), last).isEmpty(); // "Chucked the old peas in the compost".
        }
        int thing = Set.of("the", "a", "my", "our").contains(passage.word(last + 1)) ? last + 2 : last + 1;
        return action.action().startsWith("planted")
                && Set.of("in", "into").contains(passage.word(last))
                && KITCHEN.contains(passage.word(thing));
    }

    /** "Then had a cup of tea myself" waters nobody else. */
    private static boolean drunk(Passage passage, ActionSaid action) {
        return action.action().equals("watered")
                && action.form() == null
                && Set.of("had", "have", "got").contains(passage.word(action.start()))
                && Set.of("i", "we", "then", "and", ",").contains(passage.word(action.start() - 1))
                && passage.quantities().stream()
                        .anyMatch(quantity -> quantity.overlaps(action)
                                && Set.of("cup", "cups", "pint", "pints").contains(passage.word(quantity.end() - 1)));
    }

    /** "The cobs on the sweetcorn look fat": they set long ago. */
    private static boolean grown(Passage passage, ActionSaid action) {
        boolean fat = false;
        boolean young = false;
        for (int at = action.start();
                at < passage.size() && !passage.tokens().get(at).endsSentence();
                at++) {
            fat |= Set.of("fat", "ready", "huge", "plump", "full", "ripe", "enormous")
                    .contains(passage.word(at));
        }
        for (int at = Math.max(0, action.start() - 3); at < Math.min(passage.size(), action.end() + 3); at++) {
            young |= Set.of("first", "set", "forming", "tiny", "little", "small", "baby", "setting")
                    .contains(passage.word(at));
        }
        return action.action().equals("fruit-set") && action.state() && fat && !young;
    }

    /** "Set it drying", "set them on the bench": no fruit. */
    private static boolean setDown(Passage passage, ActionSaid action) {
        return action.action().equals("fruit-set")
                && action.form() != null
                && passage.word(action.lastWord()).equals("set")
                && Set.of("it", "them", "the", "my", "our", "up", "out", "off", "aside", "to", "down", "about", "all")
                        .contains(passage.word(action.lastWord() + 1));
    }

    /** "1.8 kg trimmed" tells what was weighed. */
    private static boolean trimmedWeight(Passage passage, ActionSaid action) {
        return action.action().equals("note")
                && action.form() == Form.PAST
                && passage.quantities().stream().anyMatch(quantity -> quantity.end() == action.start());
    }

    /** "Pulled nettles out of the path", "dug up couch grass" is weeding. */
    private static boolean weeded(Passage passage, ActionSaid action) {
        boolean pulls = Set.of("harvested", "died", "thinned").contains(action.action())
                && Set.of(
                                "pulled",
                                "pulling",
                                "pull",
                                "dug",
                                "digging",
                                "dig",
                                "ripped",
                                "ripping",
                                "cleared",
                                "clearing",
                                "picked",
                                "picking")
                        .contains(passage.word(action.start()));
        for (int at = action.start(); pulls && at < Math.min(passage.size(), action.start() + WEED_REACH); at++) {
            if (passage.cropAt(at).isPresent()
                    || at > action.start() && passage.tokens().get(at).mark()) {
                return false;
            }
            if (WEEDS.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "They're in there now with the budgie". */
    private static boolean inThere(Passage passage, ActionSaid action) {
        int next = action.lastWord() + 1;
        boolean tray = Set.of("their", "a", "the", "its", "my").contains(passage.word(next))
                && Set.of("tray", "trays", "module", "modules", "seed", "pots", "pot", "cells")
                        .contains(passage.word(next + 1));
        return action.action().equals("planted")
                && action.form() == null
                && passage.word(action.lastWord()).equals("in")
                && (Set.of("there", "here").contains(passage.word(next))
                        || tray && Set.of("are", "is").contains(passage.word(action.lastWord() - 1)));
    }

    /** "Stuck my hand in the soil by the carrots" plants no hand. */
    private static boolean felt(Passage passage, ActionSaid action) {
        boolean puts = Set.of("planted", "sown", "planted-out", "moved").contains(action.action());
        for (int at = action.start(); puts && at < action.end() + 1; at++) {
            if (Set.of("hand", "finger", "fingers", "thumb", "thermometer", "probe", "knuckle")
                    .contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
