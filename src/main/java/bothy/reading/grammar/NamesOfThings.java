package bothy.reading.grammar;

import bothy.reading.text.Phrase;
import bothy.reading.text.Token;
import java.util.List;
import java.util.Set;

/** Words in the form of a doing that name a thing: "the harvest", "tomato feed", "under netting", "water bill". */
final class NamesOfThings {
    private static final Set<String> COVERS = Set.of("netting", "caging", "staking", "mulching", "shading", "fleecing");
    private static final Set<String> BEFORE_COVERING = Set.of(
            "am",
            "is",
            "are",
            "was",
            "were",
            "been",
            "i",
            "we",
            "finished",
            "started",
            "spent",
            "and",
            "just",
            "busy",
            "today",
            "kept",
            "at",
            "of",
            "on");
    private static final Set<String> OBJECT =
            Set.of("the", "my", "our", "them", "it", "some", "these", "those", "all", "off", "out");
    private static final Set<String> STUFF = Set.of(
            "net",
            "nets",
            "cloth",
            "butt",
            "butts",
            "barrel",
            "barrels",
            "tank",
            "tanks",
            "gauge",
            "catalogue",
            "tray",
            "trays",
            "house");
    /** "Seed catalogue", "plant food", "water butt": names of things at the head of a message. */
    private static final Set<String> THINGS_AFTER = Set.of(
            "net",
            "nets",
            "cloth",
            "house",
            "catalogue",
            "catalogues",
            "catalog",
            "order",
            "swap",
            "packet",
            "packets",
            "tray",
            "trays",
            "potatoes",
            "potato",
            "compost",
            "list",
            "box",
            "tin",
            "bed",
            "beds",
            "sale",
            "food",
            "feed",
            "butt",
            "butts",
            "barrel",
            "barrels",
            "tank",
            "tanks",
            "gauge",
            "bill",
            "shop",
            "shopping",
            "company",
            "arrived",
            "came",
            "pots",
            "labels",
            "expected",
            "forecast",
            "due",
            "tomorrow",
            "stopped",
            "time",
            "season",
            "is",
            "was",
            "are",
            "were");

    private static final Set<String> BEFORE_VERB = Set.of(
            "i", "we", "to", "will", "not", "can", "should", "must", "and", "then", "just", "also", "would", "could",
            "did", "please", "never", "always", "do", "they", "you", "may", "might", "shall", "us", "help", "or", "but",
            "me", "so", "today", "usually", "only", "now", "still", "finally", "let", "n't", "better", "today's");
    /** So many words make up a name and what it does: "crop insurance man was". */
    private static final int NAME_REACH = 5;

    private NamesOfThings() {}

    /** "The harvest", "6 plant", "tomato feed" name things; only "I water" does. */
    static boolean noun(List<Token> tokens, Phrase.Place found) {
        int at = found.start();
        boolean seedIn = found.length() == 2 && tokens.get(at).is("seed") && at > 0;
        if (seedIn
                && !tokens.get(at - 1).mark()
                && !BEFORE_VERB.contains(tokens.get(at - 1).word())) {
            return true; // "Kale seed in the old sink".
        }
        if (found.length() > 1) {
            return thing(tokens, found);
        }
        boolean cried = tokens.get(at).is("rain")
                && (NotDone.word(tokens, at + 1).equals("rain")
                        || NotDone.word(tokens, at - 1).equals("rain")); // "Rain rain rain."
        if (cried) {
            return true;
        }
        String next = NotDone.word(tokens, at + 1);
        boolean heads = at == 0 || tokens.get(at - 1).mark();
        boolean told = !heads && Set.of("is", "was", "are", "were").contains(next); // "Because the drill was long".
        if (THINGS_AFTER.contains(next) && !told) {
            return heads || STUFF.contains(next);
        }
        boolean dry = tokens.get(at).is("dry")
                && (at + 1 == tokens.size()
                        || !OBJECT.contains(tokens.get(at + 1).word()));
        if (dry) {
            return true; // "Dry on top but damp below".
        }
        boolean nothingThere = tokens.get(at).is("clear")
                && (at + 1 == tokens.size()
                        || tokens.get(at + 1).mark()
                        || Set.of(
                                        "so", "of", "as", "from", "for", "and", "skies", "night", "nights", "sky",
                                        "today", "yet")
                                .contains(tokens.get(at + 1).word()));
        if (nothingThere) {
            return true; // "Clear so far."
        }
        if (at == 0 || tokens.get(at - 1).endsSentence()) {
            return headsName(tokens, at);
        }
        Token before = tokens.get(at - 1);
        return !before.mark() && !BEFORE_VERB.contains(before.word()) && !atLast(tokens, at);
    }

    /** "I could at last sow the peas". */
    private static boolean atLast(List<Token> tokens, int at) {
        return NotDone.word(tokens, at - 1).equals("last")
                && Set.of("at", "long").contains(NotDone.word(tokens, at - 2));
    }

    /** "Crop insurance man was here", "Water bill came": two nouns and what they do. */
    private static boolean headsName(List<Token> tokens, int at) {
        for (int next = at + 1; next < Math.min(tokens.size(), at + NAME_REACH); next++) {
            Token token = tokens.get(next);
            if (token.mark() || !token.aWord() || OBJECT.contains(token.word())) {
                return false;
            }
            if (next > at + 1
                    && Set.of("was", "is", "were", "has", "came", "went", "says", "said")
                            .contains(token.word())) {
                return true;
            }
        }
        return false;
    }

    /** "Sowed a pot of basil on Sunday" pots nothing on. */
    private static boolean thing(List<Token> tokens, Phrase.Place found) {
        int at = found.start();
        boolean of = at + 1 < tokens.size()
                && tokens.get(at + 1).is("of")
                && !found.words().get(at + 1);
        return of || at > 0 && (tokens.get(at - 1).is("a") || tokens.get(at - 1).is("an"));
    }

    /** "Under netting", "the bird netting": the stuff, not the doing. */
    static boolean cover(List<Token> tokens, Phrase.Place found) {
        int at = found.start();
        return found.length() == 1
                && COVERS.contains(tokens.get(at).word())
                && at > 0
                && !tokens.get(at - 1).mark()
                && !BEFORE_COVERING.contains(tokens.get(at - 1).word());
    }
}
