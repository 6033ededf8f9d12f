package bothy.reading.told;

import bothy.almanac.Words;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** How many a clause tells of each of its crops: the number before its name, after it, in a list, or by itself. */
final class Counts {
    private static final Set<String> ENDS_NAME = Set.of(
            "in", "on", "at", "into", "with", "from", "for", "and", "but", ",", "(", ")", "-", ":", "to", "by", "per",
            "the", "is", "are", "were", "was", "after", "before", "then", "or", "/");
    /** "A flower on a cucumber" counts no cucumbers. */
    private static final Set<String> GROWTH = Set.of("flowering", "fruit-set", "note");

    private static final Set<String> EXCEPT = Set.of("but", "bar", "except", "save", "barring", "not");
    private final Set<String> notCounts;
    private final Set<String> counted;
    private final Set<String> mass;
    private final Set<String> describing;

    Counts(Words words) {
        notCounts = new HashSet<>(words.list("units", "/not-counts"));
        counted = new HashSet<>(words.list("units", "/counted"));
        mass = new HashSet<>(words.list("crops", "/mass"));
        describing = new HashSet<>(words.list("units", "/describing"));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(notCounts);
        all.addAll(counted);
        return all;
    }

    /** The count told for a crop, {@code null} when none is. */
    Integer of(Passage passage, Clause clause, CropSaid crop) {
        List<NumberSaid> numbers = passage.counts(clause.from(), clause.to());
        Integer summed = clause.crops().size() > 1 ? null : summed(passage, numbers);
        if (summed != null) {
            return summed;
        }
        Integer borne = borne(clause, crop, numbers);
        if (borne != null) {
            return borne;
        }
        if (crop.end() <= clause.from() && loose(passage, clause, numbers) != null) {
            return loose(passage, clause, numbers);
        }
        Integer each = Listed.ofEach(passage, clause, numbers);
        if (each != null) {
            return each;
        }
        Integer trays = Listed.perTray(passage, numbers);
        if (trays != null && clause.crops().size() == 1) {
            return trays;
        }
        Integer before = before(passage, numbers, crop, clause.action().action());
        if (before != null) {
            return before;
        }
        Integer listed = Listed.count(passage, clause, numbers, crop);
        if (listed != null) {
            return listed;
        }
        Integer after = after(passage, numbers, crop);
        return after != null || clause.crops().size() > 1 ? after : loose(passage, clause, numbers);
    }

    /** "2 at each cane, 20 in all", "potting on, got 12 done": the number that sums up. */
    private static Integer summed(Passage passage, List<NumberSaid> numbers) {
        return numbers.stream()
                .filter(number -> {
                    String next = passage.word(number.end());
                    String behind = passage.word(number.end() + 1);
                    String last = passage.word(number.start() - 1);
                    return next.equals("in") && Set.of("all", "total").contains(behind)
                            || next.equals("altogether")
                            || next.equals("all") && behind.equals("told")
                            || next.equals("done")
                                    && Set.of("got", "have", "did", "managed", "about")
                                            .contains(last);
                })
                .map(number -> whole(number.value()))
                .findFirst()
                .orElse(null);
    }

    /** "The 3 courgette plants gave us another 5": not the plants but what they bore. */
    private static Integer borne(Clause clause, CropSaid crop, List<NumberSaid> numbers) {
        return !clause.action().action().equals("harvested")
                ? null
                : numbers.stream()
                        .filter(number -> number.start() >= crop.end()
                                && clause.action().words().get(number.start())
                                && numbers.stream().anyMatch(other -> other.end() <= crop.start()))
                        .map(number -> whole(number.value()))
                        .findFirst()
                        .orElse(null);
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
        return notCounts.contains(next) || ofLooks(passage, number.end()) ? null : whole(number.value());
    }

    /** "Two more rows of carrots", "in 5 big grow bags": what is counted stands behind how it looks. */
    private boolean ofLooks(Passage passage, int from) {
        int at = from;
        while (describing.contains(passage.word(at))
                || Set.of("more", "extra", "long", "short", "black", "plastic", "deep", "old")
                        .contains(passage.word(at))) {
            at++;
        }
        boolean bags = Set.of("grow", "gro", "growing").contains(passage.word(at))
                && passage.word(at + 1).startsWith("bag");
        return at > from && notCounts.contains(passage.word(at)) || bags;
    }

    /** "Broad beans sown (20)": the bracket after the verb counts the crop before it. */
    private static boolean verbed(Passage passage, int at) {
        boolean past = passage.actions().stream()
                .anyMatch(action -> action.form() == bothy.reading.text.Conjugation.Form.PAST
                        && action.words().get(at));
        return past && (passage.word(at + 1).equals("(") || passage.word(at + 2).equals("("));
    }

    /** "Planted out the leeks yesterday, forty of them": over the day to the number. */
    private static int ofThem(Passage passage, int crop) {
        int at = passage.word(crop).equals("on") ? crop + 1 : crop;
        int after = passage.days().stream()
                .filter(day -> day.start() == at)
                .mapToInt(day -> day.end())
                .findFirst()
                .orElse(at);
        int number = passage.word(after).equals(",") ? after + 1 : after;
        int end = passage.end("n", number);
        boolean them = passage.word(end).equals("of") && passage.word(end + 1).equals("them")
                || number > after
                        && Set.of("odd", "altogether", "in", ".", "", "!").contains(passage.word(end));
        return after > at && end > 0 && them ? number : crop;
    }

