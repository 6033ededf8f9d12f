package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.reading.grammar.Grammar;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;

/** A word where a crop should stand that is none, or that could be two: better asked than passed over. */
final class UnknownCrops {
    private final Grammar grammar;

    UnknownCrops(Grammar grammar) {
        this.grammar = grammar;
    }

    /** The statement in doubt about its crop, or {@code null} when no strange word stands there. */
    Told in(Passage passage, Clause clause, Told told) {
        int verb = clause.action().words().nextSetBit(0);
        for (int at = Math.max(clause.from(), verb - 2); at < Math.min(clause.to(), verb + 5); at++) {
            Token token = passage.tokens().get(at);
            boolean adverb = token.word().endsWith("ly")
                    || token.word().endsWith("ing")
                    || token.word().endsWith("ed");
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
