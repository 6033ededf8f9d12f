package bothy.reading.text;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Days of the month written out: "on the third", "the twenty first of May", "May the second". */
final class SpokenDates {
    private static final Map<String, Integer> ORDINALS = Map.ofEntries(
            Map.entry("first", 1),
            Map.entry("second", 2),
            Map.entry("third", 3),
            Map.entry("fourth", 4),
            Map.entry("fifth", 5),
            Map.entry("sixth", 6),
            Map.entry("seventh", 7),
            Map.entry("eighth", 8),
            Map.entry("ninth", 9),
            Map.entry("tenth", 10),
            Map.entry("eleventh", 11),
            Map.entry("twelfth", 12),
            Map.entry("thirteenth", 13),
            Map.entry("fourteenth", 14),
            Map.entry("fifteenth", 15),
            Map.entry("sixteenth", 16),
            Map.entry("seventeenth", 17),
            Map.entry("eighteenth", 18),
            Map.entry("nineteenth", 19),
            Map.entry("twentieth", 20),
            Map.entry("thirtieth", 30));
    private static final Map<String, Integer> TENS = Map.of("twenty", 20, "thirty", 30);
    private static final Set<String> MONTHS = Set.of(
            "january",
            "february",
            "march",
            "april",
            "may",
            "june",
            "july",
            "august",
            "september",
            "october",
            "november",
            "december");
    /** "On the third" is a day only where no thing follows it: "on the third truss" is none. */
    private static final Set<String> LEADS = Set.of("on", "since", "from", "by", "until", "till");

    private static final Set<String> BEHIND = Set.of("i", "we", "and", "but", "so", "when", "it", "they", "then", "my");

    private SpokenDates() {}

    static void figures(List<Token> tokens) {
        for (int at = 0; at < tokens.size(); at++) {
            Integer tens = TENS.get(tokens.get(at).word());
            int last = tens == null ? at : at + 1;
            Integer ones = last < tokens.size() ? ORDINALS.get(tokens.get(last).word()) : null;
            if (ones != null && (tens == null || ones < 10) && dates(tokens, at, last + 1)) {
                int day = tens == null ? ones : tens + ones;
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

    private static boolean dates(List<Token> tokens, int from, int to) {
        boolean the = word(tokens, from - 1).equals("the");
        boolean ofMonth = word(tokens, to).equals("of")
                        && (MONTHS.contains(word(tokens, to + 1))
                                || word(tokens, to + 2).equals("month"))
                || MONTHS.contains(word(tokens, to)) && the
                || MONTHS.contains(word(tokens, the ? from - 2 : from - 1));
        boolean alone = to >= tokens.size() || tokens.get(to).mark() || BEHIND.contains(word(tokens, to));
        return ofMonth || the && alone && LEADS.contains(word(tokens, from - 2));
    }

    private static String word(List<Token> tokens, int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }
}
