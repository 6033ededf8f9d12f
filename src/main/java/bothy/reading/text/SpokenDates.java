package bothy.reading.text;

import bothy.almanac.Words;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Days of the month written out: "on the third", "the twenty first of May", "May the second". */
public final class SpokenDates {
    /** "On the third" is a day only where no thing follows it: "on the third truss" is none. */
    private static final Set<String> LEADS = Set.of("on", "since", "from", "by", "until", "till");

    private static final Set<String> BEHIND = Set.of("i", "we", "and", "but", "so", "when", "it", "they", "then", "my");

    private final Map<String, Integer> ordinals = new HashMap<>();
    private final Map<String, Integer> tens = new HashMap<>();
    private final Set<String> months = new HashSet<>();

    public SpokenDates(Words words) {
        words.names("numbers", "/ordinals")
                .forEach(name -> ordinals.put(name, Integer.valueOf(words.text("numbers", "/ordinals/" + name, ""))));
        for (String name : List.of("twenty", "thirty")) {
            tens.put(name, Integer.valueOf(words.text("numbers", "/words/" + name, "")));
        }
        words.lists("calendar", "/months").values().forEach(months::addAll);
    }

    void figures(List<Token> tokens) {
        for (int at = 0; at < tokens.size(); at++) {
            Integer ten = tens.get(tokens.get(at).word());
            int last = ten == null ? at : at + 1;
            Integer ones = last < tokens.size() ? ordinals.get(tokens.get(last).word()) : null;
            if (ones != null && (ten == null || ones < 10) && dates(tokens, at, last + 1)) {
                int day = ten == null ? ones : ten + ones;
                Token first = tokens.get(at);
                tokens.set(
                        at,
                        new Token(
                                String.valueOf(day),
                                Token.Sort.ORDINAL,
                                day,
                                first.from(),
                                tokens.get(last).to(),
                                false,
                                false));
                tokens.subList(at + 1, last + 1).clear();
            }
        }
    }

    private boolean dates(List<Token> tokens, int from, int to) {
        boolean the = word(tokens, from - 1).equals("the");
        boolean ofMonth = word(tokens, to).equals("of")
                        && (months.contains(word(tokens, to + 1))
                                || word(tokens, to + 2).equals("month"))
                || months.contains(word(tokens, to)) && the
                || months.contains(word(tokens, the ? from - 2 : from - 1));
        boolean alone = to >= tokens.size() || tokens.get(to).mark() || BEHIND.contains(word(tokens, to));
        return ofMonth || the && alone && LEADS.contains(word(tokens, from - 2));
    }

    private static String word(List<Token> tokens, int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }
}
