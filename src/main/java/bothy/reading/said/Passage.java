package bothy.reading.said;

import bothy.garden.Situation;
import bothy.reading.text.Phrase;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A message with all that was found in it.
 *
 * @param message as written
 * @param situation what is known besides
 * @param seeds ages of seed, whose words are no longer among the tokens
 */
public record Passage(
        String message,
        Situation situation,
        List<Token> tokens,
        List<NumberSaid> numbers,
        List<Quantity> quantities,
        List<DaySaid> days,
        List<CropSaid> crops,
        List<PlaceSaid> places,
        List<ActionSaid> actions,
        List<SeedSaid> seeds)
        implements Phrase.Slots {
    private static final Set<String> NEARLY = Set.of("a", "about", "around", "maybe", "only", "just", "nearly", "over");

    /** What stands behind a length of something else than rain. */
    private static final Set<String> NO_RAIN = Set.of(
            "apart",
            "row",
            "rows",
            "bed",
            "beds",
            "drill",
            "stretch",
            "length",
            "tall",
            "high",
            "long",
            "wide",
            "spacing",
            "pots",
            "pot",
            "diameter");

    /** What stands before such a length. */
    private static final Set<String> SIZED = Set.of("to", "every", "grown", "grew", "are", "thinned", "spaced");

    @Override
    public int end(String slot, int at) {
        return switch (slot) {
            case "crop" -> ending(crops, at);
            case "n" -> ending(numbers, at);
            case "minus" ->
                numbers.stream()
                        .filter(number -> number.start() == at && number.value() < 0)
                        .mapToInt(NumberSaid::end)
                        .findFirst()
                        .orElse(-1);
            case "hot" -> new BareDegrees(this).hot(at);
            case "cold" -> new BareDegrees(this).cold(at);
            case "night" -> new BareDegrees(this).night(at);
            case "date" -> ending(days, at);
            case "place" -> ending(places, at);
            case "temp" ->
                quantities.stream()
                        .filter(quantity -> quantity.start() == at && quantity.degrees())
                        .mapToInt(Quantity::end)
                        .findFirst()
                        .orElse(-1);
            case "bed" ->
                places.stream()
                        .filter(place -> place.start() == at && !place.container() && grows(place.name()))
                        .mapToInt(PlaceSaid::end)
                        .findFirst()
                        .orElse(-1);
            case "volume" -> ending(quantities, at, "L");
            case "depth" -> rained(at, Math.max(ending(quantities, at, "mm"), ending(quantities, at, "m")));
            case "amount" -> ending(quantities, at);
            case "year" -> year(tokens.get(at)) ? at + 1 : -1;
            case "word" -> tokens.get(at).aWord() ? at + 1 : -1;
            default -> -1;
        };
    }

    /** Whether "bed 2" begins here, and not the bed of a crop. */
    public boolean numberedPlace(int at) {
        return places.stream().anyMatch(place -> place.start() == at && place.end() > at + 1);
    }

    private static int ending(List<Quantity> quantities, int at, String unit) {
        return quantities.stream()
                .filter(quantity -> quantity.start() == at && quantity.unit().equals(unit))
                .mapToInt(Quantity::end)
                .findFirst()
                .orElse(-1);
    }

    /** "35 cm apart" is no depth of rain, nor "thinned to 4 inches". */
    private int rained(int at, int end) {
        boolean ofASize = at > 0
                && SIZED.contains(word(at - 1))
                && !(at > 1 && word(at - 2).equals("up"));
        return end > 0 && (ofASize || NO_RAIN.contains(word(end))) ? -1 : end;
    }

    /** A place where plants end up: "bed 4", "the allotment". */
    private static boolean grows(String place) {
        return place.matches(".*(bed|allotment|garden|field)( \\d+)?");
    }

    private static int ending(List<? extends Span> spans, int at) {
        for (Span span : spans) {
            if (span.start() == at) {
                return span.end();
            }
        }
        return -1;
    }

    /** Whether a token names a year. */
    public static boolean year(Token token) {
        return token.number() >= 1990 && token.number() < 2100 && token.word().length() == 4;
    }

    /** The same with other doings. */
    public Passage with(List<ActionSaid> found) {
        return new Passage(message, situation, tokens, numbers, quantities, days, crops, places, found, seeds);
    }

    /** The same without the days told from one token on to another, which are those of something else. */
    public Passage withoutDays(int from, int to) {
        List<DaySaid> kept = days.stream()
                .filter(day -> day.start() < from || day.end() > to)
                .toList();
        return new Passage(message, situation, tokens, numbers, quantities, kept, crops, places, actions, seeds);
    }

    /** The same with some crops taken as mere things. */
    public Passage withThings(Predicate<CropSaid> things) {
        List<CropSaid> changed = crops.stream()
                .map(crop -> things.test(crop) ? crop.asThing() : crop)
                .toList();
        return new Passage(message, situation, tokens, numbers, quantities, days, changed, places, actions, seeds);
    }

    /** The same with other words at the same places. */
    public Passage withTokens(List<Token> others) {
        return new Passage(message, situation, others, numbers, quantities, days, crops, places, actions, seeds);
    }

    public int size() {
        return tokens.size();
    }

    /** All its words, each once. */
    public Set<String> words() {
        return tokens.stream().map(Token::word).collect(Collectors.toSet());
    }

    /** The word at a place, empty outside the message. */
    public String word(int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }

    /** Those of a kind that lie within a stretch. */
    public static <T extends Span> List<T> within(List<T> spans, int from, int to) {
        return spans.stream()
                .filter(span -> span.start() >= from && span.end() <= to)
                .toList();
    }

    /** The sentence right before another, {@code null} before the first. */
    public int[] sentenceBefore(int[] sentence) {
        return sentences().stream()
                .filter(other -> other[0] < sentence[0])
                .reduce((first, second) -> second)
                .orElse(null);
    }

    /** The sentences as stretches of tokens, their closing mark not included. */
    public List<int[]> sentences() {
        List<int[]> sentences = new ArrayList<>();
        int start = 0;
        for (int at = 0; at <= tokens.size(); at++) {
            if (at == tokens.size() || tokens.get(at).endsSentence() && !onlyWeightFollows(at + 1)) {
                if (at > start) {
                    sentences.add(new int[] {start, at});
                }
                start = at + 1;
            }
        }
        return sentences;
    }

    /** Whether a number stands alone, or with no more than "of them" or "in all" behind it. */
    private boolean ofThem(int at) {
        boolean them = word(at).equals("of") && Set.of("them", "em").contains(word(at + 1));
        boolean all = word(at).equals("in") && Set.of("all", "total").contains(word(at + 1));
        int end = them || all ? at + 2 : Set.of("pieces", "pcs").contains(word(at)) ? at + 1 : at;
        return end >= tokens.size() || tokens.get(end).endsSentence();
    }

    /** "First courgettes! 2 kg", "it rained! A quarter inch.", "first cucumbers! 3 of them": what follows the mark belongs before it. */
    private boolean onlyWeightFollows(int from) {
        return numbers.stream().anyMatch(number -> number.start() == from && ofThem(number.end()))
                || quantities.stream()
                        .filter(quantity -> (quantity.start() == from
                                        || quantity.start() == from + 1 && NEARLY.contains(word(from)))
                                && Set.of("kg", "mm", "m").contains(quantity.unit()))
                        .anyMatch(quantity -> quantity.end() == tokens.size()
                                || word(quantity.end()).equals("of")
                                        && word(quantity.end() + 1).equals("it")
                                || tokens.get(quantity.end()).endsSentence()
                                || days.stream().anyMatch(day -> day.start() == quantity.end()));
    }

    /** Whole numbers in a stretch that count something: no part of a day, an amount or a place. */
    public List<NumberSaid> counts(int from, int to) {
        Predicate<NumberSaid> taken = number -> quantities.stream().anyMatch(number::overlaps)
                || days.stream().anyMatch(number::overlaps)
                || places.stream().anyMatch(place -> place.overlaps(number))
                || actions.stream()
                        .anyMatch(action -> action.action().equals("temperature") && action.overlaps(number));
        return within(numbers, from, to).stream()
                .filter(number -> !number.ordinal() && number.whole())
                .filter(number ->
                        !orTwo(number) && !notOne(number) && !labels(number) && !meals(number) && !longAgo(number))
                .filter(number -> !ofLengths(number) && !oneOfTwo(number))
                .filter(taken.negate())
                .toList();
    }

    /** "Cut some lettuce, enough for 2 sandwiches". */
    private boolean meals(NumberSaid number) {
        return word(number.start() - 1).equals("for")
                && Set.of("enough", "plenty", "sufficient").contains(word(number.start() - 2));
    }

    /** "In 1976 we had beans until November": a year of the last century, as a memory tells it, and no count. */
    private boolean longAgo(NumberSaid number) {
        return number.value() > 1900
                && number.value() < 2000
                && Set.of("in", "since", "summer", "of").contains(word(number.start() - 1));
    }

    /** "Not come up, not a one": none. */
    private boolean notOne(NumberSaid number) {
        int before = word(number.start() - 1).equals("a") ? number.start() - 2 : number.start() - 1;
        return word(number.start()).equals("one") && word(before).equals("not");
    }

    /** "Peas, three 6 m rows": rows. */
    private boolean ofLengths(NumberSaid number) {
        return quantities.stream()
                .anyMatch(length -> length.start() == number.end()
                        && length.unit().equals("m")
                        && Set.of("row", "rows", "drill", "drills", "bed", "beds", "trench", "trenches", "strips")
                                .contains(word(length.end())));
    }

    /** "Rocket in one and lettuce in the other": vessels. */
    private boolean oneOfTwo(NumberSaid number) {
        boolean one = word(number.start()).equals("one")
                && Set.of("in", "into", "on").contains(word(number.start() - 1))
                && Set.of("and", ",", "then").contains(word(number.end()));
        for (int at = number.end(); one && at < size() && !tokens.get(at).endsSentence(); at++) {
            if (Set.of("in", "into", "on").contains(word(at))
                    && Set.of("the", "another").contains(word(at + 1))
                    && (word(at + 1).equals("another")
                            || Set.of("other", "second").contains(word(at + 2)))) {
                return true;
            }
        }
        return false;
    }

    /** "An hour or two" counts nothing. */
    private boolean orTwo(NumberSaid number) {
        return word(number.start() - 1).equals("or")
                && Set.of("hour", "day", "week", "row", "line", "minute", "can", "litre", "tray", "bag", "night")
                        .contains(word(number.start() - 2));
    }

    /** "Parsnips sown, row 3", "the sister on ward 7": which row, no count. */
    private boolean labels(NumberSaid number) {
        return Set.of(
                                "number",
                                "ward",
                                "room",
                                "flat",
                                "apartment",
                                "route",
                                "platform",
                                "class",
                                "grade",
                                "page",
                                "channel",
                                "episode")
                        .contains(word(number.start() - 1))
                || Set.of("row", "bed", "plot", "block", "drill", "strip", "rack", "shelf", "bay", "section")
                                .contains(word(number.start() - 1))
                        && Set.of(
                                        "", ",", ".", ":", ";", "-", "(", "in", "into", "on", "to", "and", "for",
                                        "from", "down")
                                .contains(word(number.start() - 2))
                        && (number.end() >= size()
                                || tokens.get(number.end()).mark()
                                || days.stream().anyMatch(day -> day.start() == number.end()));
    }

    public Optional<CropSaid> cropAt(int token) {
        return crops.stream().filter(crop -> crop.covers(token)).findFirst();
    }
}
