package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import bothy.reading.said.Quantity;
import bothy.reading.text.Token;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The count, amount, place and container that a clause gives for each of its crops. */
public final class Particulars {
    private static final Set<String> ENDS_NAME = Set.of(
            "in", "on", "at", "into", "with", "from", "for", "and", "but", ",", "(", ")", "-", ":", "to", "by", "per",
            "the", "is", "are", "were", "was", "after", "before", "then", "or", "/");
    /** "A flower on a cucumber" counts no cucumbers. */
    private static final Set<String> GROWTH = Set.of("flowering", "fruit-set", "note");

    private static final Set<String> EXCEPT = Set.of("but", "bar", "except", "save", "barring");
    private final Set<String> notCounts;
    private final Set<String> counted;
    private final Set<String> mass;

    public Particulars(bothy.almanac.Words words) {
        notCounts = new HashSet<>(words.list("units", "/not-counts"));
        counted = new HashSet<>(words.list("units", "/counted"));
        mass = new HashSet<>(words.list("crops", "/mass"));
    }

    public Set<String> vocabulary() {
        Set<String> all = new HashSet<>(notCounts);
        all.addAll(counted);
        return all;
    }

    /** The count told for a crop, {@code null} when none is. */
    Integer count(Passage passage, Clause clause, CropSaid crop) {
        List<NumberSaid> numbers = passage.counts(clause.from(), clause.to());
        if (crop.end() <= clause.from() && loose(passage, clause, numbers) != null) {
            return loose(passage, clause, numbers);
        }
        Integer each = Listed.ofEach(passage, clause, numbers);
        if (each != null) {
            return each;
        }
        Integer before = before(passage, numbers, crop, clause.action().action());
        if (before != null) {
            return before;
        }
        Integer listed = Listed.count(clause, numbers, crop);
        if (listed != null) {
            return listed;
        }
        Integer after = after(passage, numbers, crop);
        return after != null || clause.crops().size() > 1 ? after : loose(passage, clause, numbers);
    }

    /** "6 little tomato plants", "4 of the toms", "2 trays of 12 lettuces". */
    private Integer before(Passage passage, List<NumberSaid> numbers, CropSaid crop, String action) {
        if (notCounts.contains(passage.word(crop.end())) && !counted.contains(passage.word(crop.end()))) {
            return null; // "Two radish sowings".
        }
        for (int at = crop.start() - 1, words = 0; at >= 0 && words < 6; at--, words++) {
            int here = at;
            NumberSaid number = numbers.stream()
                    .filter(told -> told.end() == here + 1)
                    .findFirst()
                    .orElse(null);
            if (number != null && EXCEPT.contains(passage.word(number.start() - 1))) {
                return null; // "All but 3 of the onions".
            }
            if (number != null) {
                return ofRows(passage, number) ? null : named(passage, numbers, number);
            }
            if (!GROWTH.contains(action) && one(passage, at, crop, action.equals("harvested"))) {
                return 1;
            }
            boolean of = passage.word(at).equals("of")
                    || (passage.word(at).equals("the") && Set.of("of", "all").contains(passage.word(at - 1)))
                    || Set.of("my", "our", "these", "those").contains(passage.word(at));
            if (!of && ENDS_NAME.contains(passage.word(at))
                    || passage.cropAt(at).isPresent()
                    || passage.tokens().get(at).endsSentence()) {
                return null;
            }
        }
        return null;
    }

    /** "2 rows of carrots and one of beetroot": the one is a row. */
    private boolean ofRows(Passage passage, NumberSaid number) {
        boolean oneOf = passage.word(number.end()).equals("of") && number.value() < 10;
        return oneOf
                && passage.tokens().subList(0, number.start()).stream()
                        .anyMatch(token -> notCounts.contains(token.word()))
                && Set.of("and", ",", "plus").contains(passage.word(number.start() - 1));
    }

    /** "A cucumber", "our first ripe tomato". */
    private boolean one(Passage passage, int at, CropSaid crop, boolean picked) {
        for (int between = at + 1; between < crop.start(); between++) {
            if (passage.word(between).equals("of")) {
                return false; // "The first harvest of spinach".
            }
        }
        boolean first = Set.of("first", "1st").contains(passage.word(at));
        boolean article =
                first ? picked : Set.of("a", "an", "another", "single").contains(passage.word(at));
        boolean several = counted.contains(passage.word(crop.end()))
                && passage.word(crop.end()).endsWith("s");
        int place = at;
        boolean measured = passage.quantities().stream().anyMatch(quantity -> quantity.covers(place));
        return article
                && !measured
                && !(passage.word(at).equals("single") && passage.word(at - 1).equals("every"))
                && !several
                && !crop.plural()
                && !mass.contains(passage.word(crop.end() - 1))
                && !mass.contains(crop.crop())
                && crop.start() - at <= 3
                && !notCounts.contains(passage.word(at + 1))
                && !passage.word(at + 1).equals("sowing");
    }