    /** "tomatoes x 6", "toms (6)", "beans - 12", "lettuce, 6 of them", "lettuce 12". */
    private Integer after(Passage passage, List<NumberSaid> numbers, CropSaid crop) {
        int at = crop.end();
        while (verbed(passage, at)
                || Set.of("x", "(", ")", "-", ":", ",", "=", "plants", "seeds", "seedlings", "cloves", "sets", "about")
                        .contains(passage.word(at))) {
            at++;
        }
        int start = ofThem(passage, at);
        NumberSaid number = numbers.stream()
                .filter(told -> told.start() == start)
                .findFirst()
                .orElse(null);
        if (number == null
                || passage.crops().stream()
                        .anyMatch(next -> next.start() > number.start()
                                && next.start() - number.end() <= 2
                                && !Set.of(",", "and", "plus", "(").contains(passage.word(number.end()))
                                && !(counted.contains(passage.word(number.end()))
                                        && Set.of(",", "and", "plus").contains(passage.word(number.end() + 1))))) {
            return null;
        }
        String next = passage.word(number.end());
        boolean closes = counted.contains(passage.word(described(passage, number.end())))
                || counted.contains(passage.word(number.end() + 1))
                        && passage.word(number.end() + 1).equals("ones")
                || number.end() >= passage.size()
                || passage.tokens().get(number.end()).mark()
                || counted.contains(next)
                || Set.of(
                                "of",
                                "odd",
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
                    && !(number.start() > 0 && clause.action().words().get(number.start() - 1))) {
                continue; // "A wigwam of 8 canes" counts canes.
            }
            boolean pronoun = passage.word(number.start()).equals("one")
                    && Set.of(
                                    "the", "this", "that", "which", "other", "no", "each", "every", "any", "last",
                                    "first", "second", "third", "next", "another")
                            .contains(last);
            boolean unit = notCounts.contains(next)
                    || ofLooks(passage, number.end())
                    || Set.of("per", "each", "every", "by").contains(next) && !last.equals("other")
                    || next.equals("to")
                            && !last.equals("other")
                            && !clause.action().action().equals("died") // "Lost 2 to slugs".
                    || Set.of("each", "per", "a").contains(passage.word(number.end() + 1)) && counted.contains(next)
                    || Set.of("by", "bar", "but", "except", "off", "from").contains(last)
                    || !(last.equals("is") && next.equals("of"))
                            && Set.of("at", "be", "hit", "reached", "until", "till", "by", "was", "is", "for")
                                    .contains(last)
                    || last.equals("week")
                    || last.equals("between")
                    || last.equals("the") && passage.word(number.start() - 2).equals("between")
                    || last.equals("day");
            boolean weighed = Set.of("then", "and", "plus").contains(last)
                    && passage.quantities().stream().anyMatch(told -> told.end() == number.start() - 1);
            if (!pronoun && !unit && !weighed && standsAlone(passage, clause, number)) {
                return whole(number.value() * rowsOf(passage, numbers, number));
            }
        }
        return null;
    }

    /** A number that may count plants and was given to none, {@code null} when there is none. */
    Integer leftOver(Passage passage, Clause clause) {
        for (NumberSaid number : passage.counts(clause.from(), clause.to())) {
            String next = passage.word(number.end());
            String last = passage.word(number.start() - 1);
            boolean other = notCounts.contains(next)
                    || notCounts.contains(passage.word(number.end() + 1))
                    || ofLooks(passage, number.end())
                    || passage.word(number.start()).equals("one")
                    || passage.actions().stream()
                            .anyMatch(action -> action.words().get(number.start()))
                    || clause.inRelative(number.start())
                    || number.value() < 2
                    || Set.of(
                                    "by", "bar", "except", "at", "bed", "plot", "no", "number", "day", "week", "per",
                                    "x", "zone", "plots", "beds")
                            .contains(last)
                    || Set.of("per", "each", "every", "by", "to", "x", "inch", "litre", "litres", "gallon")
                            .contains(next);
            if (!other) {
                return whole(number.value());
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
                || passage.word(number.end() + 1).equals("ones")
                || bracketed
                || between
                || last.equals("all") && !notCounts.contains(next)
                || Set.of("first", "other", "last").contains(last)
                        && (Set.of("and", "to", ",", "").contains(next)
                                || passage.days().stream().anyMatch(day -> day.start() == number.end()))
                || counted.contains(next)
                || counted.contains(passage.word(described(passage, number.end())))
                || Set.of("of", "out", "more", "so", "are", "have", "up", "in", "into", "on")
                        .contains(next)
                || number.end() >= clause.to()
                || remarkFollows(passage, clause, number);
    }

    /** "Two rows of six, bit cold though": behind the number stands a remark, and no other number. */
    private static boolean remarkFollows(Passage passage, Clause clause, NumberSaid number) {
        boolean opens = Set.of(",", "of", "-", ":").contains(passage.word(number.start() - 1));
        return opens
                && Set.of(",", "-", "(").contains(passage.word(number.end()))
                && passage.counts(number.end(), clause.to()).isEmpty();
    }

    /** Where the thing counted stands: behind "good", "nice big" and the like. */
    private int described(Passage passage, int at) {
        int thing = at;
        while (thing - at < 2 && describing.contains(passage.word(thing))) {
            thing++;
        }
        return thing;
    }

    private static Integer whole(double value) {
        return Math.abs(value) > 2_000_000_000 ? Integer.valueOf(2_000_000_000) : Integer.valueOf((int) value);
    }
}
