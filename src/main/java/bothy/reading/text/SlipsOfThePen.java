package bothy.reading.text;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Sets right what only the words beside a word show: "peas an beans", "0.4 in rain", "transplant Ed". */
final class SlipsOfThePen {
    private static final Set<String> BEFORE_STATE = Set.of(
            "on",
            "over",
            "off",
            "in",
            "out",
            "up",
            "down",
            "finally",
            "just",
            "quite",
            "very",
            "really",
            "so",
            "too",
            "all",
            "now",
            "still",
            "bone",
            "through",
            "dry",
            "wet",
            "moist",
            "damp",
            "not",
            "a",
            "got",
            "been",
            "going",
            "turning",
            "looking",
            "starting",
            "flowering",
            "ready",
            "ripe",
            "full",
            "gone",
            "already",
            "covered",
            "soaking",
            "growing",
            "coming");
    /** Letters before which "an" may stand; "an hour". */
    private static final String VOWELS = "aeiouhx";

    /** "An 8 inch pot". */
    private static final Set<Double> AN_EIGHT = Set.of(8.0, 11.0, 18.0, 80.0);

    private static final Set<String> BEHIND_INCHES =
            Set.of("rain", "rainfall", "apart", "deep", "wide", "high", "tall");
    /** "Wed be eating them". */
    private static final Map<String, String> WOULD_TOO =
            Map.of("wed", "we", "id", "i", "youd", "you", "theyd", "they", "itd", "it");

    private static final Set<String> BEHIND_WHERE =
            Set.of("do", "does", "did", "should", "shud", "shall", "can", "could", "cud", "would", "wud", "best");

    private SlipsOfThePen() {}

    static void setRight(List<Token> tokens) {
        isForS(tokens);
        anForAnd(tokens);
        inForInch(tokens);
        hadForWould(tokens);
        wereForWhere(tokens);
    }

    /** "Were do I start": before such a word it asks for a place. */
    private static void wereForWhere(List<Token> tokens) {
        for (int at = 0; at + 1 < tokens.size(); at++) {
            if (tokens.get(at).is("were")
                    && BEHIND_WHERE.contains(tokens.get(at + 1).word())) {
                tokens.set(at, tokens.get(at).spelled("where"));
            }
        }
    }

    /** "Transplant Ed 8 peppers": a telephone that knows a man of that name. */
    static void pastApart(List<Token> tokens, Predicate<String> known) {
        for (int at = 1; at < tokens.size(); at++) {
            Token verb = tokens.get(at - 1);
            String past = verb.word() + (verb.word().endsWith("e") ? "d" : "ed");
            if (tokens.get(at).is("ed") && verb.aWord() && known.test(past)) {
                tokens.set(
                        at - 1,
                        new Token(
                                past,
                                verb.sort(),
                                verb.number(),
                                verb.from(),
                                tokens.get(at).to(),
                                verb.capital(),
                                true));
                tokens.remove(at);
            }
        }
    }

    /** "Fed the peas an watered the beans", "an 3 leeks": before a consonant no "an" stands. */
    private static void anForAnd(List<Token> tokens) {
        for (int at = 0; at + 1 < tokens.size(); at++) {
            Token next = tokens.get(at + 1);
            boolean word = at > 0
                    && next.aWord()
                    && !next.word().isEmpty()
                    && VOWELS.indexOf(next.word().charAt(0)) < 0;
            boolean number = next.sort() == Token.Sort.NUMBER && !AN_EIGHT.contains(next.number());
            if (tokens.get(at).is("an") && (word || number)) {
                tokens.set(at, tokens.get(at).spelled("and"));
            }
        }
    }

    /** "0.4 in rain", "6 in apart", "10 in deep", "rained 1.2 in last night": inches. */
    private static void inForInch(List<Token> tokens) {
        for (int at = 1; at < tokens.size(); at++) {
            boolean behind = at + 1 < tokens.size()
                    && BEHIND_INCHES.contains(tokens.get(at + 1).word());
            boolean rained = at > 1
                    && Set.of("rain", "rained", "rainfall")
                            .contains(tokens.get(at - 2).word());
            if (tokens.get(at).is("in") && tokens.get(at - 1).sort() == Token.Sort.NUMBER && (behind || rained)) {
                tokens.set(at, tokens.get(at).spelled("inch"));
            }
        }
    }

    /** "We'd be eating them by now": what could be. */
    private static void hadForWould(List<Token> tokens) {
        for (int at = 0; at + 1 < tokens.size(); at++) {
            boolean be = tokens.get(at + 1).is("be") || tokens.get(at + 1).is("love");
            if (be && tokens.get(at).is("had")) {
                tokens.set(at, tokens.get(at).spelled("would"));
            } else if (be && WOULD_TOO.containsKey(tokens.get(at).word())) {
                Token token = tokens.get(at);
                tokens.set(at, token.spelled("would"));
                tokens.add(at, token.spelled(WOULD_TOO.get(token.word())));
            }
        }
    }

    /** "Soil's quite wet": before such a word the 's is short for "is". */
    private static void isForS(List<Token> tokens) {
        for (int at = 0; at + 1 < tokens.size(); at++) {
            if (tokens.get(at).is("'s")
                    && BEFORE_STATE.contains(tokens.get(at + 1).word())) {
                tokens.set(at, tokens.get(at).spelled("is"));
            }
        }
    }
}
