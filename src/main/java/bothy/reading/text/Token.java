package bothy.reading.text;

import java.time.DayOfWeek;
import java.util.Arrays;

/**
 * One word, number or mark of a message.
 *
 * @param word in lower case, spelling set right
 * @param sort what it is
 * @param number its value when it is a number or an ordinal, else {@code NaN}
 * @param from where it starts in the message
 * @param to where it ends, exclusive
 * @param capital whether it was written with a capital
 * @param mended whether its spelling was set right by nearness
 */
public record Token(String word, Sort sort, double number, int from, int to, boolean capital, boolean mended) {

    /** What a token is. */
    public enum Sort {
        WORD,
        /** "6", "2.5", "½". */
        NUMBER,
        /** "3rd". */
        ORDINAL,
        /** Figures that may be a date or a fraction: "2027-04-03", "3/4". */
        FIGURES,
        /** A time of day, which the diary does not keep. */
        TIME,
        /** Punctuation; a line break is a mark too. */
        MARK
    }

    public boolean is(String other) {
        return word.equals(other);
    }

    public boolean mark() {
        return sort == Sort.MARK;
    }

    public boolean aWord() {
        return sort == Sort.WORD;
    }

    /** Whether it is a picture character, a word of itself. */
    public boolean picture() {
        return sort == Sort.WORD && !word.isEmpty() && Character.getType(word.codePointAt(0)) == Character.OTHER_SYMBOL;
    }

    /** Whether it is the full name of a day of the week. */
    public boolean weekday() {
        return Arrays.stream(DayOfWeek.values()).anyMatch(day -> day.name().equalsIgnoreCase(word));
    }

    /** Whether a sentence ends here. */
    public boolean endsSentence() {
        return mark() && (is(".") || is("!") || is("?") || is(";") || is("\n"));
    }

    /** Another word in its place. */
    public Token as(String other) {
        return new Token(other, sort, number, from, to, capital, mended);
    }

    Token spelled(String right) {
        return new Token(right, sort, number, from, to, capital, true);
    }
}
