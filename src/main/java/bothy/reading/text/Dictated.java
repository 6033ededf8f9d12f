package bothy.reading.text;

import java.util.List;
import java.util.Map;

/** Marks and figures that were spoken and written out: "planted the leeks comma forty of them full stop", "two point four kilos". */
final class Dictated {
    private static final Map<String, String> SECOND = Map.of("stop", ".", "mark", "?", "line", "\n", "point", "!");
    private static final Map<String, String> FIRST =
            Map.of("full", "stop", "question", "mark", "new", "line", "exclamation", "mark");

    private Dictated() {}

    private static final List<String> DIGITS = List.of(
            "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    /** "Two point four kilos", "one point five": the figure that was spoken. */
    static void decimals(List<Token> tokens) {
        for (int at = 1; at + 1 < tokens.size(); at++) {
            int whole = digit(tokens.get(at - 1));
            int part = digit(tokens.get(at + 1));
            // "At one point five were out" tells no figure.
            boolean when = at > 1 && tokens.get(at - 2).is("at");
            if (tokens.get(at).is("point") && !when && whole >= 0 && part >= 0 && part < 10) {
                double value = whole + part / 10.0;
                tokens.set(
                        at - 1,
                        new Token(
                                String.valueOf(value),
                                Token.Sort.NUMBER,
                                value,
                                tokens.get(at - 1).from(),
                                tokens.get(at + 1).to(),
                                false,
                                false));
                tokens.remove(at + 1);
                tokens.remove(at);
            }
        }
    }

    private static int digit(Token token) {
        boolean figure = token.sort() == Token.Sort.NUMBER && token.number() == Math.rint(token.number());
        return figure && token.number() < 100 ? (int) token.number() : DIGITS.indexOf(token.word());
    }

    static void marks(List<Token> tokens) {
        for (int at = 0; at < tokens.size(); at++) {
            Token token = tokens.get(at);
            String after = at + 1 < tokens.size() ? tokens.get(at + 1).word() : "";
            if (token.is("comma") && at > 0) {
                tokens.set(at, mark(token, token, ","));
            } else if (after.equals(FIRST.getOrDefault(token.word(), " "))) {
                tokens.set(at, mark(token, tokens.get(at + 1), SECOND.get(after)));
                tokens.remove(at + 1);
            }
        }
    }

    private static Token mark(Token first, Token last, String mark) {
        return new Token(mark, Token.Sort.MARK, Double.NaN, first.from(), last.to(), false, false);
    }
}
