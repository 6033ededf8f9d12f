package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;

/**
 * Of the crops in the stretch of a doing those that it was done to: not the ones that only tell where ("between the broccoli rows") and
 * not those of which something else is told ("sowed carrots, the leaves on my kale are purple").
 */
final class DirectObjects {
    private static final Set<String> WHERE = Set.of(
            "between",
            "beside",
            "besides",
            "alongside",
            "behind",
            "under",
            "underneath",
            "beneath",
            "near",
            "among",
            "amongst",
            "opposite",
            "against",
            "where",
            "round",
            "around",
            "by",
            "beyond",
            "past",
            "replacing",
            "following",
            "after",
            "before",
            "than",
            "like");
    /** The last words of "next to", "instead of", "in front of", "at the foot of", "out of the way of". */
    private static final Set<String> WHERE_OF =
            Set.of("instead", "front", "place", "foot", "side", "end", "top", "way", "edge");

    private static final Set<String> WHERE_TO = Set.of("next", "close", "adjacent", "due", "thanks", "opposite");
    private static final Set<String> SMALL = Set.of(
            "the",
            "my",
            "our",
            "those",
            "these",
            "a",
            "an",
            "some",
            "row",
            "rows",
            "of",
            "bed",
            "old",
            "last",
            "two",
            "first",
            "second",
            "young",
            "tall",
            "existing",
            "early",
            "late",
            "spent",
            "autumn",
            "spring",
            "other",
            "both",
            "all");
    private static final Set<String> PLACING = Set.of(
            "sown",
            "planted",
            "planted-out",
            "pricked-out",
            "potted-on",
            "moved",
            "harvested",
            "thinned",
            "emerged",
            "died",
            "stored",
            "cured",
            "flowering");
    private static final Set<String> FOR_ITSELF = Set.of(
            "sown", "planted", "planted-out", "pricked-out", "harvested", "thinned", "died", "stored", "emerged");

    /** "Leeks planted out, courgettes still indoors". */
    private static final Set<String> STAYING =
            Set.of("still", "waiting", "stay", "stays", "staying", "next", "later", "left", "can", "will", "not");

    /** "Beans dead, courgettes fine". */
    private static final Set<String> FARING = Set.of(
            "fine",
            "ok",
            "okay",
            "alright",
            "good",
            "great",
            "well",
            "healthy",
            "happy",
            "lovely",
            "perfect",
            "rubbish",
            "poor",
            "slow",
            "tiny",
            "small",
            "alive",
            "safe",
            "thriving",
            "swelling",
            "sulking",
            "struggling",
            "doing",
            "growing",
            "coming",
            "untouched",
            "unharmed",
            "unscathed",
            "spared",
            "intact",
            "did",
            "do",
            "does");

    /** "Fed the tomatoes but forgot the courgettes". */
    private static final Set<String> LEFT_OUT = Set.of("forgot", "skipped", "missed", "neglected", "forgetting");

    /** What tells of a crop how it stands. */
    private static final Set<String> STAND =
            Set.of("are", "is", "look", "looks", "looking", "seem", "seems", "need", "needs");

    private static final Set<String> FINITE =
            Set.of("are", "is", "have", "has", "look", "looks", "looking", "seem", "seems", "were", "need", "needs");
    /** "The onion bed" is a place. */
    private static final Set<String> BEDS = Set.of("bed", "beds", "patch", "cage", "border", "plot");

    private static final Set<String> NOTHING =
            Set.of("nowt", "nothing", "none", "zilch", "nada", "zip", "zero", "sign", "joy", "peep", "sausage");

    /** Past forms that do not end in "ed". */
    private static final Set<String> OTHER_VERBS = Set.of(
            "put", "gave", "made", "took", "ran", "went", "bought", "had", "built", "paid", "rang", "met", "saw",
            "found", "left", "lost", "swept", "sent", "told", "held", "hung", "threw", "caught", "brought", "bent",
            "kept", "lent");

    private static final Set<String> GOING = Set.of(
            "starting",
            "climbing",
            "coming",
            "looking",
            "growing",
            "going",
            "getting",
            "doing",
            "waiting",
            "running",
            "struggling",
            "sulking",
            "catching",
            "reaching",
            "romping",
            "needing",
            "filling",
            "swelling",
            "sitting",
            "thinking");

    private static final int REACH = 5;

    private DirectObjects() {}

