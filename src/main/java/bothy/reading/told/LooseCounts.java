package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/** Counts that stand by themselves, with no crop's name beside them: "potted on 6", "lifted on Thursday, 90 or so". */
final class LooseCounts {
    /** Words that all but a few may be counted off from. */
    static final Set<String> ALL =
            Set.of("all", "every", "everything", "none", "nothing", "whole", "lot", "any", "each", "both");

    private static final Set<String> NEARLY = Set.of(
            "about", "around", "roughly", "nearly", "almost", "maybe", "some", "say", "over", "only", "just", "abt",
            "like");

    private static final Set<String> SPOILT = Set.of(
            "green",
            "rotten",
            "bad",
            "soft",
            "split",
            "damaged",
            "slugged",
            "forked",
            "mouldy",
            "diseased",
            "scabby",
            "blighted",
            "wormy",
            "spoilt",
            "rubbish",
            "duds",
            "dud");

    private final Set<String> notCounts;
    private final Set<String> counted;
    private final Set<String> describing;

    /**
     * @param notCounts what a number before it does not count plants by: "rows"
     * @param counted what is itself counted: "plants"
     * @param describing what may stand between a number and what is counted: "big"
     */
    LooseCounts(Set<String> notCounts, Set<String> counted, Set<String> describing) {
        this.notCounts = notCounts;
        this.counted = counted;
        this.describing = describing;
    }

    /** A number by itself when the clause is about one crop: "potted on 6", "4 up so far", "6 seeds to a pot". */
    Integer of(Passage passage, Clause clause, List<NumberSaid> numbers) {
        NumberSaid subject = Counted.number(passage, clause);
        boolean otherOne = subject != null
                && passage.word(subject.start()).equals("one")
                && passage.word(subject.start() - 1).equals("other"); // "Other one tied back up".
        if (subject != null && (otherOne || clause.action().action().equals("died"))) {
            return Counts.whole(subject.value()); // "11 pots done, one broke".
        }
        boolean aids = Set.of("supported", "protected", "watered", "fed")
                        .contains(clause.action().action())
                && !HungToKeep.is(What.SUPPORTED, passage, clause);
        for (NumberSaid number : numbers) {
            String next = passage.word(number.end());
            String last = passage.word(number.start() - 1);
            if (aids
                    && !Set.of("plants", "of", "pots", "more").contains(next)
                    // "Caged the tomatoes on Sunday, all 24", "staked the other 6".
                    && !Set.of("all", "other", "remaining").contains(last)
                    && !(number.start() > 0 && clause.action().words().get(number.start() - 1))) {
                continue; // "A wigwam of 8 canes" counts canes.
            }
            if (turnsAway(passage, clause, number)) {
                continue;
            }
            boolean pronoun = passage.word(number.start()).equals("one")
                    && Set.of(
                                    "the", "this", "that", "which", "other", "no", "each", "every", "any", "last",
                                    "first", "second", "third", "next", "another")
                            .contains(last);
            boolean unit = notCounts.contains(next)
                    || Set.of("left", "going").contains(next)
                            && Set.of("over", "spare").contains(passage.word(number.end() + 1))
                    || Set.of("spare", "surplus", "size", "sizes").contains(next)
                            && !counted.contains(passage.word(number.end() + 1)) // "Seven spare seeds".
                    || next.equals("pot") && passage.word(number.end() + 1).startsWith("size")
                    || ofLooks(passage, number.end())
                    || spoiltOfAWeight(passage, clause, number)
                    || ofOthers(passage, number)
                    || Set.of("per", "each", "every", "by").contains(next) && !last.equals("other")
                    || next.equals("to")
                            && !last.equals("other")
                            && !clause.action().action().equals("died") // "Lost 2 to slugs".
                    || Set.of("each", "per", "a").contains(passage.word(number.end() + 1)) && counted.contains(next)
                    || Set.of("by", "bar", "except", "off", "from").contains(last)
                    || last.equals("x") && passage.end("n", number.start() - 2) > 0 // "In a block, 4 x 5".
                    || last.equals("but") && ofAll(passage, clause, number)
                    || !(last.equals("is") && next.equals("of"))
                            && Set.of("at", "be", "hit", "reached", "until", "till", "by", "was", "is", "for")
                                    .contains(last)
                    // "Thinned it to 8 plants" tells how many stand.
                    || Set.of("to", "leaving").contains(last)
                            && clause.action().action().equals("thinned")
                    || last.equals("of") && passage.word(number.start() - 2).equals("out") // "In 3 bags out of 4".
                    || last.equals("to") && passage.word(number.start() - 2).equals("down") // "Down to two".
                    // "I count 33 up, so I put seven in the gaps".
                    || Set.of("count", "counted").contains(last)
                            && number.end() < clause.action().start()
                    || last.equals("week")
                    || last.equals("between")
                    || last.equals("the") && passage.word(number.start() - 2).equals("between")
                    || last.equals("day");
            boolean weighed = Set.of("then", "and", "plus").contains(last)
                    && passage.quantities().stream().anyMatch(told -> told.end() == number.start() - 1);
            if (!pronoun && !unit && !weighed && standsAlone(passage, clause, number)) {
                return Counts.whole(number.value() * rowsOf(passage, numbers, number));
            }
        }
        return null;
    }