    private Integer named(Passage passage, List<NumberSaid> numbers, NumberSaid number) {
        String next = passage.word(number.end());
        NumberSaid more = numbers.stream()
                .filter(other -> other.end() < number.start() && number.start() - other.end() <= 3)
                .reduce((first, second) -> second)
                .orElse(null);
        if (more != null) {
            String between = passage.word(number.start() - 1);
            if (between.equals("of")
                    && !passage.word(number.start() - 2).equals("out")
                    && more.end() + 1 < number.start()) {
                return whole(more.value() * number.value());
            }
            if (Set.of("of", "the", "my", "our").contains(between) || between.equals("/")) {
                return whole(more.value());
            }
            if (between.equals("x") && number.start() - more.end() == 1) {
                return whole(more.value() * number.value());
            }
        }
        return notCounts.contains(next) ? null : whole(number.value());
    }

    /** "tomatoes x 6", "toms (6)", "beans - 12", "lettuce, 6 of them", "lettuce 12". */
    private Integer after(Passage passage, List<NumberSaid> numbers, CropSaid crop) {
        int at = crop.end();
        while (Set.of("x", "(", ")", "-", ":", ",", "=", "plants", "seeds", "seedlings", "cloves", "sets", "about")
                .contains(passage.word(at))) {
            at++;
        }
        int start = at;
        NumberSaid number = numbers.stream()
                .filter(told -> told.start() == start)
                .findFirst()
                .orElse(null);
        if (number == null
                || passage.crops().stream()
                        .anyMatch(next -> next.start() > number.start()
                                && next.start() - number.end() <= 2
                                && !Set.of(",", "and", "plus").contains(passage.word(number.end())))) {
            return null;
        }
        String next = passage.word(number.end());
        boolean closes = number.end() >= passage.size()
                || passage.tokens().get(number.end()).mark()
                || counted.contains(next)
                || Set.of(
                                "of",
                                "in",
                                "and",
                                "up",
                                "so",
                                "out",
                                "are",
                                "have",
                                "today",
                                "on",
                                "into",
                                "to",
                                "this",
                                "altogether",
                                "total",
                                "only",
                                "still")
                        .contains(next)
                || passage.actions().stream().anyMatch(action -> action.words().get(number.end()));
        return closes && !notCounts.contains(next) ? whole(number.value()) : null;
    }

    /** A number by itself when the clause is about one crop: "potted on 6", "4 up so far", "6 seeds to a pot". */
    Integer loose(Passage passage, Clause clause, List<NumberSaid> numbers) {
        boolean aids = Set.of("supported", "protected", "watered", "fed")
                .contains(clause.action().action());
        for (NumberSaid number : numbers) {
            String next = passage.word(number.end());
            String last = passage.word(number.start() - 1);
            if (aids
                    && !Set.of("plants", "of", "pots", "more").contains(next)
                    && !clause.action().words().get(number.start() - 1)) {
                continue; // "A wigwam of 8 canes" counts canes.
            }
            boolean pronoun = passage.word(number.start()).equals("one")
                    && Set.of(
                                    "the", "this", "that", "which", "other", "no", "each", "every", "any", "last",
                                    "first", "second", "third", "next", "another")
                            .contains(last);
            boolean unit = notCounts.contains(next)
                    || Set.of("per", "each", "every", "by", "to").contains(next)
                    || Set.of("each", "per", "a").contains(passage.word(number.end() + 1)) && counted.contains(next)
                    || Set.of("by", "bar", "but", "except", "off", "from").contains(last)
                    || Set.of("at", "be", "hit", "reached", "until", "till", "by", "was", "is")
                            .contains(last)
                    || last.equals("week")
                    || last.equals("day");
            if (!pronoun && !unit && standsAlone(passage, clause, number)) {
                return whole(number.value() * rowsOf(passage, numbers, number));
            }
        }
        return null;
    }

    /** "In 2 rows of 15" are thirty. */
    private double rowsOf(Passage passage, List<NumberSaid> numbers, NumberSaid number) {
        boolean of =
                passage.word(number.start() - 1).equals("of") && notCounts.contains(passage.word(number.start() - 2));
        return !of
                ? 1
                : numbers.stream()
                        .filter(rows -> rows.end() == number.start() - 2)
                        .mapToDouble(NumberSaid::value)
                        .findFirst()
                        .orElse(1);
    }

