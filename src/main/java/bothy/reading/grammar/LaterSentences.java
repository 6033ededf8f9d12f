package bothy.reading.grammar;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a sentence tells that goes on from the doing before it, or closes a list that stands before it. */
public final class LaterSentences {
    private LaterSentences() {}

    /** "Sown: parsnips, 1 row. Carrots, 2 rows." The second sentence goes on with the first one's doing. */
    public static List<Clause> goingOn(Passage passage, int[] sentence, List<Clause> before) {
        List<CropSaid> crops = Passage.within(passage.crops(), sentence[0], sentence[1]).stream()
                .filter(crop -> !crop.thing())
                .toList();
        Clause last = before.isEmpty() ? null : before.get(before.size() - 1);
        if (ofAnother(passage, sentence[0])) {
            return List.of();
        }
        boolean lost = last != null && last.action().action().equals("died");
        if (lost && passage.word(sentence[0] + 1).equals("more")) {
            return List.of(); // "Ripped the cucumbers out. 4 more peppers, red ones".
        }
        if (last != null && crops.isEmpty() && last.mood() == Mood.DONE && Counting.only(passage, sentence, last)) {
            before.remove(before.size() - 1);
            return List.of(Counting.upTo(last, sentence[1]));
        }
        int them = countedThem(passage, sentence);
        if (last != null && !crops.isEmpty() && them > 0 && last.mood() == Mood.DONE && Counting.counts(last)) {
            before.set(before.size() - 1, Counting.upTo(last, them));
            return goingOn(passage, new int[] {them + 1, sentence[1]}, before);
        }
        Clause spoken = last;
        last = mainDoing(passage, sentence, before, last);
        boolean opens = !crops.isEmpty() && crops.get(0).start() - sentence[0] <= 4;
        if (last == null
                || HeadedList.empty(passage, last)
                || !opens
                || last.mood() != Mood.DONE
                || last.action().state() && !same(passage, sentence) && !counts(passage, sentence, crops)
                || Clauses.measured(last.action())) {
            return List.of();
        }
        List<CropSaid> meant =
                last.action().state() || last != spoken ? crops : DirectObjects.of(passage, last.action(), crops);
        if (meant.isEmpty() || !same(passage, sentence) && !GoingOnList.only(passage, sentence)) {
            return List.of();
        }
        if (namesIt(passage, last, sentence, meant)) {
            before.remove(before.size() - 1);
            return List.of(last.with(meant));
        }
        if (HeadedList.heads(passage, last, sentence)) {
            before.remove(before.size() - 1); // What a heading tells is told of what stands under it.
        }
        return List.of(new Clause(last.action(), sentence[0], sentence[1], sentence, meant, Mood.DONE, -1));
    }

    /** "Methi sown in trays. The other one I put in bags": nothing there counts what was named. */
    public static boolean ofAnother(Passage passage, int start) {
        return passage.word(start).equals("the")
                && passage.word(start + 1).equals("other")
                && Set.of("one", "kind", "sort", "veg", "crop", "packet").contains(passage.word(start + 2));
    }

    /** "12 of them plus 4 aubergines": where what goes on the list stands behind the count of what was named before, −1 where none does. */
    private static int countedThem(Passage passage, int[] sentence) {
        return passage.counts(sentence[0], sentence[1]).stream()
                .filter(number -> number.start() - sentence[0] <= 1
                        && passage.word(number.end()).equals("of")
                        && Set.of("them", "those", "these", "each").contains(passage.word(number.end() + 1))
                        && Set.of("plus", "and", ",", "with", "&", "+", "then")
                                .contains(passage.word(number.end() + 2)))
                .mapToInt(number -> number.end() + 2)
                .findFirst()
                .orElse(-1);
    }

    /** "Planted 36 leeks, watered in. And the celeriac, 20 plants": set out as well, not only watered. */
    private static Clause mainDoing(Passage passage, int[] sentence, List<Clause> before, Clause last) {
        Clause main = before.size() < 2 ? null : before.get(before.size() - 2);
        boolean besides = main != null
                && last.action().action().equals("watered")
                && Set.of("planted", "planted-out", "sown")
                        .contains(main.action().action())
                && main.sentence()[0] == last.sentence()[0]
                && !passage.counts(sentence[0], sentence[1]).isEmpty();
        return besides ? main : last;
    }

    /** "Cut 3 this morning. Courgettes!!": a crop that stands by itself is what the doing before it named none of. */
    private static boolean namesIt(Passage passage, Clause last, int[] sentence, List<CropSaid> meant) {
        return last.crops().isEmpty()
                && meant.size() == 1
                && meant.get(0).start() == sentence[0]
                && meant.get(0).end() == sentence[1]
                && !passage.counts(last.from(), last.to()).isEmpty();
    }

    /** "Radishes are up! And 4 of the courgettes": what is counted here is told of what the sentence before tells. */
    private static boolean counts(Passage passage, int[] sentence, List<CropSaid> crops) {
        int number = passage.end("n", sentence[0] + 1);
        boolean joined = Set.of("and", "plus", "&", "also").contains(passage.word(sentence[0])) && number > 0;
        int at = number;
        while (joined && Set.of("of", "the", "my", "our").contains(passage.word(at))) {
            at++;
        }
        CropSaid crop = crops.get(0);
        return joined
                && crops.size() == 1
                && crop.start() == at
                && (crop.end() >= sentence[1]
                        || Set.of("too", "now", "so", "already", "as").contains(passage.word(crop.end())));
    }

    /** "Rocket is up. Same for the radishes." */
    private static boolean same(Passage passage, int[] sentence) {
        String first = passage.word(sentence[0]);
        int at = first.equals("the") || first.equals("and") ? sentence[0] + 1 : sentence[0];
        return Set.of("same", "ditto", "likewise").contains(passage.word(at))
                && Set.of("for", "with", "goes", "the", "of", ":").contains(passage.word(at + 1));
    }

    /** The clauses of the list that a sentence like "All sown direct." closes, {@code clauses} as they are where it closes none. */
    public static List<Clause> closing(Passage passage, List<Clause> clauses, List<int[]> listed) {
        return clauses.size() == 1 && HeadedList.closes(passage, clauses.get(0))
                ? HeadedList.closed(passage, clauses.get(0), listed)
                : clauses;
    }

    /** "Dug the garlic. 28 heads, two had rotted": the first part counts what was dug, the second is of it too. */
    public static List<Clause> counted(Passage passage, int[] sentence, List<Clause> own, List<Clause> before) {
        Clause last = before.isEmpty() ? null : before.get(before.size() - 1);
        int mark = sentence[0];
        while (mark < sentence[1] && !passage.tokens().get(mark).mark()) {
            mark++;
        }
        boolean counts = last != null
                && !ofAnother(passage, sentence[0])
                && mark < sentence[1]
                && last.mood() == Mood.DONE
                && (own.isEmpty()
                        || own.get(0).action().start() > mark
                                && own.get(0).crops().stream().allMatch(crop -> crop.end() <= sentence[0]))
                && Counting.only(passage, new int[] {sentence[0], mark}, last);
        if (!counts) {
            return own;
        }
        before.set(before.size() - 1, Counting.upTo(last, mark));
        if (own.isEmpty()) {
            return own;
        }
        Clause first = own.get(0);
        List<Clause> rest = new ArrayList<>(own);
        rest.set(
                0,
                new Clause(first.action(), mark, first.to(), sentence, last.crops(), first.mood(), first.relative()));
        return rest;
    }
}
