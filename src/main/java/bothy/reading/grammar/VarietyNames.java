package bothy.reading.grammar;

import bothy.reading.said.CropSaid;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/** Joins a crop with the variety that stands beside it, also one that no list knows: "6 Black Krim tomatoes". */
final class VarietyNames {
    private static final Set<String> CALLING = Set.of("called", "variety", "named", "var", "type");
    /** Kinds that growers call by each other's names. */
    private static final Set<String> SQUASHES = Set.of("pumpkin", "winter-squash");

    /** What may stand between a crop and its variety where the sentence is told in a hurry. */
    private static final Set<String> OF_THE_DOING = Set.of(
            "today",
            "yesterday",
            "this",
            "morning",
            "afternoon",
            "evening",
            "sets",
            "plants",
            "seeds",
            "seed",
            "seedlings",
            "cloves",
            "tubers",
            "plugs",
            "in",
            "out");

    private static final int MOST_WORDS = 4;
    private static final int MOST_BETWEEN = 8;
    private final List<Token> tokens;
    private final String message;
    private final Predicate<String> known;

    VarietyNames(List<Token> tokens, String message, Predicate<String> known) {
        this.tokens = tokens;
        this.message = message;
        this.known = known;
    }

    /** "cherry tomatoes" names the cherry kind; "butternut" names itself. */
    static String bare(String words) {
        String bare = words.strip()
                .replaceAll(
                        "(?i) +(tomato(es)?|squash(es)?|peppers?|beans?|onions?|carrots?|cabbages?|lettuces?|((first )?earl(y|ies)|seed )?(potato(es)?|spuds?|tatties)|(first )?earlies|leeks?|peas?|spinach|cucumbers?|radish(es)?|pumpkins?|garlic|kale|basil|parsley|turnips?|broccoli|chard|courgettes?|plants?|zucchini)$",
                        "");
        return bare.isEmpty() ? words : bare;
    }

    List<CropSaid> joined(List<CropSaid> said) {
        List<CropSaid> joined = new ArrayList<>();
        for (CropSaid next : said) {
            CropSaid last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            CropSaid both = last == null ? null : both(last, next);
            if (both == null) {
                joined.add(next);
            } else {
                joined.set(joined.size() - 1, both);
            }
        }
        joined.replaceAll(this::named);
        for (int at = 0; at + 1 < joined.size(); at++) {
            CropSaid crop = joined.get(at);
            CropSaid next = joined.get(at + 1);
            boolean more = at + 2 < joined.size() && joined.get(at + 2).crops().equals(next.crops());
            if (headed(crop, next)) {
                joined.set(at, crop.asThing());
            } else if (!more && says(crop, next)) {
                joined.set(at, crop.called(next.variety()));
                joined.set(at + 1, next.asThing());
            }
        }
        return joined;
    }

    /** "Beans sown 20 May: Tiger's Eye, 3 rows": what stands over its only kind. */
    private boolean headed(CropSaid head, CropSaid next) {
        int colon = next.start() - 1;
        boolean counted = head.start() > 0 && tokens.get(head.start() - 1).sort() == Token.Sort.NUMBER;
        return head.variety() == null
                && next.variety() != null
                && !counted
                && colon - head.end() > 0
                && colon - head.end() <= MOST_BETWEEN
                && tokens.get(colon).is(":")
                && head.crops().containsAll(next.crops())
                && tokens.subList(head.end(), colon).stream().noneMatch(Token::endsSentence);
    }

    /** "Put my spuds on the windowsill to chit, Rocket seed potatoes": said behind, the variety is of those named before. */
    private boolean says(CropSaid crop, CropSaid next) {
        int between = next.start() - crop.end();
        boolean same =
                crop.variety() == null && next.variety() != null && crop.crops().equals(next.crops());
        boolean behind = between > 1
                && between <= MOST_BETWEEN
                && tokens.get(next.start() - 1).is(",")
                && tokens.subList(crop.end(), next.start()).stream().noneMatch(Token::endsSentence);
        boolean closes = next.end() == tokens.size() || tokens.get(next.end()).mark();
        // "100 onion sets today red baron and 40 beans".
        boolean overTheDay = between > 0
                && tokens.subList(crop.end(), next.start()).stream()
                        .allMatch(token -> OF_THE_DOING.contains(token.word()))
                && (closes || tokens.get(next.end()).is("and"));
        return same && (behind && closes || overTheDay);
    }

    private CropSaid both(CropSaid a, CropSaid b) {
        int between = b.start() - a.end();
        boolean near = between == 0
                || (between == 1
                        && Set.of("(", "\"", "-", ",", ":", "called")
                                .contains(tokens.get(a.end()).word()));
        boolean oneNamed = (a.variety() == null) != (b.variety() == null);
        if (!near || (between == 1 && b.variety() == null) || (!oneNamed && between > 0)) {
            return null;
        }
        List<String> alike = a.crops().stream().filter(b.crops()::contains).toList();
        CropSaid namer = a.variety() != null ? a : b;
        // "8 Crown Prince pumpkins": of squashes the variety says which kind they are.
        boolean squashes = oneNamed
                && (between == 0 || tokens.get(a.end()).is("("))
                && SQUASHES.containsAll(a.crops())
                && SQUASHES.containsAll(b.crops());
        List<String> shared = alike.isEmpty() && squashes ? namer.crops() : alike;
        if (shared.isEmpty()) {
            return null;
        }
        String variety = namer.variety();
        return new CropSaid(
                a.start(), b.end(), shared, true, variety, b.plural() || a.plural(), a.thing() || b.thing());
    }

    private CropSaid named(CropSaid crop) {
        if (crop.variety() != null) {
            return crop;
        }
        CropSaid before = capitalsBefore(crop);
        return before != crop ? before : calledAfter(crop);
    }

    private CropSaid capitalsBefore(CropSaid crop) {
        int start = crop.start();
        while (start > 0 && crop.start() - start < MOST_WORDS && nameLike(start - 1)) {
            start--;
        }
        boolean strange = false;
        for (int at = start; at < crop.start(); at++) {
            strange |= !known.test(tokens.get(at).word());
        }
        boolean shouting = message.equals(message.toUpperCase(Locale.ROOT));
        return strange && !shouting ? crop.spanning(start, crop.end()).called(written(start, crop.start())) : crop;
    }

    private boolean nameLike(int at) {
        Token token = tokens.get(at);
        boolean opens = at == 0 || tokens.get(at - 1).endsSentence();
        return token.aWord()
                && token.capital()
                && !opens
                && token.word().length() > 1
                && !token.is("sowed")
                && !token.is("planted")
                && !token.weekday(); // "On Friday leeks" names no variety.
    }

    private CropSaid calledAfter(CropSaid crop) {
        int at = crop.end();
        if (at + 1 >= tokens.size()) {
            return crop;
        }
        boolean called = CALLING.contains(tokens.get(at).word());
        boolean quoted = tokens.get(at).is("(") || tokens.get(at).is("\"");
        int start = at + 1;
        int end = start;
        while (end < tokens.size()
                && end - start < MOST_WORDS
                && tokens.get(end).aWord()
                && (quoted || tokens.get(end).capital())) {
            end++;
        }
        boolean closed = quoted
                && end < tokens.size()
                && (tokens.get(end).is(")") || tokens.get(end).is("\""))
                && tokens.get(start).capital();
        return end > start && (closed || called)
                ? crop.spanning(crop.start(), end).called(written(start, end))
                : crop;
    }

    private String written(int start, int end) {
        return message.substring(tokens.get(start).from(), tokens.get(end - 1).to());
    }
}
