package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import java.util.Set;
import java.util.stream.IntStream;

/** Days that a message names for something other than what was done: a party, a forecast, what is still to come. */
final class DaysOfElse {
    /** Before a day these tell that something takes place on it. */
    private static final Set<String> TAKING_PLACE = Set.of(
            "is", "are", "'s", "coming", "comes", "come", "due", "arriving", "arrive", "leaving", "visiting", "off");

    private static final int FORECAST_REACH = 5;

    private DaysOfElse() {}

    /** "Want them for Halloween", "to last until May": the day by which something is wanted; "soaked overnight" is none either. */
    static boolean wished(Passage passage, DaySaid day) {
        boolean meanwhile = passage.word(day.start()).equals("overnight")
                && Set.of("soaked", "steeped", "soaking").contains(passage.word(day.start() - 1));
        int before = Set.of("the", "our", "my").contains(passage.word(day.start() - 1)) ? 2 : 1;
        int word = day.start() - before;
        if (recordFor(passage, word) || hadBy(passage, word, day.end())) {
            return false;
        }
        return meanwhile
                || ahead(passage, day)
                || Set.of("till", "until", "til", "for", "by").contains(passage.word(day.start() - before));
    }

    /** "Gave the peas a feed, back on the road tomorrow": what is to come then is the way back. */
    private static boolean ahead(Passage passage, DaySaid day) {
        return day.known()
                && day.past().isAfter(passage.situation().today())
                && IntStream.range(Math.max(0, day.start() - FORECAST_REACH), day.start())
                        .anyMatch(at -> Set.of("back", "off", "away").contains(passage.word(at))
                                && Set.of("on", "to", "at", "in", "from", "again")
                                        .contains(passage.word(at + 1)));
    }

    /** "Harvest log for Saturday": the day that is recorded. */
    private static boolean recordFor(Passage passage, int word) {
        return passage.word(word).equals("for")
                && Set.of(
                                "log", "record", "report", "tally", "total", "totals", "diary", "entry", "entries",
                                "notes", "update", "harvest", "haul", "picking")
                        .contains(passage.word(word - 1));
    }

    /** "The mice had eaten 5 by Monday": it was over then. */
    private static boolean hadBy(Passage passage, int word, int behind) {
        boolean ahead = Set.of("i", "we").contains(passage.word(behind))
                && passage.word(behind + 1).equals("had"); // "By Friday I had 20 potted on".
        return passage.word(word).equals("by")
                && (ahead
                        || IntStream.range(Math.max(0, word - FORECAST_REACH - 1), word)
                                .takeWhile(at -> !passage.tokens().get(at).endsSentence())
                                .anyMatch(at -> passage.word(at).equals("had")));
    }

    /** "The party is on Friday so picked five": the day of the party. */
    static boolean occasion(Passage passage, Clause clause, DaySaid day) {
        int before = Set.of("on", "this", "next").contains(passage.word(day.start() - 1))
                ? day.start() - 2
                : day.start() - 1;
        return day.end() <= clause.action().words().nextSetBit(0)
                && TAKING_PLACE.contains(passage.word(before))
                && !passage.word(before - 1).equals("day") // "Day off yesterday so pricked out 12 tomatoes".
                && Set.of("so", ",").contains(passage.word(day.end()));
    }

    /** "Market tomorrow.", "Show day is Saturday.": when something else takes place, and no heading. */
    static boolean ofAnOccasion(Passage passage, int[] sentence, DaySaid day) {
        boolean ahead = day.known() && day.past().isAfter(passage.situation().today());
        return day.start() > sentence[0]
                && !passage.word(day.start() - 1).equals("for") // "Jobs for tomorrow."
                && (ahead
                        || IntStream.range(sentence[0], day.start())
                                .anyMatch(at -> TAKING_PLACE.contains(passage.word(at))));
    }

    /** "Frost forecast for the weekend so I've put fleece over": the day of the frost. */
    static boolean forecast(Passage passage, DaySaid day) {
        for (int at = Math.max(0, day.start() - FORECAST_REACH); at < day.start(); at++) {
            if (Set.of("forecast", "predicted", "expected", "giving", "forecasting", "promised")
                    .contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Half a kilo picked, more tomorrow": the day after the comma is of what is still to come. */
    static boolean toCome(Passage passage, Clause clause, DaySaid day) {
        boolean ahead = day.known() && day.past().isAfter(passage.situation().today());
        for (int at = clause.action().end(); ahead && at < day.start(); at++) {
            if (Set.of(",", "and", "but", "-", "(").contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "On Mother's Day, 5/9": the feast that is told once more by its date. */
    static boolean toldAgain(Passage passage, DaySaid day) {
        boolean mark = Set.of(",", "(", "-", ":").contains(passage.word(day.end()));
        return !day.known()
                && mark
                && Set.of("day", "eve", "easter", "christmas", "halloween").contains(passage.word(day.end() - 1))
                && passage.days().stream().anyMatch(other -> other.start() == day.end() + 1 && other.known());
    }

    /** "Planted 2 more to replace the ones I lost on Monday": the day tells which ones. */
    static boolean ofWhichOnes(Passage passage, Clause clause, DaySaid day) {
        return passage.actions().stream()
                .filter(action -> action.start() >= clause.to() && action.start() < day.start())
                .mapToInt(action -> action.words().nextSetBit(0))
                .anyMatch(verb -> Set.of("i", "we").contains(passage.word(verb - 1))
                        && Set.of("ones", "one", "that", "which", "those").contains(passage.word(verb - 2)));
    }
}
