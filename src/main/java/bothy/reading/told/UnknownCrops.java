package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.reading.grammar.Grammar;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A word where a crop should stand that is none, or that could be two: better asked than passed over. */
final class UnknownCrops {
    /** What plants are counted by: "25 hills of Norland". */
    private static final Set<String> BY = Set.of(
            "hill", "hills", "row", "rows", "bag", "bags", "tray", "trays", "packet", "packets", "pot", "pots",
            "patch");

    private final Grammar grammar;

    UnknownCrops(Grammar grammar) {
        this.grammar = grammar;
    }

    /** The statement in doubt about its crop, or {@code null} when no strange word stands there. */
    Told in(Passage passage, Clause clause, Told told) {
        int verb = clause.action().words().nextSetBit(0);
        int reach = Math.max(verb + 5, object(passage, verb) + 1);
        for (int at = Math.max(clause.from(), verb - 2); at < Math.min(clause.to(), reach); at++) {
            Token token = passage.tokens().get(at);
            boolean adverb = token.word().endsWith("ly")
                    || token.word().endsWith("ing")
                    || token.word().endsWith("ed");
            if (at == object(passage, verb) && named(passage, at)) {
                return told.with(told.event().withVariety(null)).doubting(Doubt.About.WHICH_CROP, token.word());
            }
            boolean taken = adverb || clause.action().words().get(at) || inPlaceOrDay(passage, at);
            if (token.aWord()
                    && !taken
                    && token.word().length() > 3
                    && !grammar.spelling().known(token.word())) {
                List<String> near = crops(token.word());
                Told doubtful = told.with(told.event().withVariety(null));
                return near.isEmpty()
                        ? doubtful.doubting(Doubt.About.WHICH_CROP, token.word())
                        : doubtful.oneOfCrops(near).wondering(Doubt.About.DID_YOU_MEAN, token.word());
            }
        }
        return null;
    }

    /** "Seeded carrots. Put in 25 hills of Norland too": a strange name stands where the crop should, so none is carried on to it. */
    boolean named(Passage passage, Clause clause) {
        int at = object(passage, clause.action().words().nextSetBit(0));
        return at < clause.to()
                && passage.word(at - 1).equals("of")
                && passage.cropAt(at).isEmpty()
                && named(passage, at);
    }

    /** Where what the doing is done to begins: behind its verb, a count and an article. */
    private static int object(Passage passage, int verb) {
        int at = verb + 1;
        at = Set.of("the", "my", "our", "some", "up", "in", "out").contains(passage.word(at)) ? at + 1 : at;
        at = Math.max(at, passage.end("n", at));
        boolean by = BY.contains(passage.word(at)) && passage.word(at + 1).equals("of");
        return by ? at + 2 : at;
    }

    /** A name written large within a sentence, or a word of nothing but varieties: "dug sarpo", "harvested 9 Sweet Meat". */
    private boolean named(Passage passage, int at) {
        Token token = passage.tokens().get(at);
        boolean variety = token.aWord()
                && token.word().length() > 3
                && grammar.cropNames().onlyOfVarieties(token.word());
        boolean large = token.aWord()
                && token.capital()
                && at > 0
                && !passage.tokens().get(at - 1).endsSentence()
                && !token.weekday()
                && !passage.message().equals(passage.message().toUpperCase(Locale.ROOT))
                && (passage.end("n", at - 1) > 0 || BY.contains(passage.word(at - 2)))
                && (at + 1 >= passage.size() || passage.tokens().get(at + 1).capital());
        return (variety || large) && !inPlaceOrDay(passage, at);
    }

    private static boolean inPlaceOrDay(Passage passage, int at) {
        return passage.places().stream().anyMatch(place -> place.covers(at))
                || passage.days().stream().anyMatch(day -> day.covers(at));
    }

    private List<String> crops(String word) {
        List<String> crops = new ArrayList<>();
        for (String near : grammar.spelling().near(word)) {
            crops.addAll(grammar.cropNames().named(near));
        }
        return crops.stream().distinct().limit(3).toList();
    }
}
