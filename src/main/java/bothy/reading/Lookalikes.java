package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;

/** Doings in the words of another: "dug the ground over" gathers nothing, "went in the salad" plants nothing. */
final class Lookalikes {
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
    private static final Set<String> EATEN =
            Set.of("ate", "eat", "eating", "eaten", "had", "have", "having", "scoffed", "munched");
    private static final int SHOP_REACH = 9;
    private static final int PLANTS_REACH = 6;
    private static final Set<String> SHOPS = Set.of(
            "centre",
            "center",
            "nursery",
            "shop",
            "shops",
            "market",
            "supermarket",
            "stall",
            "store",
            "neighbour",
            "neighbours",
            "sale",
            "freezer",
            "fridge",
            "cellar",
            "loft",
            "larder");
    private static final Set<String> YOUNG =
            Set.of("plants", "plant", "plugs", "seedlings", "starts", "plug", "plantlets", "transplants", "slips");
    /** "Got the courgette plants in", "had six pepper plants die": what was done to them follows. */
    private static final Set<String> IN_THE_GROUND =
            Set.of("in", "into", "out", "up", "planted", "die", "eaten", "dug", "lifted", "pulled", "cleared");

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
                || cooked(passage, action)
                || dugOver(passage, action)
                || bought(passage, action)
                || seedGot(passage, action)
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

    /** "Picked up 3 aubergines at the nursery", "got 6 cabbages from the market" gather nothing of one's own. */
    private static boolean bought(Passage passage, ActionSaid action) {
        if (!action.action().equals("harvested")) {
            return false;
        }
        boolean picked = passage.word(action.start()).startsWith("pick")
                && passage.word(action.start() + 1).equals("up");
        boolean shop = false;
        for (int at = action.start(); at < Math.min(passage.size(), action.end() + SHOP_REACH); at++) {
            shop |= SHOPS.contains(passage.word(at))
                    && Set.of("at", "from", "in", "garden", "the", "local", "a").contains(passage.word(at - 1))
                    // "Picked 3 for the neighbours", "gave 5 to the neighbours".
                    && !Set.of("for", "to", "with").contains(passage.word(at - 2));
        }
        boolean paid = Set.of("bought", "ordered", "buying").contains(passage.word(action.start() - 1));
        return picked || paid || shop || plants(passage, action) || fromAShop(passage, action);
    }

    /** "Got the seed from a guy in Perth" puts none in. */
    private static boolean seedGot(Passage passage, ActionSaid action) {
        int verb = action.start();
        int seed = Set.of("the", "my", "some", "our").contains(passage.word(verb + 1)) ? verb + 2 : verb + 1;
        return Set.of("got", "get", "getting", "gotten").contains(passage.word(verb))
                && Set.of("sown", "planted", "planted-out").contains(action.action())
                && Set.of("seed", "seeds", "cloves", "sets", "bulbs", "tubers", "slips")
                        .contains(passage.word(seed))
                && Set.of("from", "off").contains(passage.word(seed + 1));
    }

    /** "Ate a bowl of store bought strawberries", "bought melons and ate one": not grown here. */
    private static boolean fromAShop(Passage passage, ActionSaid action) {
        if (!EATEN.contains(passage.word(action.start()))) {
            return false;
        }
        boolean bought = passage.crops().stream()
                .filter(crop -> crop.start() > action.start() && crop.start() - action.end() <= SHOP_REACH)
                .limit(1)
                .anyMatch(crop -> Set.of("bought", "supermarket", "imported").contains(passage.word(crop.start() - 1)));
        for (int at = action.start() - 1;
                !bought && at >= 0 && !passage.tokens().get(at).endsSentence();
                at--) {
            bought = passage.word(at).equals("bought");
        }
        return bought;
    }

    /** "Got some courgette plants off our kid", "had six tomato plugs from a neighbour": what is still to grow. */
    private static boolean plants(Passage passage, ActionSaid action) {
        boolean had = Set.of("got", "had", "have", "took", "get", "picked", "collected")
                .contains(passage.word(action.start()));
        return had
                && passage.crops().stream()
                        .filter(crop -> crop.start() > action.start() && crop.start() - action.start() <= PLANTS_REACH)
                        .anyMatch(crop -> {
                            // "Sweet potato slips" is a name of its own.
                            int young = YOUNG.contains(passage.word(crop.end() - 1)) ? crop.end() - 1 : crop.end();
                            int behind = passage.word(young).equals("plug") ? young + 2 : young + 1;
                            return YOUNG.contains(passage.word(young)) && !IN_THE_GROUND.contains(passage.word(behind));
                        });
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
