package bothy.reading.told;

import bothy.almanac.Words;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation;
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

    private static final Set<String> PIECES =
            Set.of("cloves", "sets", "tubers", "slips", "bulbs", "corms", "crowns", "pieces", "pcs", "nos");
    private static final Set<String> EXCEPT = Set.of("but", "bar", "except", "save", "barring", "not");
    private final Set<String> notCounts;
    private final Set<String> counted;
    private final Set<String> mass;
    private final LooseCounts byThemselves;

    Counts(Words words) {
        notCounts = new HashSet<>(words.list("units", "/not-counts"));
        counted = new HashSet<>(words.list("units", "/counted"));
        mass = new HashSet<>(words.list("crops", "/mass"));
        byThemselves = new LooseCounts(notCounts, counted, Set.copyOf(words.list("units", "/describing")));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(notCounts);
        all.addAll(counted);
        return all;
    }

    /** The count told for a crop, {@code null} when none is. */
    Integer of(Passage passage, Clause clause, CropSaid crop) {
        List<NumberSaid> numbers = passage.counts(clause.from(), clause.to());
        Integer summed = clause.crops().size() > 1 ? null : SummedUp.of(passage, numbers);
        if (summed != null) {
            return summed;
        }
        Integer block = InBlocks.count(passage, PerVessel.own(clause, crop, numbers), crop);
        if (block != null) {
            return block;
        }
        Integer pieces = pieces(passage, clause, crop, numbers);
        if (pieces != null) {
            return pieces;
        }
        Integer borne = borne(clause, crop, numbers);
        if (borne != null) {
            return borne;
        }
        if (crop.end() <= clause.from() && byThemselves.of(passage, clause, numbers) != null) {
            return byThemselves.of(passage, clause, numbers);
        }
        Integer vessels = PerVessel.count(passage, PerVessel.own(clause, crop, numbers), crop);
        if (vessels != null && !clause.action().action().equals("harvested")) {
            return vessels;
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
            boolean byArticle = numbers.stream().noneMatch(number -> number.end() <= crop.start());
            Integer behind = byArticle ? after(passage, numbers, crop) : null;
            return behind == null ? before : behind; // "First okra, 8 pods picked".
        }
        Integer listed = Listed.count(passage, clause, numbers, crop);
        if (listed != null) {
            return listed;
        }
        Integer after = after(passage, numbers, crop);
        return after != null || clause.crops().size() > 1 ? after : byThemselves.of(passage, clause, numbers);
    }

    /** "Split three heads of garlic and set 24 cloves", "first okra! 12 of them": counted by its pieces. */
    private static Integer pieces(Passage passage, Clause clause, CropSaid crop, List<NumberSaid> numbers) {
        boolean own = numbers.stream().anyMatch(number -> number.end() == crop.start());
        return numbers.stream()
                .filter(number -> !own || number.end() >= crop.start()) // "5 of them, and 16 runner beans".
                .filter(number ->
                        clause.action().words().get(number.start()) && PIECES.contains(passage.word(number.end()))
                                || ofThemDone(passage, clause, number))
                .map(number -> whole(number.value()))
                .findFirst()
                .orElse(null);
    }

    /** "Was given 10 lettuce plugs, put in 7 of them": told with the doing or right behind it. */
    private static boolean ofThemDone(Passage passage, Clause clause, NumberSaid number) {
        boolean withTheDoing = clause.action().words().get(number.start())
                || number.start() == clause.action().lastWord() + 1;
        return withTheDoing
                && passage.word(number.end()).equals("of")
                && Set.of("them", "em", "those", "these").contains(passage.word(number.end() + 1));
    }

    /** "The 3 courgette plants gave us another 5", "had 12 peppers, a rabbit took 3": not those that stood there. */
    private static Integer borne(Clause clause, CropSaid crop, List<NumberSaid> numbers) {
        return !Set.of("harvested", "died").contains(clause.action().action())
                ? null
                : numbers.stream()
                        .filter(number -> number.start() >= crop.end()
                                && clause.action().words().get(number.start())
                                && clause.crops().stream().noneMatch(other -> other.start() == number.end())
                                && numbers.stream().anyMatch(other -> other.end() <= crop.start()))
                        .map(number -> whole(number.value()))
                        .findFirst()
                        .orElse(null);
    }

    private static boolean outOf(Passage passage, NumberSaid number) {
        int of = passage.word(number.start() - 1).equals("the") ? number.start() - 2 : number.start() - 1;
        return passage.word(of).equals("of") && passage.word(of - 1).equals("out");
    }

    /** "Out of 24 beans 20 are up": the second counts. */
    private static Integer behind(List<NumberSaid> numbers, CropSaid crop) {
        return numbers.stream()
                .filter(number -> number.start() >= crop.end() && number.start() <= crop.end() + 2)
                .map(number -> whole(number.value()))
                .findFirst()
                .orElse(null);
    }

    /** "6 little tomato plants", "4 of the toms", "2 trays of 12 lettuces". */
    private Integer before(Passage passage, List<NumberSaid> numbers, CropSaid crop, String action) {
        if (notCounts.contains(passage.word(crop.end()))
                && !counted.contains(passage.word(crop.end()))
                && !passage.numberedPlace(crop.end())) {
            return null; // "Two radish sowings", but not "10 leeks bed 2".
        }
        for (int at = crop.start() - 1, words = 0; at >= 0 && words < 6; at--, words++) {
            int here = at;
            NumberSaid number = numbers.stream()
                    .filter(told -> told.end() == here + 1)
                    .findFirst()
                    .orElse(null);
            if (number != null
                    && EXCEPT.contains(passage.word(number.start() - 1))
                    && !LooseCounts.joined(passage, number.start() - 1)) {
                return null; // "All but 3 of the onions".
            }
            if (number != null && outOf(passage, number)) {
                return behind(numbers, crop);
            }
            if (number != null) {
                return ofRows(passage, number) ? null : named(passage, numbers, number);
            }
            if (!GROWTH.contains(action) && one(passage, at, crop, action.equals("harvested"))) {
                return 1;
            }
            boolean of = passage.word(at).equals("of")
                    || offThem(passage, at, action)
                    || (passage.word(at).equals("the") && Set.of("of", "all").contains(passage.word(at - 1)))
                    || Set.of("my", "our", "these", "those").contains(passage.word(at));
            if (!of && ENDS_NAME.contains(passage.word(at)) && !PerVessel.hyphened(passage, at)
                    || passage.cropAt(at).isPresent()
                    || passage.tokens().get(at).endsSentence()) {
                return null;
            }
        }
        return null;
    }

    /** "Got 4 off the courgettes": so many fruit. */
    private static boolean offThem(Passage passage, int at, String action) {
        int off = passage.word(at).equals("the") || passage.word(at).equals("my") ? at - 1 : at;
        return action.equals("harvested")
                && Set.of("off", "from").contains(passage.word(off))
                && passage.numbers().stream().anyMatch(number -> number.end() == off);
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
                && !Set.of("harvest", "picking", "pick", "crop", "haul", "batch")
                        .contains(passage.word(crop.end()))
                && !notCounts.contains(passage.word(at + 1))
                && !Set.of("sowing", "few", "lot", "load", "bit").contains(passage.word(at + 1));
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
        return notCounts.contains(next) && !PerVessel.pack(passage, number)
                        || byThemselves.ofLooks(passage, number.end())
                ? null
                : whole(number.value());
    }

    private static boolean done(Passage passage, int at) {
        return passage.actions().stream()
                .anyMatch(action ->
                        action.form() == Conjugation.Form.PAST && action.words().get(at));
    }

    /** "Broad beans sown (20)", "lettuces planted out 12, kale 6": what stands right after the verb counts the crop before it. */
    private static boolean verbed(Passage passage, int at) {
        boolean past = done(passage, at);
        if (passage.word(at).equals("up") && passage.word(at + 1).equals(",")) {
            int number = passage.end("n", at + 2); // "Beans up, 9 of them and 3 pumpkins".
            return number > 0
                    && passage.word(number).equals("of")
                    && Set.of("them", "em").contains(passage.word(number + 1));
        }
        return past
                && (passage.word(at + 1).equals("(")
                        || passage.word(at + 2).equals("(")
                        || passage.end("n", at + 1) > 0
                        || verbed(passage, at + 1));
    }

    /** "Planted out the leeks yesterday, forty of them": over the day to the number. */
    private int ofThem(Passage passage, int crop) {
        int verb = crop;
        while (done(passage, verb)) {
            verb++;
        }
        int at = passage.word(verb).equals("on") ? verb + 1 : verb;
        int placed = behindPlace(passage, verb);
        int after = passage.days().stream()
                .filter(day -> day.start() == at || day.start() == placed)
                .mapToInt(day -> day.end())
                .findFirst()
                .orElse(at);
        int number = passage.word(after).equals(",") ? after + 1 : after;
        int end = passage.end("n", number);
        boolean them = passage.word(end).equals("of") && passage.word(end + 1).equals("them")
                // "Sown my onions today, 40 small cells".
                || number > after && counted.contains(passage.word(byThemselves.described(passage, end)))
                || number > after
                        && Set.of("odd", "altogether", "in", ".", "", "!").contains(passage.word(end));
        return (after > at || verb > crop && number > after) && end > 0 && them ? number : crop;
    }

    /** "Started tomatoes on the windowsill Saturday": where the place behind a crop ends. */
    private static int behindPlace(Passage passage, int at) {
        int place = Set.of("on", "in", "into", "at").contains(passage.word(at)) ? at + 1 : at;
        place += Set.of("the", "my", "our", "a").contains(passage.word(place)) ? 1 : 0;
        int end = passage.end("place", place);
        return end > 0 && passage.word(end).equals("on") ? end + 1 : end;
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
                                && !Set.of(",", "and", "plus", "(", ")").contains(passage.word(number.end()))
                                && !(counted.contains(passage.word(number.end()))
                                        && Set.of(",", "and", "plus").contains(passage.word(number.end() + 1))))) {
            return null;
        }
        String next = passage.word(number.end());
        boolean closes = counted.contains(passage.word(byThemselves.described(passage, number.end())))
                || counted.contains(passage.word(number.end() + 1))
                        && passage.word(number.end() + 1).equals("ones")
                || number.end() >= passage.size()
                || passage.tokens().get(number.end()).mark()
                || passage.end("date", number.end()) > 0
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

    /** Numbers that stand by themselves. */
    LooseCounts byThemselves() {
        return byThemselves;
    }

    static Integer whole(double value) {
        return Math.abs(value) > 2_000_000_000 ? Integer.valueOf(2_000_000_000) : Integer.valueOf((int) value);
    }
}