    static List<CropSaid> of(Passage passage, ActionSaid action, List<CropSaid> inside) {
        List<CropSaid> meant =
                inside.stream().filter(crop -> !excepted(passage, crop)).toList();
        if (meant.isEmpty()) {
            return meant;
        }
        meant = meant.stream()
                .filter(crop -> !ofAnotherVerb(passage, action, crop))
                .toList();
        meant = meant.stream()
                .filter(crop -> !beneficiary(passage, action, crop))
                .toList();
        List<CropSaid> all = meant;
        meant = all.stream()
                .filter(crop -> !turnedFrom(passage, action, crop, all))
                .toList();
        List<CropSaid> kept = meant.stream()
                .filter(crop -> !(PLACING.contains(action.action()) && onlyWhere(passage, action, crop)))
                .filter(crop -> !toldOtherwise(passage, action, crop))
                .toList();
        return kept;
    }

    /** "Picked not one leek", "not a single bean up". */
    private static boolean notOne(Passage passage, int at) {
        boolean single =
                passage.word(at).equals("single") && passage.word(at - 1).equals("a");
        return passage.word(at).equals("one") && passage.word(at - 1).equals("not")
                || single && passage.word(at - 2).equals("not");
    }

    /** "All up except the beans", "the chard is up but not the beans". */
    private static boolean excepted(Passage passage, CropSaid crop) {
        int before = crop.start() - 1;
        int at = Set.of("the", "my", "our", "any", "those").contains(passage.word(before)) ? before - 1 : before;
        boolean not = passage.word(at).equals("not")
                && (Set.of("but", "and", ",", "-", "", ".", "\n", "!").contains(passage.word(at - 1))
                        // "Watered the beets not the carrots".
                        || passage.crops().stream().anyMatch(other -> !other.thing() && other.end() == at));
        boolean nothing = Set.of("from", "of", "on", "with", "off").contains(passage.word(at))
                && NOTHING.contains(passage.word(at - 1));
        boolean none = passage.word(at).equals("no") && !passage.word(at - 1).equals("sorry") || notOne(passage, at);
        boolean missed = passage.word(crop.end()).equals("a")
                && passage.word(crop.end() + 1).equals("miss");
        boolean denied = missed
                || Set.of("nup", "nope", "nah", "nil", "none", "nowt", "nothing", "zero", "zilch")
                        .contains(passage.word(crop.end()))
                || notSo(passage, crop.end());
        return not
                || none
                || nothing
                || denied
                || Set.of("except", "excluding", "barring").contains(passage.word(at))
                || LEFT_OUT.contains(passage.word(at))
                || passage.word(at).equals("but")
                        && Set.of("all", "everything", "everyone").contains(passage.word(at - 1))
                || passage.word(at).equals("for") && passage.word(at - 1).equals("except")
                || passage.word(at).equals("from") && passage.word(at - 1).equals("apart");
    }

    /** "Radishes up but melons not", "the peas are not yet": the crop is denied what was told of the others. */
    private static boolean notSo(Passage passage, int behind) {
        int at = Set.of("are", "is", "have", "has", "did", "do").contains(passage.word(behind)) ? behind + 1 : behind;
        int next = at + 1;
        return passage.word(at).equals("not")
                && (next >= passage.size()
                        || passage.tokens().get(next).mark()
                        || Set.of("yet", "though", "so", "quite", "and", "but", "however")
                                .contains(passage.word(next)));
    }

    private static boolean onlyWhere(Passage passage, ActionSaid action, CropSaid crop) {
        boolean named = BEDS.contains(passage.word(crop.end()))
                && !passage.numberedPlace(crop.end()); // "10 runner beans bed 2" is where they went.
        if (named && alsoNamed(passage, action, crop)) {
            return true;
        }
        for (int at = crop.start() - 1; at >= Math.max(0, crop.start() - REACH); at--) {
            String word = passage.word(at);
            if (action.words().get(at)) {
                return false;
            }
            if (WHERE.contains(word)
                    || word.equals("to") && WHERE_TO.contains(passage.word(at - 1))
                    || word.equals("of") && WHERE_OF.contains(passage.word(at - 1))) {
                return true;
            }
            if (!SMALL.contains(word)) {
                return false;
            }
        }
        return false;
    }

