package bothy.reading.text;

import java.util.List;
import java.util.Set;

/**
 * Questions that growers put to themselves to tell something: "Beetroot up? Yes, 27" tells that it is up, "Chard bolting? No" tells
 * nothing. Only what names a thing is told so; "should I water? no" answers the bot.
 */
final class SelfAnswered {
    private static final Set<String> YES = Set.of("yes", "yep", "yeah", "yup", "aye", "yessir", "tick");
    private static final Set<String> NO = Set.of("no", "nope", "nah", "nay");
    private static final Set<String> ASKING = Set.of(
            "what",
            "when",
            "where",
            "which",
            "who",
            "why",
            "how",
            "should",
            "shall",
            "can",
            "could",
            "do",
            "does",
            "did",
            "is",
            "are",
            "am",
            "was",
            "were",
            "will",
            "would",
            "may",
            "must",
            "any",
            "anything",
            "have",
            "has",
            "or",
            "if",
            "ok",
            "too",
            "worth",
            "safe",
            "ready",
            "sure",
            "enough",
            "late",
            "early",
            "time");
    private static final Set<String> MORE = Set.of(
            "since",
            "from",
            "on",
            "all",
            "about",
            "nearly",
            "today",
            "yesterday",
            "last",
            "this",
            "half",
            "most",
            "finally",
            "at");
    /** "Tomatoes in the tunnel tied up and fed?". */
    private static final int MOST_WORDS = 8;

    private SelfAnswered() {}

    /** What was answered with yes is told; what was answered with no is left out. */
    static void tell(List<Token> tokens) {
        for (int at = tokens.size() - 1; at > 0; at--) {
            boolean mark = tokens.get(at).is("?") && at + 1 < tokens.size();
            int start = mark ? start(tokens, at) : at;
            boolean recalls = mark
                    && tokens.get(start).is("did")
                    && Set.of("i", "we").contains(tokens.get(start + 1).word());
            if (!mark || !names(tokens, recalls ? start + 1 : start, at)) {
                continue;
            }
            if (YES.contains(tokens.get(at + 1).word()) && (closes(tokens, at + 2) || goesOn(tokens.get(at + 2)))) {
                Token asked = tokens.get(at);
                tokens.set(at, new Token(",", Token.Sort.MARK, Double.NaN, asked.from(), asked.to(), false, false));
                tokens.subList(at + 1, answered(tokens, at + 2)).clear();
                if (recalls) { // "Did I water the peas? Yes": I did.
                    Token did = tokens.get(start);
                    tokens.set(start, tokens.get(start + 1));
                    tokens.set(start + 1, did);
                }
            } else if (NO.contains(tokens.get(at + 1).word()) && closes(tokens, at + 2) && besides(tokens, start, at)) {
                tokens.subList(start, at + 2).clear();
                at = start;
            }
        }
    }

    /** Behind a "yes" the comma goes with it; a full stop stays. */
    private static int answered(List<Token> tokens, int at) {
        return at < tokens.size() && (tokens.get(at).is(",") || tokens.get(at).is("-")) ? at + 1 : at;
    }

    private static boolean closes(List<Token> tokens, int at) {
        return at >= tokens.size() || tokens.get(at).mark();
    }

    /** "Flowering? Yes since Friday". */
    private static boolean goesOn(Token next) {
        return next.sort() == Token.Sort.NUMBER || MORE.contains(next.word());
    }

    /** "Peas up? No" by itself tells of peas that should be up. */
    private static boolean besides(List<Token> tokens, int start, int mark) {
        return start > 0 || mark + 3 < tokens.size();
    }

    private static int start(List<Token> tokens, int mark) {
        int at = mark;
        while (at > 0 && !tokens.get(at - 1).endsSentence()) {
            at--;
        }
        return at;
    }

    private static boolean names(List<Token> tokens, int from, int to) {
        return to > from + 1
                && to - from <= MOST_WORDS
                && tokens.subList(from, to).stream().noneMatch(token -> ASKING.contains(token.word()));
    }
}
