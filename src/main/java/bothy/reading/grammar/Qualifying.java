package bothy.reading.grammar;

import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.Phrase;
import bothy.reading.text.Token;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Words that could tell a doing and only say which or what kind of thing is meant. */
final class Qualifying {
    /** What begins to tell how something fares. */
    private static final Set<String> FARING = Set.of(
            "have",
            "has",
            "are",
            "is",
            "were",
            "was",
            "keep",
            "keeps",
            "look",
            "looks",
            "smell",
            "smells",
            "started",
            "going",
            "gone",
            "went",
            "turned",
            "turning",
            "rotting",
            "sprouting",
            "seem",
            "need");

    /** "Leeks frozen in": by the frost. */
    private static final Set<String> FAST = Set.of("in", "into", "solid", "hard", "stiff", "to", "by");

    private Qualifying() {}

    static boolean only(List<Token> tokens, String action, Form form, Phrase.Place place, Phrase.Slots slots) {
        if (form == Form.PLAIN || form == Form.PLAIN_S) {
            return asNoun(tokens, place.start(), slots) || tallAndThin(tokens, place.start());
        }
        if (form == Form.PAST && tokens.get(place.start()).is("frozen")) {
            return place.end() < tokens.size()
                    && FAST.contains(tokens.get(place.end()).word());
        }
        return form == null && (ofWhat(tokens, action, place.start()) || whichOnes(tokens, action, place, slots));
    }

    /** "A melon plant in the border", "lettuce starts": a thing whose kind the crop says, and nobody plants or starts. */
    private static boolean asNoun(List<Token> tokens, int at, Phrase.Slots slots) {
        return Set.of("plant", "plants", "starts").contains(tokens.get(at).word())
                && IntStream.range(Math.max(0, at - 3), at).anyMatch(crop -> slots.end("crop", crop) == at);
    }

    /** "Very long and thin": how they look, and no thinning. */
    private static boolean tallAndThin(List<Token> tokens, int at) {
        return at > 1
                && tokens.get(at).is("thin")
                && Set.of("and", "&", ",").contains(tokens.get(at - 1).word())
                && Set.of("long", "tall", "pale", "weak", "leggy", "spindly", "lanky")
                        .contains(tokens.get(at - 2).word());
    }

    /** "A mulch of dead leaves", "bottoms of the first green tomatoes": of what or on what something else is told. */
    private static boolean ofWhat(List<Token> tokens, String action, int at) {
        int before =
                at > 0 && Set.of("the", "my", "our").contains(tokens.get(at - 1).word()) ? at - 2 : at - 1;
        String led = before < 0 ? "" : tokens.get(before).word();
        return action.equals("died") && tokens.get(at).is("dead") && led.equals("of")
                || action.equals("fruit-set")
                        && tokens.get(at).is("first")
                        && Set.of("of", "on").contains(led);
    }

    /** "Some of the potatoes in the cellar have turned green": where they lie only says which. */
    private static boolean whichOnes(List<Token> tokens, String action, Phrase.Place place, Phrase.Slots slots) {
        int in = slots.end("crop", place.start());
        return action.equals("stored")
                && in > 0
                && Set.of("in", "down", "up").contains(tokens.get(in).word())
                && place.end() < tokens.size()
                && FARING.contains(tokens.get(place.end()).word());
    }
}
