package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook.Found;
import java.util.Set;
import java.util.stream.IntStream;

/** Words that would turn a doing into one not done, where they stand for something else: days, places, who is spoken to. */
final class OtherUses {
    /** "An hour before tea" supposes nothing. */
    private static final Set<String> HOURS = Set.of(
            "tea",
            "lunch",
            "dinner",
            "supper",
            "breakfast",
            "work",
            "bed",
            "bedtime",
            "dark",
            "school",
            "church",
            "dusk",
            "dawn",
            "noon",
            "midday",
            "midnight",
            "sunset",
            "sunrise",
            "heading",
            "going",
            "leaving",
            "coffee",
            "lunchtime",
            "teatime",
            "dinnertime",
            "nightfall");

    private static final Set<String> JOINTS = Set.of(",", ";", "-", "so", "but", "and", "because", "since", "as");
    /** "Netted the cabbages with fleece today": so far behind a doing its day may stand. */
    private static final int DAY_REACH = 8;

    private static final Set<String> WAITED = Set.of("last", "finally");

    private OtherUses() {}

    /** "The day before yesterday" and "17 May" are days; they suppose and mean nothing. */
    static boolean counted(Passage passage, Found<String> found) {
        boolean forOnce = passage.word(found.start()).equals("once")
                && (Set.of("for", "at").contains(passage.word(found.start() - 1))
                        || Set.of("again", "more", "a").contains(passage.word(found.start() + 1)));
        boolean hour = Set.of("before", "until", "till").contains(passage.word(found.start()))
                && found.place().length() == 1
                && HOURS.contains(passage.word(found.end()));
        // "Fed them for the last time" was done now.
        boolean forTheLast = passage.word(found.start()).equals("last")
                && passage.word(found.start() + 1).equals("time")
                && passage.word(found.start() - 1).equals("the");
        return forOnce
                || forTheLast
                || hour
                || atLast(passage, found)
                || occasion(passage, found)
                || passage.days().stream()
                        .anyMatch(day -> day.known()
                                && day.sort() == DaySaid.Sort.EXACT
                                && found.place().length() == 1
                                && day.covers(found.start()));
    }

    /** "I could at last sow", "finally I could plant out": what was waited for was done. */
    private static boolean atLast(Passage passage, Found<String> found) {
        int before =
                Set.of("i", "we").contains(passage.word(found.start() - 1)) ? found.start() - 2 : found.start() - 1;
        return passage.word(found.start()).equals("could")
                && found.place().length() == 1
                && (WAITED.contains(passage.word(found.end()))
                        || passage.word(found.end()).equals("at")
                                && Set.of("last", "long").contains(passage.word(found.end() + 1))
                        || WAITED.contains(passage.word(before)));
    }

    /** "Before the heat we got them out", "before my shift yesterday I sowed": a time or a thing that happened, behind which the telling begins. */
    private static boolean occasion(Passage passage, Found<String> found) {
        int noun = found.end() + 1;
        int behind = noun + 1;
        for (DaySaid day : passage.days()) {
            behind = day.start() == behind ? day.end() : behind;
        }
        return passage.word(found.start()).equals("before")
                && found.place().length() == 1
                && Set.of("the", "my", "our", "a", "an").contains(passage.word(found.end()))
                && passage.cropAt(noun).isEmpty()
                && Set.of("i", "we", ",", "of").contains(passage.word(behind));
    }

    /** "Sowed beetroot today, it bolted last year": behind a joint, with a day of its own, a doing is of no other season. */
    static boolean parted(Passage passage, Found<String> found, ActionSaid action) {
        boolean after = action.start() >= found.end();
        int from = after ? found.end() - 1 : action.start(); // "Last time so" ends in its joint.
        int to = after ? action.end() : found.start();
        int joint = IntStream.range(from, to)
                .filter(at -> JOINTS.contains(passage.word(at)))
                .reduce((first, second) -> after ? first : second)
                .orElse(-1);
        return joint >= 0
                && passage.days().stream()
                        .anyMatch(day -> day.known()
                                && day.sort() == DaySaid.Sort.EXACT
                                && (after
                                        ? day.start() > joint && day.start() <= action.end() + DAY_REACH
                                        : day.end() <= joint && day.end() >= action.start() - 1));
    }

    /** Who is spoken to does nothing. */
    static boolean addressed(Passage passage, Found<String> found) {
        return Addressed.is(passage, found.start(), found.end(), found.place().length());
    }

    /** "Home from my brother's", "round at the neighbour's": where somebody was. */
    static boolean comeFrom(Passage passage, Found<String> found) {
        int at = found.start() - 1;
        at -= Set.of("the", "my", "our").contains(passage.word(at)) ? 1 : 0;
        return Set.of("from", "off", "at", "to", "near", "past", "opposite", "behind")
                .contains(passage.word(at));
    }

    /** "Went out to the plot" is a way, no intention. */
    static boolean towards(Passage passage, Found<String> found) {
        return passage.word(found.end() - 1).equals("to")
                && Set.of("the", "my", "our", "their", "his", "her", "a").contains(passage.word(found.end()));
    }

    /** "Next to them" is a place. */
    static boolean beside(Passage passage, Found<String> found) {
        return passage.word(found.start()).equals("next")
                && passage.word(found.start() + 1).equals("to")
                && (Set.of("them", "the", "my", "our", "it", "those", "these", "a", "where")
                                .contains(passage.word(found.end()))
                        || passage.end("crop", found.end()) > 0);
    }
}