    /** "Sowed the carrots. One of the goats got out": of something else. */
    private boolean ofOthers(Passage passage, NumberSaid number) {
        int noun = number.end() + 2;
        return passage.word(number.end()).equals("of")
                && Set.of("the", "my", "our").contains(passage.word(number.end() + 1))
                && !counted.contains(passage.word(noun))
                && !describing.contains(passage.word(noun))
                && passage.cropAt(noun).isEmpty()
                && !Set.of("lot", "first", "last", "best", "others", "rest", "ones", "batch", "row", "tray")
                        .contains(passage.word(noun));
    }

    /** "Beans popping up but something bit 2 of them off": told of something else; "up, but only 6" is not. */
    private static boolean turnsAway(Passage passage, Clause clause, NumberSaid number) {
        boolean turns = false;
        for (int at = clause.action().lastWord() + 1; at < number.start(); at++) {
            turns |= passage.word(at).equals("but");
        }
        return turns
                && Set.of("of", "them").contains(passage.word(number.end()))
                && !Set.of("only", "just", "but", "about", "maybe").contains(passage.word(number.start() - 1));
    }

    /** "All but 3" against "started with a dozen but 2 died". */
    private static boolean ofAll(Passage passage, Clause clause, NumberSaid number) {
        for (int at = clause.sentence()[0]; at < number.start(); at++) {
            if (ALL.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
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
                return Counts.whole(number.value());
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
        boolean near = opens(last) && Set.of("so", "ish", "thereabouts").contains(passage.word(number.end() - 1));
        boolean between = last.equals(",")
                && Set.of(",", "survived", "made", "took", "left", "lived").contains(next);
        return atVerb
                || apposed(passage, clause, number)
                || number.equals(Counted.number(passage, clause))
                || near
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

    /** "Leeks are up, about 60 I should think", "pulled about 30 for the table": the only figure, right behind a mark or the doing. */
    private boolean apposed(Passage passage, Clause clause, NumberSaid number) {
        int before = number.start() - 1;
        while (NEARLY.contains(passage.word(before))) {
            before--;
        }
        boolean led = opens(passage.word(before))
                || before < number.start() - 1
                        && before >= 0
                        && clause.action().words().get(before);
        return led
                && number.value() > 1
                && passage.counts(clause.from(), clause.to()).size() == 1
                && !notCounts.contains(passage.word(number.end()))
                && !notCounts.contains(passage.word(number.end() + 1));
    }

    /** A mark behind which a count may stand by itself. */
    private static boolean opens(String mark) {
        return Set.of(",", "-", ":").contains(mark);
    }

    /** "Two rows of six, bit cold though": behind the number stands a remark, and no other number. */
    private static boolean remarkFollows(Passage passage, Clause clause, NumberSaid number) {
        String last = passage.word(number.start() - 1);
        return (opens(last) || last.equals("of"))
                && Set.of(",", "-", "(").contains(passage.word(number.end()))
                && passage.counts(number.end(), clause.to()).isEmpty();
    }

    /** Where the thing counted stands: behind "good", "nice big" and the like. */
    int described(Passage passage, int at) {
        int thing = at;
        while (thing - at < 2 && describing.contains(passage.word(thing))) {
            thing++;
        }
        return thing;
    }

    /** "Dug 31 kg, 2 or 3 green ones": how many of what was weighed were no good. */
    private static boolean spoiltOfAWeight(Passage passage, Clause clause, NumberSaid number) {
        return SPOILT.contains(passage.word(number.end()))
                && passage.quantities().stream()
                        .anyMatch(weight -> weight.unit().equals("kg")
                                && weight.start() >= clause.from()
                                && weight.end() <= number.start());
    }

    /** "Two more rows of carrots", "in 5 big grow bags": what is counted stands behind how it looks. */
    boolean ofLooks(Passage passage, int from) {
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

    /** "It is late but 16 potatoes are in", against "all but 16 potatoes are in". */
    static boolean joined(Passage passage, int but) {
        if (!passage.word(but).equals("but")) {
            return false;
        }
        for (int at = but - 1; at >= 0 && !passage.word(at).equals("."); at--) {
            if (ALL.contains(passage.word(at))) {
                return false;
            }
        }
        return true;
    }
}
