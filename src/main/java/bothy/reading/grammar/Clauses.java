package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Cuts sentences into clauses of one doing each and gives each the crops it is about. */
public final class Clauses {
    private static final Set<String> PARTING = Set.of(
            ",",
            "and",
            "but",
            "then",
            "so",
            "-",
            ":",
            "while",
            "plus",
            "also",
            "(",
            ")",
            "because",
            "although",
            "though",
            "whereas",
            "as",
            "/");
    /** Subjects and helping verbs that belong to the verb after them. */
    private static final Set<String> LEADING = Set.of(
            "i", "we", "will", "have", "had", "not", "to", "would", "should", "going", "need", "must", "can", "just",
            "also", "been", "is", "are", "am", "was", "were", "has", "do", "did", "after", "before", "even", "when",
            "then", "never", "still", "it", "they", "if", "be");

    private static final Set<String> WISHING = Set.of("want", "wish", "plan", "fancy", "intend", "will", "shall");

    private final Moods moods;

    public Clauses(Moods moods) {
        this.moods = moods;
    }

    /** The clauses of a stretch of one sentence. */
    public List<Clause> in(Passage passage, int from, int to) {
        int[] sentence = {from, to};
        List<ActionSaid> all = Passage.within(passage.actions(), from, to);
        List<ActionSaid> actions = saidOnce(
                passage,
                all.stream()
                        .filter(action -> !measured(action) && !OpeningNote.is(action, all, passage))
                        .toList());
        List<Clause> clauses = new ArrayList<>();
        int start = from;
        int relative = -1;
        for (int i = 0; i < actions.size(); i++) {
            int end = i + 1 == actions.size()
                    ? wish(passage, actions.get(i), to)
                    : boundary(passage, actions.get(i), actions.get(i + 1));
            if (i + 1 < actions.size() && relative(passage, actions.get(i), actions.get(i + 1), end, start)) {
                relative = actions.get(i).start();
                continue;
            }
            if (i + 1 < actions.size() && trailing(passage, actions.get(i), actions.get(i + 1))) {
                relative = actions.get(i + 1).start();
                end = i + 2 == actions.size() ? to : boundary(passage, actions.get(i + 1), actions.get(i + 2));
                add(clauses, passage, actions.get(i), start, end, sentence, relative);
                i++;
                relative = -1;
                start = end;
                continue;
            }
            add(clauses, passage, actions.get(i), start, end, sentence, relative);
            relative = -1;
            start = end;
        }
        shareForward(clauses);
        NotEither.of(passage, clauses);
        ThereWas.of(passage, clauses);
        PutInTwice.of(passage, clauses);
        GotThenSet.of(passage, clauses);
        for (ActionSaid action : all) {
            if (measured(action)) {
                clauses.add(new Clause(
                        action, from, to, sentence, List.of(), moods.of(action, passage, from, to, sentence), -1));
            }
        }
        return clauses;
    }

    /** "Ate the last tomato today next year I want to try peppers": what is wished for is none of what was done. */
    private static int wish(Passage passage, ActionSaid last, int to) {
        return last.form() != Form.PAST
                ? to
                : IntStream.range(last.lastWord() + 1, to - 1)
                        .filter(at ->
                                Set.of("i", "we").contains(passage.word(at)) && WISHING.contains(passage.word(at + 1)))
                        .findFirst()
                        .orElse(to);
    }

    /** "Fed the sprouts some liquid feed", "gave neem cake feed": the second word for it is of the same doing. */
    private static List<ActionSaid> saidOnce(Passage passage, List<ActionSaid> actions) {
        List<ActionSaid> kept = new ArrayList<>();
        for (ActionSaid action : actions) {
            ActionSaid last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            boolean again = last != null
                    && last.form() == Form.PAST
                    && last.action().equals(action.action())
                    && (action.form() == Form.PLAIN || action.form() == null && !action.state())
                    && IntStream.range(last.lastWord() + 1, action.start())
                            .noneMatch(at -> PARTING.contains(passage.word(at)) && !namedAs(passage, at));
            // "Have set small fruits": the same is seen in the words beside it.
            again |= last != null
                    && last.form() == null
                    && action.form() == null
                    && last.action().equals(action.action())
                    && action.action().equals("fruit-set")
                    && action.start() == last.end();
            if (!again) {
                kept.add(action);
            }
        }
        return kept;
    }

    /** "Gave slurry as feed": the word behind the "as" only tells what for. */
    private static boolean namedAs(Passage passage, int at) {
        int next = Set.of("a", "an", "some").contains(passage.word(at + 1)) ? at + 2 : at + 1;
        return passage.word(at).equals("as")
                && Set.of("feed", "food", "fertiliser", "fertilizer", "tonic").contains(passage.word(next));
    }