    /** "Fed the peppers, and sorted a tray of lettuce out": a verb that is none of ours has the crop after it. */
    private static boolean ofAnotherVerb(Passage passage, ActionSaid action, CropSaid crop) {
        for (int at = action.lastWord() + 1; at < crop.start() - 2; at++) {
            boolean joint = Set.of(",", "and", "then", "but", "-", "so").contains(passage.word(at));
            int verb =
                    Set.of("i", "we", "also", "then", "just", "and").contains(passage.word(at + 1)) ? at + 2 : at + 1;
            String word = passage.word(verb);
            boolean past = word.length() > 4 && word.endsWith("ed") || OTHER_VERBS.contains(word);
            boolean ofNext = at > action.lastWord() + 1;
            boolean object = ofNext
                    && (Set.of("a", "an", "the", "my", "our", "some", "another", "them", "it", "off", "in", "out", "up")
                                    .contains(passage.word(verb + 1))
                            || passage.end("n", verb + 1) > 0);
            if (joint
                    && past
                    && (object || word.equals("gave")) // "Gave light feed to the potato also".
                    && verb < crop.start() - 1
                    && !passage.cropAt(verb).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** "The parsnips have done nothing but the radish is up": what stands before the turn is told otherwise. */
    private static boolean turnedFrom(Passage passage, ActionSaid action, CropSaid crop, List<CropSaid> all) {
        CropSaid next = all.stream()
                .filter(other -> other.start() >= crop.end() && other.end() <= action.lastWord())
                .findFirst()
                .orElse(null);
        boolean told = false;
        for (int at = crop.end(); next != null && at < next.start(); at++) {
            if (Set.of("but", "while", "whereas", "although", "though").contains(passage.word(at))) {
                return told;
            }
            told |= FINITE.contains(passage.word(at)) || OTHER_VERBS.contains(passage.word(at));
        }
        return false;
    }

    /** "Stuck twigs in for the peas to climb", "put up a frame for the beans": it was done for them, not to them. */
    private static boolean beneficiary(Passage passage, ActionSaid action, CropSaid crop) {
        int at = crop.start() - 1;
        while (at > action.start()
                && SMALL.contains(passage.word(at))
                && !passage.word(at).equals("of")) {
            at--;
        }
        return FOR_ITSELF.contains(action.action())
                && at > action.lastWord()
                && at < crop.start() - 1
                && passage.word(at).equals("for")
                && !action.words().get(at);
    }

    private static boolean alsoNamed(Passage passage, ActionSaid action, CropSaid crop) {
        return passage.crops().stream()
                .anyMatch(other -> other != crop && !other.thing() && other.start() >= action.start());
    }

    /** "Potatoes flowering and the runners just starting to climb". */
    private static boolean startsOwn(Passage passage, ActionSaid action, CropSaid crop) {
        int at = crop.end();
        while (Set.of("just", "now", "only", "still", "already", "both", "all").contains(passage.word(at))) {
            at++;
        }
        int joint = crop.start() - 1;
        joint -= Set.of("the", "my", "our").contains(passage.word(joint)) ? 1 : 0;
        boolean going = GOING.contains(passage.word(at))
                && passage.actions().stream()
                        .noneMatch(other -> other.words().get(crop.end()) || other.covers(crop.end()));
        return going
                && crop.start() > action.lastWord()
                && Set.of("and", ",", "but").contains(passage.word(joint));
    }

    /** A crop after a comma that is itself the subject of what follows. */
    static boolean toldOtherwise(Passage passage, ActionSaid action, CropSaid crop) {
        boolean subject = FINITE.contains(passage.word(crop.end()))
                || FARING.contains(passage.word(crop.end()))
                || STAYING.contains(passage.word(crop.end()))
                || passage.word(crop.end()).equals("no")
                || NOTHING.contains(passage.word(crop.end())) // "12 tomatoes up, chillies no sign".
                || FINITE.contains(passage.word(crop.end() + 1))
                        && !passage.tokens()
                                .get(Math.min(crop.end(), passage.size() - 1))
                                .mark();
        if (startsOwn(passage, action, crop)) {
            return true;
        }
        if (!subject || crop.start() < action.end() || action.covers(crop.end())) {
            return false;
        }
        int joint = crop.start() - 1;
        joint -= Set.of("the", "my", "our", "some").contains(passage.word(joint)) ? 1 : 0;
        if (passage.word(joint).equals("and") && STAND.contains(passage.word(crop.end()))) {
            return true; // "Fed the tomatoes and the peppers are budding".
        }
        for (int at = crop.start() - 1; at >= action.lastWord(); at--) {
            if (Set.of(",", "-", "but", "while", "though", "although", "because")
                    .contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
