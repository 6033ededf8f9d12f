package bothy.reading.grammar;

import bothy.reading.said.CropSaid;
import bothy.reading.text.Token;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Counted names in a row of which a crop said before them, or one that is known, tells what they are: "tomatoes: 6 Stupice, 6
 * Brandywine", "12 toms (6 black russian, 6 roma)", "4 Stupice and 4 Brandywine". Each is a lot of its own; the crop at the head is then
 * only their name.
 */
final class VarietyLists {
    private static final int MOST_WORDS = 3;
    /** So many words may stand between the crop and its list: "tomatoes sown today:". */
    private static final int HEAD_REACH = 4;

    /** So many words may stand between a count and the list that it is the sum of. */
    private static final int SUM_REACH = 8;

    private static final Set<String> JOINTS = Set.of(",", "and", "&", "+", "plus");
    private static final Set<String> OPENING = Set.of("(", ":", "-");

    private final List<Token> tokens;
    private final String message;
    private final Predicate<String> known;

    /** One counted name. */
    private record Item(int number, int start, int end, CropSaid crop) {}

    /** @param known whether a word is an ordinary one or part of a crop's name */
    VarietyLists(List<Token> tokens, String message, Predicate<String> known) {
        this.tokens = tokens;
        this.message = message;
        this.known = known;
    }

    /** The crops with those that a list names besides, in order. */
    List<CropSaid> with(List<CropSaid> said) {
        List<CropSaid> all = new ArrayList<>(said);
        int at = 0;
        while (at < tokens.size()) {
            List<Item> items = items(said, at);
            if (items.isEmpty()) {
                at++;
                continue;
            }
            add(items, all);
            at = items.get(items.size() - 1).end();
        }
        all.sort(Comparator.comparingInt(CropSaid::start));
        return all;
    }

    private void add(List<Item> items, List<CropSaid> all) {
        CropSaid head = head(items, all);
        CropSaid kin = head != null
                ? head
                : items.stream()
                        .map(Item::crop)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
        boolean alike = kin != null
                && items.stream()
                        .allMatch(item ->
                                item.crop() == null || item.crop().crops().equals(kin.crops()));
        if (!alike || items.size() < 2) {
            return;
        }
        for (Item item : items) {
            if (item.crop() == null) {
                all.removeIf(other -> item.start() < other.end() && other.start() < item.end());
                all.add(new CropSaid(
                        item.start(), item.end(), kin.crops(), true, written(item.start(), item.end()), true, false));
            }
        }
        if (head != null && total(head, items)) {
            all.replaceAll(crop -> crop == head ? crop.asThing() : crop);
        }
    }

    /** The crop before a bracket or a colon in front of the list, {@code null} for none. */
    private CropSaid head(List<Item> items, List<CropSaid> all) {
        int opening = items.get(0).number() - 1;
        if (opening < 1 || !OPENING.contains(tokens.get(opening).word())) {
            return summed(items, all);
        }
        return all.stream()
                .filter(crop -> crop.variety() == null
                        && crop.end() <= opening
                        && opening - crop.end() <= HEAD_REACH
                        && tokens.subList(crop.end(), opening).stream().noneMatch(Token::mark))
                .reduce((first, second) -> second)
                .orElse(null);
    }

    /** "Planted 12 tomato seeds in cups, 6 Roma and 6 San Marzano": a count before that is the sum of the list. */
    private CropSaid summed(List<Item> items, List<CropSaid> all) {
        int list = items.get(0).number();
        return all.stream()
                .filter(crop -> crop.variety() == null
                        && crop.start() > 0
                        && crop.end() <= list
                        && list - crop.end() <= SUM_REACH
                        && tokens.get(crop.start() - 1).sort() == Token.Sort.NUMBER
                        && tokens.subList(crop.end(), list).stream().noneMatch(Token::endsSentence)
                        && total(crop, items))
                .reduce((first, second) -> second)
                .orElse(null);
    }

    /** Whether the head counts nothing of its own: "12 toms (6 …, 6 …)". */
    private boolean total(CropSaid head, List<Item> items) {
        Token before = head.start() == 0 ? null : tokens.get(head.start() - 1);
        double sum = items.stream()
                .mapToDouble(item -> tokens.get(item.number()).number())
                .sum();
        return before == null || before.sort() != Token.Sort.NUMBER || before.number() == sum;
    }

    private List<Item> items(List<CropSaid> said, int from) {
        List<Item> items = new ArrayList<>();
        boolean bracket = from > 0 && tokens.get(from - 1).is("(");
        int at = from;
        while (at < tokens.size()) {
            Item item = item(said, at, bracket);
            if (item == null) {
                break;
            }
            items.add(item);
            at = item.end();
            int joint = at;
            while (at < tokens.size() && JOINTS.contains(tokens.get(at).word()) && at - joint < 2) {
                at++;
            }
            if (at == joint) {
                break;
            }
        }
        return items;
    }

    /** A count and a name behind it, {@code null} where none stands. */
    private Item item(List<CropSaid> said, int number, boolean bracket) {
        Token count = tokens.get(number);
        boolean whole = count.sort() == Token.Sort.NUMBER && count.number() >= 1 && count.number() % 1 == 0;
        int start = ofThe(number + 1);
        if (!whole || start >= tokens.size()) {
            return null;
        }
        CropSaid crop = said.stream()
                .filter(one -> one.start() == start && !one.thing())
                .findFirst()
                .orElse(null);
        if (crop != null && (crop.variety() != null || closes(crop.end()))) {
            return crop.variety() == null ? null : new Item(number, start, crop.end(), crop);
        }
        int end = start;
        while (end < tokens.size()
                && tokens.get(end).aWord()
                && !JOINTS.contains(tokens.get(end).word())) {
            boolean name = bracket
                    || tokens.get(end).capital() && tokens.get(end).word().length() > 1;
            if (!name || end - start == MOST_WORDS) {
                break;
            }
            end++;
        }
        boolean strange = tokens.subList(start, end).stream().anyMatch(token -> !known.test(token.word()))
                || bracket && end - start == 2; // "Black russian".
        boolean ofACrop = said.stream().anyMatch(one -> one.variety() == null && startsIn(one, start, number));
        return end == start || !strange || ofACrop || bracket && !closes(end)
                ? null
                : new Item(number, start, end, null);
    }

    /** "6 of the cherry ones". */
    private int ofThe(int at) {
        boolean of = at + 2 < tokens.size()
                && tokens.get(at).is("of")
                && (tokens.get(at + 1).is("the") || tokens.get(at + 1).is("my"));
        return of ? at + 2 : at;
    }

    private static boolean ofTheCalendar(Token token) {
        return token.weekday()
                || Set.of(
                                "mon",
                                "tue",
                                "tues",
                                "wed",
                                "weds",
                                "thu",
                                "thur",
                                "thurs",
                                "fri",
                                "sat",
                                "sun",
                                "today",
                                "yesterday")
                        .contains(token.word())
                || Arrays.stream(Month.values()).anyMatch(month -> month.name().equalsIgnoreCase(token.word()));
    }

    private static boolean startsIn(CropSaid crop, int from, int number) {
        return crop.start() >= from && crop.start() < from + MOST_WORDS && crop.start() > number;
    }

    private boolean closes(int at) {
        return at >= tokens.size()
                || tokens.get(at).mark()
                || JOINTS.contains(tokens.get(at).word());
    }

    private String written(int start, int end) {
        return message.substring(tokens.get(start).from(), tokens.get(end - 1).to());
    }
}
