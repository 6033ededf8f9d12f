package bothy.reading.grammar;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.said.Span;
import bothy.reading.text.Conjugation.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A list without verbs whose doing stands in the sentence above or below it: "Seeds in so far. Carrots 5/2, beets 5/9.", "1 May 40
 * parsnips. 4 May 60 carrots. All sown direct."
 */
public final class HeadedList {
    /** A heading has hardly more than its doing. */
    private static final int HEADING_WORDS = 5;

    private static final Set<String> POINTING =
            Set.of("them", "it", "they", "these", "those", "lot", "all", "everything");
    private static final Set<String> NOTHING = Set.of("nothing", "nowt", "none", "nil", "zilch", "nada", "nothin");
    private static final Set<String> SUMMING =
            Set.of("all", "both", "everything", "these", "those", "they", "lot", "each", "every");

    private HeadedList() {}

    /** Whether a doing that names nothing stands as the heading over the sentence right after it. */
    static boolean heads(Passage passage, Clause heading, int[] below) {
        int[] own = heading.sentence();
        boolean pointing = false;
        for (int at = own[0]; at < own[1]; at++) {
            pointing |= POINTING.contains(passage.word(at));
        }
        return heading.crops().isEmpty()
                && !pointing
                && own[1] - own[0] <= heading.action().words().cardinality() + HEADING_WORDS
                && below[0] - own[1] <= 2
                && passage.counts(own[0], own[1]).isEmpty();
    }

    /** "Sown today: nothing." */
    static boolean empty(Passage passage, Clause heading) {
        int[] own = heading.sentence();
        return heading.crops().isEmpty()
                && passage.tokens().subList(own[0], own[1]).stream().anyMatch(token -> NOTHING.contains(token.word()));
    }

    /** Whether a doing sums up what stands before it: "all sown direct". */
    static boolean closes(Passage passage, Clause closing) {
        int[] own = closing.sentence();
        boolean sums = false;
        for (int at = own[0]; at < closing.action().words().nextSetBit(0); at++) {
            sums |= SUMMING.contains(passage.word(at));
        }
        return sums
                && closing.crops().stream().allMatch(crop -> crop.end() <= own[0]) // "These all went in."
                && closing.mood() == Mood.DONE
                && !closing.action().state()
                && closing.action().form() != Form.PLAIN
                && passage.counts(own[0], own[1]).isEmpty();
    }

    /** Whether a sentence without a verb lists crops, each with its count or day. */
    public static boolean lists(Passage passage, int[] sentence) {
        List<CropSaid> crops = Passage.within(passage.crops(), sentence[0], sentence[1]).stream()
                .filter(crop -> !crop.thing())
                .toList();
        List<? extends Span> days = Passage.within(passage.days(), sentence[0], sentence[1]);
        int figures = days.size() + passage.counts(sentence[0], sentence[1]).size();
        return !crops.isEmpty()
                && figures >= crops.size()
                && Passage.within(passage.actions(), sentence[0], sentence[1]).isEmpty()
                && GoingOnList.only(passage, sentence);
    }

    static List<Clause> closed(Passage passage, Clause closing, List<int[]> listed) {
        List<Clause> all = new ArrayList<>();
        for (int[] sentence : listed) {
            List<CropSaid> crops = DirectObjects.of(
                    passage,
                    closing.action(),
                    Passage.within(passage.crops(), sentence[0], sentence[1]).stream()
                            .filter(crop -> !crop.thing())
                            .toList());
            if (!crops.isEmpty()) {
                all.add(new Clause(closing.action(), sentence[0], sentence[1], sentence, crops, Mood.DONE, -1));
            }
        }
        return all.isEmpty() ? List.of(closing) : all;
    }
}
