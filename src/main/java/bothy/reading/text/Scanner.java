package bothy.reading.text;

import bothy.reading.text.Token.Sort;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Cuts a message into tokens. Tags, control characters and hyphens within words are passed over; a picture character is a word
 * of itself. Only the first {@value #LONGEST} characters are read: nobody tells more at once, and it bounds the time.
 */
final class Scanner {
    static final int LONGEST = 5000;
    private static final Pattern TAG = Pattern.compile("<[a-zA-Z/!][^<>]{0,300}>");
    private static final Pattern ISO = Pattern.compile("\\d{4}-\\d{1,2}-\\d{1,2}(?!\\d)");
    private static final Pattern FIGURES = Pattern.compile(
            "(\\d{1,2}/\\d{1,2}(/\\d{2,4})?|\\d{1,2}\\.\\d{1,2}\\.\\d{2,4}|\\d{1,2}-\\d{1,2}-\\d{4})(?![\\d/])");
    /** "On the 12.6.": day and month as they are written on the continent. */
    private static final Pattern DAY_AND_MONTH =
            Pattern.compile("(0?[1-9]|[12]\\d|3[01])\\.(0?[1-9]|1[0-2])(?=\\.(\\s|$))");

    private static final Pattern TIME =
            Pattern.compile("(\\d{1,2}[:.]\\d{2} ?([ap]\\.?m)\\b|\\d{1,2}:\\d{2}(?![\\d:])|\\d{1,2} ?[ap]m\\b)");
    /** "10-10-10" on a bag of fertiliser is neither a day nor a count. */
    private static final Pattern FERTILISER = Pattern.compile("\\d{1,2}(-\\d{1,2}-|:\\d{1,2}:)\\d{1,2}(?![\\d:-])");

    private static final Pattern PART = Pattern.compile("(?:(\\d{1,2})[ -])?(\\d{1,2})/(2|3|4|8|16)(?![\\d/])(?= ?-?"
            + "(?:inch(?:es)?|ins|\"|″|ft|feet|foot|cups?|tsps?|teaspoons?|tbsps?|tablespoons?|lbs?|pounds?|oz|ounces?|gals?|gallons?"
            + "|pints?|quarts?|lit(?:re|er)s?|l|m|met(?:re|er)s?|kilos?|kg|acres?|miles?|hours?|strength|cans?|of|an?"
            + "|in\\.? ?(?:deep|apart|down|tall|high|long|wide|thick|of|spacing|below|under|pots?|[,.;]|$))(?![a-z]))");

    /** Figures that stand for how they sound, "b4" also for a bed where a place is told. */
    private static final Pattern SOUNDED =
            Pattern.compile("(b4|gr8|2moro|2morro|2morrow|4got|2nite|2day)(?![\\p{L}\\d])");

    private static final Set<String> PLACING = Set.of("in", "into", "to", "of", "bed", "from", "and");

    private static final Pattern NUMBER = Pattern.compile("(\\d{1,3}(,\\d{3})+|\\d{1,15})(\\.\\d{1,9})?|\\.\\d{1,9}");
    private static final Pattern COMMA_DECIMAL = Pattern.compile("\\d{1,6},\\d{1,2}(?![\\d,])");
    private static final Pattern ORDINAL_ENDING = Pattern.compile("(st|nd|rd|th)\\b");
    private static final Pattern GOES_ON = Pattern.compile("\\. ?[\\p{Ll}\\d]");
    /** "First broad beans, 2 lb. the onions have bolted". */
    private static final Pattern BEGINS_ANEW = Pattern.compile(
            "\\. ?(oh|the|i|im|i'm|we|they|it|its|it's|also|then|but|now|so|how|what|when|is|are|can|should|do|does|will|any|my"
                    + "|our|some|next)\\b");
    /** "Watered in with 2 gal. 14 hours in the truck": behind a measure another number begins anew, unless it is a part of it. */
    private static final Pattern COUNTS_ANEW =
            Pattern.compile("\\. \\d+(?! ?(?:oz|ounces?|lbs?|pounds?|in|inch|inches)\\b)");

    private static final Set<String> MEASURES = Set.of("lb", "lbs", "oz", "gal", "ft");

    private static final Set<String> ABBREVIATIONS = Set.of(
            "nos", "no", "approx", "ca", "pkt", "pkts", "pcs", "qty", "lb", "lbs", "oz", "gal", "ft", "min", "max",
            "temp", "vs", "var", "incl", "mr", "mrs", "dr", "st", "jan", "feb", "mar", "apr", "jun", "jul", "aug",
            "sep", "sept", "oct", "nov", "dec", "mon", "tue", "tues", "wed", "thu", "thur", "thurs", "fri", "sat");
    private static final Pattern FRACTIONS = Pattern.compile("[½¼¾⅓⅔]");

    private final String text;
    private final String low;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Scanner(String message) {
        String cut = message.length() > LONGEST ? message.substring(0, LONGEST) : message;
        this.text = blankTags(plain(cut));
        this.low = lower(text);
    }

    static List<Token> scan(String message) {
        Scanner scanner = new Scanner(message);
        scanner.run();
        return scanner.tokens;
    }

    private void run() {
        while (at < low.length()) {
            char c = low.charAt(at);
            if (!placed() && take(SOUNDED, Sort.WORD)) {
                continue;
            }
            if (Character.isDigit(c) || (c == '.' && digitAt(at + 1) && !digitAt(at - 1))) {
                number();
            } else if (c == '-' && digitAt(at + 1) && startsFresh()) {
                negative();
            } else if (Character.isLetter(c)) {
                word();
            } else {
                other(c);
            }
        }
    }

    private boolean placed() {
        return tokens.isEmpty() || PLACING.contains(lastWord());
    }

    private String lastWord() {
        return tokens.isEmpty() ? "" : tokens.get(tokens.size() - 1).word();
    }

    private void number() {
        if (take(ISO, Sort.FIGURES) || feed() || part() || take(TIME, Sort.TIME) || take(FIGURES, Sort.FIGURES)) {
            return;
        }
        if (Set.of("the", "on", "since", "from").contains(lastWord()) && take(DAY_AND_MONTH, Sort.FIGURES)) {
            at += goesOnBehindTheStop() ? 1 : 0;
            return;
        }
        int start = at;
        String figures = longest();
        at += figures.length();
        double value = Double.parseDouble(
                COMMA_DECIMAL.matcher(figures).matches() ? figures.replace(',', '.') : figures.replace(",", ""));
        if (at < low.length() && fraction(low.charAt(at)) > 0) {
            value += fraction(low.charAt(at++));
        }
        Matcher ordinal = ORDINAL_ENDING.matcher(low).region(at, low.length()).useTransparentBounds(true);
        if (ordinal.lookingAt()) {
            at = ordinal.end();
            add(low.substring(start, at), Sort.ORDINAL, value, start);
        } else {
            add(low.substring(start, at), Sort.NUMBER, value, start);
        }
    }

    /** "10-10-10" and "2:3:2" are the shares of nitrogen, phosphorus and potassium in a feed. */
    private boolean feed() {
        Matcher shares = FERTILISER.matcher(low).region(at, low.length()).useTransparentBounds(true);
        if (!shares.lookingAt()) {
            return false;
        }
        int start = at;
        at = shares.end();
        add("npk", Sort.WORD, Double.NaN, start);
        return true;
    }

    /** "1/4 in deep", "1 1/2 cups": a part of a measure and no day. */
    private boolean part() {
        Matcher part = PART.matcher(low).region(at, low.length()).useTransparentBounds(true);
        if (!part.lookingAt()) {
            return false;
        }
        double over = Double.parseDouble(part.group(2)) / Double.parseDouble(part.group(3));
        if (over >= 1) {
            return false;
        }
        int start = at;
        at = part.end(3);
        add(
                low.substring(start, at),
                Sort.NUMBER,
                over + (part.group(1) == null ? 0 : Double.parseDouble(part.group(1))),
                start);
        return true;
    }

    private String longest() {
        Matcher comma = COMMA_DECIMAL.matcher(low).region(at, low.length()).useTransparentBounds(true);
        if (comma.lookingAt()) {
            return comma.group();
        }
        Matcher plain = NUMBER.matcher(low).region(at, low.length());
        return plain.lookingAt() ? plain.group() : low.substring(at, at + 1).replaceAll("\\D", "0");
    }

    private void negative() {
        int start = at++;
        number();
        Token last = tokens.remove(tokens.size() - 1);
        boolean number = last.sort() == Sort.NUMBER;
        tokens.add(
                !number
                        ? last
                        : new Token(low.substring(start, at), last.sort(), -last.number(), start, at, false, false));
    }

    private boolean take(Pattern pattern, Sort sort) {
        Matcher matcher = pattern.matcher(low).region(at, low.length()).useTransparentBounds(true);
        if (!matcher.lookingAt()) {
            return false;
        }
        int start = at;
        at = matcher.end();
        add(matcher.group(), sort, Double.NaN, start);
        return true;
    }

    private void word() {
        int start = at;
        while (at < low.length() && (Character.isLetter(low.charAt(at)) || apostropheWithin())) {
            at++;
        }
        add(low.substring(start, at), Sort.WORD, Double.NaN, start);
        String word = low.substring(start, at);
        boolean anew = MEASURES.contains(word)
                && COUNTS_ANEW.matcher(low).region(at, low.length()).lookingAt();
        if (ABBREVIATIONS.contains(word) && !anew && goesOnBehindTheStop()) {
            at++;
        }
    }

    /** "25 nos. chilli", "approx. 3 kg": behind the stop of a word cut short no new sentence begins. */
    private boolean goesOnBehindTheStop() {
        Matcher on = GOES_ON.matcher(text);
        Matcher anew = BEGINS_ANEW.matcher(text);
        return on.region(at, text.length()).lookingAt()
                && !anew.region(at, text.length()).lookingAt();
    }

    private boolean apostropheWithin() {
        return low.charAt(at) == '\'' && at + 1 < low.length() && Character.isLetter(low.charAt(at + 1));
    }

    private void other(char c) {
        int start = at;
        if (fraction(c) > 0) {
            at++;
            add(low.substring(start, at), Sort.NUMBER, fraction(c), start);
        } else if (".!?;,:()\"/\n=%".indexOf(c) >= 0) {
            at++;
            add(String.valueOf(c), Sort.MARK, Double.NaN, start);
        } else if (c == '+' && digitAt(at - 1) && !digitAt(at + 1)) {
            at++; // "40+ onions" are at least forty.
        } else if (c == '&' || c == '+') {
            at++;
            add("and", Sort.WORD, Double.NaN, start);
        } else if (c == '°' || c == '²' || c == '#' || c == '@' || c == '~' || c == '\'') {
            at++;
            if (c == '°') {
                add("°", Sort.WORD, Double.NaN, start);
            }
        } else if (c == '-') {
            dash();
        } else {
            picture();
        }
    }

    /** A dash between spaces parts; one between letters joins; one between figures makes a range. */
    private void dash() {
        int start = at++;
        boolean letters = start > 0
                && Character.isLetter(low.charAt(start - 1))
                && at < low.length()
                && Character.isLetter(low.charAt(at));
        if (!letters) {
            add("-", Sort.MARK, Double.NaN, start);
        }
    }

    private void picture() {
        int point = low.codePointAt(at);
        int start = at;
        at += Character.charCount(point);
        if (Character.getType(point) == Character.OTHER_SYMBOL) {
            add(low.substring(start, at), Sort.WORD, Double.NaN, start);
        }
    }

    private void add(String word, Sort sort, double number, int start) {
        boolean capital = Character.isUpperCase(text.charAt(start));
        tokens.add(new Token(word, sort, number, start, at, capital, false));
    }

    private boolean startsFresh() {
        return at == 0 || Character.isWhitespace(low.charAt(at - 1)) || low.charAt(at - 1) == '(';
    }

    private boolean digitAt(int index) {
        return index >= 0 && index < low.length() && Character.isDigit(low.charAt(index));
    }

    private static double fraction(char c) {
        return switch (c) {
            case '½' -> 0.5;
            case '¼' -> 0.25;
            case '¾' -> 0.75;
            case '⅓' -> 1 / 3.0;
            case '⅔' -> 2 / 3.0;
            default -> 0;
        };
    }

    /** One character for one, so that places in the message stay right. */
    private static String plain(String message) {
        StringBuilder plain = new StringBuilder(message);
        for (int i = 0; i < plain.length(); i++) {
            plain.setCharAt(i, plain(plain.charAt(i)));
        }
        return plain.toString();
    }

    private static char plain(char c) {
        return switch (c) {
            case '\u2018', '\u2019', '`', '\u00b4', '\u02bc' -> '\'';
            case '\u201c', '\u201d', '\u00ab', '\u00bb' -> '"';
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
            case '\u2026' -> '.';
            case '\u00ba', '\u02da' -> '°';
            case '\r' -> '\n';
            case '×', '*' -> 'x';
            default -> folded(c);
        };
    }

    private static char folded(char c) {
        if (c < 128 || FRACTIONS.matcher(String.valueOf(c)).matches() || !Character.isLetterOrDigit(c)) {
            return c;
        }
        String apart = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD);
        return apart.isEmpty() ? c : apart.charAt(0);
    }

    private static String blankTags(String text) {
        if (text.indexOf('<') < 0) {
            return text;
        }
        return TAG.matcher(text).replaceAll(tag -> " ".repeat(tag.end() - tag.start()));
    }

    private static String lower(String text) {
        String low = text.toLowerCase(Locale.ROOT);
        return low.length() == text.length() ? low : text;
    }
}
