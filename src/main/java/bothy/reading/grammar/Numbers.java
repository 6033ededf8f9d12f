package bothy.reading.grammar;

import bothy.almanac.Words;
import bothy.reading.said.NumberSaid;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import bothy.reading.text.Token;
import bothy.reading.text.Token.Sort;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds numbers in figures and in words: "6", "twenty five", "half a dozen", "6-8", "1 1/2". */
public final class Numbers {
    private static final Set<String> BETWEEN = Set.of("-", "to", "or");
    private static final Pattern OF_UNITS = Pattern.compile(
            "kilos?|kgs?|pounds?|lbs?|stone|ounces?|oz|lit(?:re|er)s?|pints?|gallons?|inch(?:es)?|foot|feet|ft|met(?:re|er)s?|weeks?|months?|years?|hours?");

    /** Behind one of these a hundred may be all that was begun, and what follows the "and" those of it that did something. */
    private static final Set<String> BEGUN = Set.of("sowed", "sown", "planted", "started", "put", "set", "had", "of");

    private static final Set<String> CAME_OF_IT =
            Set.of("came", "come", "are", "were", "have", "died", "rotted", "germinated", "survived", "up");
    private static final Set<String> SIZES =
            Set.of("inch", "inches", "in", "foot", "ft", "cm", "mm", "litre", "gallon");
    private final Map<String, Integer> words = new HashMap<>();
    private final PhraseBook<Double> phrases = new PhraseBook<>();
    private final PhraseBook<String> guessed;
    private final PhraseBook<String> near;

    public Numbers(Words words) {
        guessed = new PhraseFile(words, "numbers", Map.of()).book("/guessed", "guessed");
        near = new PhraseFile(words, "numbers", Map.of()).book("/near", "near");
        words.names("numbers", "/words")
                .forEach(word -> this.words.put(word, Integer.valueOf(words.text("numbers", "/words/" + word, "0"))));
        for (String phrase : words.names("numbers", "/phrases")) {
            phrases.add(new Phrase(phrase, Map.of()), Double.valueOf(words.text("numbers", "/phrases/" + phrase, "0")));
        }
    }

    public Set<String> vocabulary() {
        Set<String> vocabulary = new java.util.HashSet<>(words.keySet());
        vocabulary.addAll(guessed.vocabulary());
        vocabulary.addAll(near.vocabulary());
        vocabulary.addAll(phrases.vocabulary());
        return vocabulary;
    }

    /** All numbers of a message in order; none overlaps another. */
    public List<NumberSaid> in(List<Token> tokens) {
        Map<Integer, PhraseBook.Found<Double>> told = new HashMap<>();
        phrases.find(tokens, 0, tokens.size(), (slot, at) -> -1).forEach(found -> told.put(found.start(), found));
        List<NumberSaid> numbers = new ArrayList<>();
        for (int at = 0; at < tokens.size(); ) {
            NumberSaid number = range(single(tokens, at, told), tokens, told);
            if (number != null) {
                numbers.add(withGuess(withNear(number, tokens), tokens));
            }
            at = number == null ? at + 1 : number.end();
        }
        return numbers;
    }

    /** "10 or so leeks": the words belong to the number. */
    private NumberSaid withNear(NumberSaid number, List<Token> tokens) {
        int end = behind(near, number, tokens);
        return number.ordinal() ? number : new NumberSaid(number.start(), end, number.value(), false);
    }

    private static int behind(PhraseBook<String> book, NumberSaid number, List<Token> tokens) {
        return book.find(tokens, number.end(), tokens.size(), (slot, at) -> -1).stream()
                .filter(found -> found.start() == number.end())
                .mapToInt(PhraseBook.Found::end)
                .findFirst()
                .orElse(number.end());
    }

    /** "4 I think": behind a number, that it was guessed. */
    private NumberSaid withGuess(NumberSaid number, List<Token> tokens) {
        int end = behind(guessed, number, tokens);
        boolean closes = end >= tokens.size()
                || tokens.get(end).mark()
                || tokens.get(end - 1).endsSentence();
        return closes ? new NumberSaid(number.start(), end, number.value(), number.ordinal()) : number;
    }