    /** "Thinned the carrots I sowed in April": the sowing only says which. */
    private static boolean trailing(Passage passage, ActionSaid one, ActionSaid next) {
        int pronoun = next.start() - 1;
        boolean led = Set.of("i", "we", "that").contains(passage.word(pronoun));
        return led
                && next.form() == Form.PAST
                && passage.crops().stream().anyMatch(crop -> crop.end() == pronoun && crop.start() >= one.start());
    }

    /** "Bagged up and froze 2 lb of beans": the first doing has the second one's crops. */
    private static void shareForward(List<Clause> clauses) {
        for (int i = clauses.size() - 2; i >= 0; i--) {
            Clause one = clauses.get(i);
            Clause next = clauses.get(i + 1);
            boolean bare = one.crops().isEmpty()
                    && one.action().form() == Form.PAST
                    && one.to() - one.action().end() <= 1;
            boolean follows = !next.crops().isEmpty()
                    && next.action().form() == Form.PAST
                    && next.crops().get(0).start() > next.action().start();
            if (bare && follows) {
                clauses.set(
                        i,
                        new Clause(one.action(), one.from(), next.to(), one.sentence(), next.crops(), one.mood(), -1));
            }
        }
    }

    /** "Checked the soil round the celery. Damp enough." */
    private static boolean soilLooked(Passage passage, ActionSaid action, int start) {
        int[] last = passage.sentences().stream()
                .filter(sentence -> sentence[1] < start + 1 && sentence[0] < start)
                .reduce((first, second) -> second)
                .orElse(null);
        if (last == null || !action.action().equals("soil-checked")) {
            return false;
        }
        boolean looked = false;
        for (int at = last[0]; at < last[1]; at++) {
            looked |= Set.of("checked", "felt", "poked", "finger", "tested", "feel")
                    .contains(passage.word(at));
        }
        return looked
                && Passage.within(passage.crops(), last[0], last[1]).size() == 1
                && Passage.within(passage.actions(), last[0], last[1]).isEmpty();
    }

    /** "Put up twigs for the peas. Cut them from the hedge": "them" are the twigs. */
    private static boolean thingsBefore(Passage passage, ActionSaid action) {
        return action.action().equals("harvested")
                && passage.actions().stream()
                        .filter(before -> before.end() <= action.start())
                        .reduce((first, second) -> second)
                        .filter(before -> Set.of("supported", "protected").contains(before.action()))
                        .isPresent();
    }

    /** A temperature stands anywhere in a sentence and parts nothing. */
    static boolean measured(ActionSaid action) {
        return action.action().equals("temperature");
    }

    /** "3 wilted and died": one thing told of the three in two words. */
    private static boolean twofold(Passage passage, int and) {
        return passage.word(and).equals("and")
                && passage.word(and - 1).endsWith("ed")
                && passage.numbers().stream().anyMatch(number -> number.end() == and - 1)
                && passage.actions().stream().noneMatch(action -> action.words().get(and - 1));
    }

    /** "Coriander is also sprouted": one verb, whose crop stands before it. */
    private static boolean withinVerb(Passage passage, int also) {
        return passage.word(also).equals("also")
                && Set.of("is", "are", "was", "were", "has", "have", "had").contains(passage.word(also - 1))
                && passage.cropAt(also - 2).isPresent();
    }

    private static int boundary(Passage passage, ActionSaid one, ActionSaid next) {
        // "Lettuce sown Monday, turnips thinned today": a mark that is the last of a doing's own words parts too.
        for (int at = next.start() - 1; at >= one.lastWord(); at--) {
            if (PARTING.contains(passage.word(at)) && !twofold(passage, at) && !withinVerb(passage, at)) {
                return at + 1;
            }
        }
        int start = next.start();
        while (start > one.lastWord() + 1 && LEADING.contains(passage.word(start - 1))) {
            start--;
        }
        return start;
    }

    /** "The beans I sowed last week are up" tells that they are up; the sowing only says which. */
    private static boolean relative(Passage passage, ActionSaid one, ActionSaid next, int boundary, int start) {
        boolean joined = boundary <= next.start() && !PARTING.contains(passage.word(boundary - 1));
        boolean named = passage.crops().stream().anyMatch(crop -> crop.start() >= start && crop.end() <= one.start());
        boolean led = Set.of("i", "we", "that", "which").contains(passage.word(one.start() - 1))
                || passage.crops().stream().anyMatch(crop -> behindKind(passage, crop.end()) == one.start());
        // "12 kale planted out with fleece over them" tells of both.
        boolean besides = passage.word(next.start()).equals("with")
                || passage.word(next.start() - 1).equals("with");
        return joined
                && !besides
                && !passage.word(next.start() - 1).equals("to")
                && named
                && led
                && one.form() == Form.PAST
                && (next.state() || next.form() == null || next.form() == Form.PAST || Tenses.happens(next));
    }