    private boolean standsAlone(Passage passage, Clause clause, NumberSaid number) {
        String next = passage.word(number.end());
        boolean atVerb = clause.action().words().get(number.end())
                || number.start() > 0 && clause.action().words().get(number.start() - 1)
                || clause.action().covers(number.start());
        boolean bracketed = passage.word(number.start() - 1).equals("(") && next.equals(")");
        String last = passage.word(number.start() - 1);
        boolean between = last.equals(",")
                && Set.of(",", "survived", "made", "took", "left", "lived").contains(next);
        return atVerb
                || bracketed
                || between
                || last.equals("all") && !notCounts.contains(next)
                || counted.contains(next)
                || Set.of("of", "out", "more", "so", "are", "have", "up", "in", "into", "on")
                        .contains(next)
                || number.end() >= clause.to();
    }

    private static Integer whole(double value) {
        return Math.abs(value) > 2_000_000_000 ? Integer.valueOf(2_000_000_000) : Integer.valueOf((int) value);
    }

    /** An event with the amount that is told for its crop. */
    Event withAmount(Event event, Passage passage, Clause clause, CropSaid crop) {
        Quantity amount = amount(event.what(), passage, clause, crop);
        if (amount == null) {
            return event;
        }
        if (Set.of(What.WATERED, What.FED).contains(event.what()) && each(passage, amount)) {
            return event.withAmount(amount.value(), amount.unit()).withDetail("each");
        }
        if (event.what() == What.RAIN && amount.unit().equals("m")) {
            return event.withAmount(Math.round(amount.value() * 100_000) / 100.0, "mm");
        }
        return event.withAmount(amount.value(), amount.unit());
    }

    /** "2 litres each", "a can per plant", "each got a litre": what one plant got. */
    private static boolean each(Passage passage, Quantity amount) {
        int after = passage.word(amount.end()).equals("of") ? amount.end() + 2 : amount.end();
        boolean behind = Set.of("each", "apiece").contains(passage.word(after))
                || Set.of("per", "a", "to", "for", "every").contains(passage.word(after))
                        && Set.of("plant", "pot", "each", "every", "one", "bag", "growbag", "tub", "vine", "bush")
                                .contains(passage.word(after + 1));
        boolean before = false;
        for (int at = Math.max(0, amount.start() - 4); at < amount.start(); at++) {
            before |= Set.of("each", "every").contains(passage.word(at));
        }
        return behind || before;
    }

    private static Quantity amount(What what, Passage passage, Clause clause, CropSaid crop) {
        List<Quantity> fitting = Passage.within(passage.quantities(), clause.from(), clause.to()).stream()
                .filter(quantity -> fits(what, quantity))
                .toList();
        if (fitting.isEmpty()) {
            return null;
        }
        if (crop == null || clause.crops().size() < 2) {
            return fitting.get(0);
        }
        Quantity before = fitting.stream()
                .filter(quantity -> quantity.end() <= crop.start())
                .filter(quantity -> clause.crops().stream()
                        .noneMatch(other -> other.start() >= quantity.end() && other.end() <= crop.start()))
                .reduce((first, second) -> second)
                .orElse(null);
        boolean forAll = before == null && fitting.size() == 1 && what == What.WATERED;
        return forAll ? fitting.get(0) : before;
    }

    private static boolean fits(What what, Quantity quantity) {
        return switch (what) {
            case HARVESTED, STORED, CURED -> quantity.unit().equals("kg");
            case WATERED, FED -> quantity.unit().equals("L");
            case RAIN -> quantity.unit().equals("mm") || quantity.unit().equals("m");
            case TEMPERATURE, FROST -> quantity.degrees();
            default -> false;
        };
    }

    /** An event with the place and container that are told for its crop. */
    static Event withPlace(Event event, Passage passage, Clause clause, CropSaid crop) {
        String place = name(passage, clause, crop, false);
        String container = name(passage, clause, crop, true);
        return event.withPlace(place, container);
    }

    private static String name(Passage passage, Clause clause, CropSaid crop, boolean container) {
        List<PlaceSaid> places = Passage.within(passage.places(), clause.from(), clause.to()).stream()
                .filter(place -> place.container() == container)
                .filter(place -> container ? leadsIn(passage, place) : true)
                .toList();
        if (places.isEmpty()) {
            return null;
        }
        if (crop == null || places.size() == 1) {
            return places.get(0).name();
        }
        return places.stream()
                .filter(place -> place.start() >= crop.end())
                .findFirst()
                .orElse(places.get(places.size() - 1))
                .name();
    }

    /** "in modules", "12 modules of peas", "into 9 cm pots". */
    private static boolean leadsIn(Passage passage, PlaceSaid place) {
        for (int at = place.start() - 1; at >= Math.max(0, place.start() - 5); at--) {
            if (Set.of("in", "into", "to", "on", "of", "per").contains(passage.word(at))
                    || passage.tokens().get(at).sort() == Token.Sort.NUMBER) {
                return true;
            }
        }
        return passage.word(place.end()).equals("of") || place.end() == passage.size();
    }
}