    private NumberSaid single(List<Token> tokens, int at, Map<Integer, PhraseBook.Found<Double>> told) {
        Token token = tokens.get(at);
        if (token.sort() == Sort.NUMBER) {
            return pastHundred(
                    tokens, dozens(tokens, andPart(tokens, new NumberSaid(at, at + 1, token.number(), false))));
        }
        if (token.sort() == Sort.ORDINAL) {
            return new NumberSaid(at, at + 1, token.number(), true);
        }
        if (token.is("minus") && at + 1 < tokens.size()) {
            NumberSaid after = single(tokens, at + 1, told);
            return after == null || after.ordinal() ? null : new NumberSaid(at, after.end(), -after.value(), false);
        }
        NumberSaid inWords = inWords(tokens, at);
        PhraseBook.Found<Double> phrase = told.get(at);
        if (phrase != null && (inWords == null || phrase.end() > inWords.end())) {
            return pastHundred(tokens, new NumberSaid(at, phrase.end(), phrase.meaning(), false));
        }
        return inWords == null ? null : pastHundred(tokens, inWords);
    }

    /** "A hundred and one", "two hundred fifty"; in "a hundred and ten came up" and "a hundred four inch pots" the hundred is whole. */
    private NumberSaid pastHundred(List<Token> tokens, NumberSaid hundreds) {
        if (!tokens.get(hundreds.end() - 1).is("hundred") || hundreds.end() >= tokens.size()) {
            return hundreds;
        }
        boolean and = tokens.get(hundreds.end()).is("and");
        int at = hundreds.end() + (and ? 1 : 0);
        NumberSaid rest = at < tokens.size() ? inWords(tokens, at) : null;
        String behind = rest == null || rest.end() >= tokens.size()
                ? ""
                : tokens.get(rest.end()).word();
        boolean begun = hundreds.start() > 0
                && BEGUN.contains(tokens.get(hundreds.start() - 1).word());
        boolean apart = rest == null || (and ? begun && CAME_OF_IT.contains(behind) : SIZES.contains(behind));
        return apart ? hundreds : new NumberSaid(hundreds.start(), rest.end(), hundreds.value() + rest.value(), false);
    }

    /** "3 dozen", "2 hundred". */
    private static NumberSaid dozens(List<Token> tokens, NumberSaid number) {
        String next = number.end() < tokens.size() ? tokens.get(number.end()).word() : "";
        if (next.equals("tenths")
                && number.end() + 2 < tokens.size()
                && tokens.get(number.end() + 1).is("of")) {
            return new NumberSaid(number.start(), number.end() + 3, number.value() / 10, false);
        }
        int times = next.equals("dozen") ? 12 : next.equals("hundred") ? 100 : next.equals("score") ? 20 : 1;
        return times == 1 ? number : new NumberSaid(number.start(), number.end() + 1, number.value() * times, false);
    }

    /** "2 and a half", "3 and a quarter", "3 and half pound". */
    private static NumberSaid andPart(List<Token> tokens, NumberSaid whole) {
        double part = partAfter(tokens, whole.end());
        if (part > 0) {
            return new NumberSaid(whole.start(), whole.end() + 3, whole.value() + part, false);
        }
        int unit = whole.end() + 2;
        boolean halfOfAUnit = unit < tokens.size()
                && tokens.get(whole.end()).is("and")
                && tokens.get(whole.end() + 1).is("half")
                && OF_UNITS.matcher(tokens.get(unit).word()).matches();
        return halfOfAUnit ? new NumberSaid(whole.start(), unit, whole.value() + 0.5, false) : whole;
    }

    /** The part told by "and a half" or "and a quarter" at a token, 0 when it is not told there. */
    static double partAfter(List<Token> tokens, int at) {
        boolean and = at + 2 < tokens.size()
                && tokens.get(at).is("and")
                && tokens.get(at + 1).is("a");
        return !and
                ? 0
                : tokens.get(at + 2).is("half") ? 0.5 : tokens.get(at + 2).is("quarter") ? 0.25 : 0;
    }

    /** "twenty", "twenty five", "a hundred and twenty". */
    private NumberSaid inWords(List<Token> tokens, int at) {
        Integer first = words.get(tokens.get(at).word());
        if (first == null) {
            return null;
        }
        int end = at + 1;
        int value = first;
        if (first >= 20 && end < tokens.size()) {
            Integer unit = words.get(tokens.get(end).word());
            if (unit != null && unit < 10) {
                value += unit;
                end++;
            }
        }
        return dozens(tokens, new NumberSaid(at, end, value, false));
    }

    private NumberSaid range(NumberSaid low, List<Token> tokens, Map<Integer, PhraseBook.Found<Double>> told) {
        if (low == null || low.ordinal() || low.end() + 1 >= tokens.size()) {
            return low;
        }
        if (!BETWEEN.contains(tokens.get(low.end()).word())) {
            return low;
        }
        NumberSaid high = single(tokens, low.end() + 1, told);
        boolean rising = high != null && !high.ordinal() && high.value() > low.value();
        return rising ? new NumberSaid(low.start(), high.end(), low.value(), false) : low;
    }
}