    /** "Corn seed planted in May has not come up": behind the word that says what of the crop is meant. */
    private static int behindKind(Passage passage, int at) {
        return Set.of("seed", "seeds", "plants", "seedlings", "sets", "starts", "plugs")
                        .contains(passage.word(at))
                ? at + 1
                : at;
    }

    private void add(
            List<Clause> clauses,
            Passage passage,
            ActionSaid action,
            int start,
            int end,
            int[] sentence,
            int relative) {
        List<CropSaid> inside = PartGathered.once(
                passage,
                DirectObjects.of(
                        passage,
                        action,
                        Passage.within(passage.crops(), start, end).stream()
                                .filter(crop -> !crop.thing() || supports(passage, action, crop))
                                .toList()));
        int own = endBefore(passage, action, inside, end);
        int verb = action.words().nextSetBit(0);
        List<CropSaid> after =
                inside.stream().filter(crop -> crop.start() >= verb).toList();
        List<CropSaid> before =
                inside.stream().filter(crop -> crop.start() < verb).toList();
        boolean parted = NextCrop.parts(passage, action, before, after);
        if (parted) {
            inside = before;
        }
        boolean takesAfter = !action.state() && !after.isEmpty() && !before.isEmpty() && !parted;
        if (takesAfter && !clauses.isEmpty()) {
            Clause last = clauses.remove(clauses.size() - 1);
            List<CropSaid> more = new ArrayList<>(last.crops());
            more.addAll(before);
            clauses.add(last.with(more));
        }
        boolean named = PointsBackTo.last(passage, sentence[0]).size() == 1
                && start == sentence[0]
                && !Set.of("watered", "fed").contains(action.action());
        if (inside.isEmpty()
                && clauses.isEmpty()
                && !measured(action)
                && !Set.of("ate", "eaten", "eat").contains(passage.word(action.start()))
                && (named && action.form() == Form.PAST && figured(passage, start, end)
                        || soilLooked(passage, action, sentence[0])
                        || PointsBackTo.said(passage, start, end) && !thingsBefore(passage, action))) {
            inside = PointsBackTo.crops(passage, start, end);
        }
        inside = inside.isEmpty() ? PartGathered.of(passage, action, sentence) : inside;
        inside = WithThem.of(passage, action, inside, clauses, sentence[0]);
        Mood mood = CarriedOn.of(moods.of(action, passage, start, end, sentence), action, passage, clauses);
        clauses.add(new Clause(
                action,
                start,
                own,
                sentence,
                takesAfter && (!clauses.isEmpty() || turned(passage, before, verb)) ? after : inside,
                mood,
                relative));
    }

    /** "Leeks planted out, courgettes still indoors": what stands behind a crop of which something else is told is that crop's. */
    private static int endBefore(Passage passage, ActionSaid action, List<CropSaid> meant, int end) {
        int last = meant.isEmpty()
                ? action.end()
                : Math.max(action.end(), meant.get(meant.size() - 1).end());
        return Passage.within(passage.crops(), last, end).stream()
                .filter(crop -> !crop.thing() && DirectObjects.toldOtherwise(passage, action, crop))
                .mapToInt(CropSaid::start)
                .filter(crop -> !meant.isEmpty())
                .map(crop -> {
                    int at = crop;
                    while (at > last && !PARTING.contains(passage.word(at))) {
                        at--;
                    }
                    return at > last ? at : end;
                })
                .findFirst()
                .orElse(end);
    }

    /** "Put the bean poles up": what the poles are for. */
    private static boolean supports(Passage passage, ActionSaid action, CropSaid crop) {
        return action.action().equals("supported")
                && Set.of("poles", "pole", "sticks", "trellis", "wigwam", "cages", "canes", "frame")
                        .contains(passage.word(crop.end()));
    }

    /** "Went to put the beans out but it rained so I watered the cabbages": the beans are of what came before. */
    private static boolean turned(Passage passage, List<CropSaid> before, int verb) {
        int last = before.get(before.size() - 1).end();
        boolean turn = false;
        boolean own = false;
        for (int at = last; at < verb; at++) {
            turn |= Set.of("but", "so", "then", "instead").contains(passage.word(at));
            own |= Set.of("i", "we").contains(passage.word(at));
        }
        return own && (turn || toldOf(passage, last, verb));
    }

    /** "The beans are coming on well, and on Thursday I pricked out the tomatoes": of the beans that was told before the comma. */
    private static boolean toldOf(Passage passage, int crop, int verb) {
        boolean tells = Set.of("are", "is", "were", "was", "have", "has", "look", "looks", "need", "seem")
                .contains(passage.word(crop));
        return tells
                && IntStream.range(crop, verb)
                        .anyMatch(at -> passage.tokens().get(at).mark());
    }

    /** "Courgettes are going mad. Picked 6 today." */
    private static boolean figured(Passage passage, int start, int end) {
        return !passage.counts(start, end).isEmpty()
                || !Passage.within(passage.quantities(), start, end).isEmpty();
    }
}
