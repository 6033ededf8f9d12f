package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import java.util.Set;
import java.util.stream.IntStream;

/** Warmth that a place usually has, and that nobody measured: "the cellar sits around 5 degrees in winter". */
final class UsualWarmth {
    private static final Set<String> SEASONS =
            Set.of("winter", "spring", "summer", "autumn", "fall", "winters", "springs", "summers", "autumns", "falls");
    private static final Set<String> THROUGH =
            Set.of("in", "over", "through", "during", "all", "every", "most", "throughout");
    private static final Set<String> WITHIN = Set.of("the", "a", "mid", "deep", "high", "early", "late");
    private static final Set<String> MOST = Set.of("most", "many", "some", "all", "every");
    private static final Set<String> TIMES =
            Set.of("nights", "days", "mornings", "afternoons", "year", "night", "day", "morning", "afternoon");
    private static final Set<String> HOLDS = Set.of("sits", "sit", "stays", "stay", "hovers", "hover", "averages");
    private static final Set<String> ROUGHLY = Set.of("around", "about", "between");

    private UsualWarmth() {}

    /** Whether a doing is a temperature told as what is usual; one of a day that is named was measured. */
    static boolean told(Passage passage, ActionSaid action) {
        if (!action.action().equals("temperature")) {
            return false;
        }
        int[] sentence = passage.sentences().stream()
                .filter(one -> one[0] <= action.start() && action.start() < one[1])
                .findFirst()
                .orElse(new int[] {action.start(), action.end()});
        boolean dated = Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .anyMatch(DaySaid::known);
        return !dated
                && IntStream.range(sentence[0], sentence[1])
                        .anyMatch(at -> season(passage, at) || often(passage, at) || holds(passage, at));
    }

    private static boolean season(Passage passage, int at) {
        int before = WITHIN.contains(passage.word(at - 1)) ? at - 2 : at - 1;
        return SEASONS.contains(passage.word(at))
                && THROUGH.contains(passage.word(before))
                && !passage.word(at + 1).equals("house");
    }

    /** "Most nights", "all year", "year round". */
    private static boolean often(Passage passage, int at) {
        boolean round = passage.word(at).equals("year") && passage.word(at + 1).equals("round");
        return round || MOST.contains(passage.word(at)) && TIMES.contains(passage.word(at + 1));
    }

    private static boolean holds(Passage passage, int at) {
        return HOLDS.contains(passage.word(at)) && ROUGHLY.contains(passage.word(at + 1));
    }
}
