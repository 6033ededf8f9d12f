package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** What is got from a shop or from somebody is neither gathered nor set: "picked up 3 aubergines at the nursery", "got 15 Desiree off grandad". */
final class GotElsewhere {
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

    private GotElsewhere() {}

    static boolean only(Passage passage, ActionSaid action) {
        return bought(passage, action) || seedGot(passage, action) || fromSomebody(passage, action);
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

    /** "Got 15 British Queens off grandad": given, not gathered. */
    private static boolean fromSomebody(Passage passage, ActionSaid action) {
        boolean got = action.action().equals("harvested")
                && Set.of("got", "had", "get", "given").contains(passage.word(action.start()));
        return got
                && passage.crops().stream()
                        .filter(crop -> crop.start() > action.start() && crop.start() - action.start() <= PLANTS_REACH)
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
}
