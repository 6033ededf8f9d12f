package bothy.reading.text;

import java.util.List;
import java.util.Map;

/** Marks that were spoken and written out: "planted the leeks comma forty of them full stop". */
final class Dictated {
    private static final Map<String, String> SECOND = Map.of("stop", ".", "mark", "?", "line", "\n", "point", "!");
    private static final Map<String, String> FIRST =
            Map.of("full", "stop", "question", "mark", "new", "line", "exclamation", "mark");

    private Dictated() {}

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
