package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;

/** What the form of a verb says of whether it was done: "sowed", "been sowing", "sow". */
final class Tenses {
    private static final Set<String> BE = Set.of("am", "is", "are", "was", "were", "been", "be", "got", "get", "being");
    private static final Set<String> BEFORE_ING = Set.of(
            "started",
            "finished",
            "begun",
            "began",
            "spent",
            "busy",
            "done",
            "been",
            "out",
            "is",
            "are",
            "am",
            "was",
            "were",
            "just",
            "day",
            "morning",
            "afternoon",
            "hour",
            "hours",
            "evening",
            "start",
            "kept",
            "keep",
            "currently",
            "now",
            "today",
            "while");

    private static final Set<String> EATING = Set.of("eating", "munching", "scoffing");

    private Tenses() {}

    /**
     * The mood of a verb around which no word says otherwise.
     *
     * @param anyway whether words before it say that it was done ("managed to")
     */
    static Mood mood(ActionSaid action, Passage passage, int from, int to, boolean anyway) {
        int verb = action.words().nextSetBit(0);
        if (action.form() == Form.ING && EATING.contains(passage.word(verb))) {
            return Mood.NOT_OURS; // "The kids were eating the beans raw" picks none that is to be written down.
        }
        boolean toldOver = action.form() == Form.PLAIN
                && Set.of("i", "we").contains(passage.word(verb - 1))
                && over(passage, from, to);
        return toldOver ? Mood.DONE : byForm(action, passage, verb, anyway);
    }

    /** "I sow 10 okra yesterday": with a day that is over the plain form tells of the past. */
    private static boolean over(Passage passage, int from, int to) {
        return Passage.within(passage.days(), from, to).stream()
                .anyMatch(day -> day.known()
                        && day.past().equals(day.future())
                        && (day.past().isBefore(passage.situation().today()) || thisMorning(passage, day)));
    }

    private static boolean thisMorning(Passage passage, DaySaid day) {
        return passage.word(day.end() - 1).equals("morning")
                && passage.word(day.end() - 2).equals("this");
    }

    private static Mood byForm(ActionSaid action, Passage passage, int verb, boolean anyway) {
        String before = passage.word(verb - 1);
        String further = Set.of("i", "we", "they", "it").contains(before) ? passage.word(verb - 2) : before;
        return switch (action.form()) {
            case PAST ->
                hardened(action, passage, verb)
                                || adjective(passage, verb)
                                || Set.of("after", "once", "since").contains(further)
                                || Set.of("when", "to", "the", "a", "an", "his", "her")
                                        .contains(before)
                                || Set.of("looking", "looked", "looks", "feeling", "felt", "seemed", "seems", "bit")
                                        .contains(before)
                        ? Mood.NOT_OURS
                        : Mood.DONE;
            case ING ->
                anyway
                                || before.equals("from")
                                        && Set.of("in", "back", "home", "inside", "up", "over")
                                                .contains(passage.word(verb - 2))
                                || spent(passage, verb)
                                || happens(action)
                                || opening(passage, verb)
                                || BEFORE_ING.contains(before)
                                || BE.contains(before)
                        ? Mood.DONE
                        : Mood.NOT_OURS;
            case PLAIN_S -> Mood.NOT_OURS;
            case PLAIN -> anyway ? Mood.DONE : plain(passage, before, verb);
        };
    }

    /** "Spent Good Friday planting spuds": the day that the doing took. */
    private static boolean spent(Passage passage, int verb) {
        DaySaid day = passage.days().stream()
                .filter(one -> one.known() && one.end() == verb)
                .findFirst()
                .orElse(null);
        int before = day == null ? -1 : day.start() - 1;
        while (Set.of("all", "of", "my", "the", "most", "whole", "half").contains(passage.word(before))) {
            before--;
        }
        return passage.word(before).equals("spent");
    }

    /** "Now they're hardened off": that is over, and began some time before. */
    private static boolean hardened(ActionSaid action, Passage passage, int verb) {
        return action.action().equals("hardening-started")
                && Set.of(
                                "are",
                                "is",
                                "were",
                                "was",
                                "been",
                                "being",
                                "fully",
                                "properly",
                                "all",
                                "now",
                                "well",
                                "nicely")
                        .contains(passage.word(verb - 1));
    }

    /** "Stored onions are going soft" tells nothing of storing. */
    private static boolean adjective(Passage passage, int verb) {
        boolean leads = verb == 0
                || passage.tokens().get(verb - 1).mark()
                || Set.of("the", "my", "our", "these", "and").contains(passage.word(verb - 1));
        int crop = passage.end("crop", verb + 1);
        return leads
                && crop > 0
                && Set.of("are", "is", "have", "has", "look", "looks", "keep", "seem", "were")
                        .contains(passage.word(crop));
    }

    /** What plants do by themselves may be told as going on: "peppers colouring up". */
    static boolean happens(ActionSaid action) {
        return Set.of("emerged", "flowering", "fruit-set", "colour-turned", "rain", "cured", "hardening-started")
                .contains(action.action());
    }

    private static boolean opening(Passage passage, int at) {
        return at == 0
                || passage.tokens().get(at - 1).mark()
                || Set.of("and", "then", "also", "so").contains(passage.word(at - 1));
    }

    private static Mood plain(Passage passage, String before, int verb) {
        boolean alsoPast = Set.of("put", "set", "cut", "broadcast", "spread").contains(passage.word(verb));
        if (before.equals("to") || before.equals("not")) {
            return Mood.MEANT;
        }
        if (alsoPast) {
            return Mood.DONE;
        }
        return opening(passage, verb) || Set.of("i", "we", "just", "today").contains(before)
                ? Mood.UNCLEAR
                : Mood.NOT_OURS;
    }
}
