package bothy.reading.grammar;

import bothy.almanac.Words;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tells what was done from what was not, is only meant, or is another's, by the words around a verb. */
public final class Moods {
    private static final String FILE = "language";

    /** What they deny stands right behind them: "stopped watering", "nearly picked". */
    private static final Set<String> STOPPING =
            Set.of("stopped", "stop", "skipped", "missed", "avoid", "avoided", "almost", "nearly", "practically");

    private static final Set<String> OURS = Set.of("i", "we", "my", "our", "me", "us", "mine", "ours");

    /** Past forms that are plain forms too. */
    private static final Set<String> PLAIN_TOO = Set.of("come", "put", "set", "cut", "run", "spread", "burst");

    /** What comes back tells of this season too: "every year", "each spring", "used to the sun". */
    private static final Set<String> RETURNING = Set.of("every", "each", "used", "most");

    private static final Set<String> NOW = Set.of("again", "now", "still", "since", "too", "today");
    /** Who did a thing without leave is told of the trouble: "someone has cut the tops off". */
    private static final Set<String> ANYBODY = Set.of("someone", "somebody", "you", "she", "he");
    /** Whoever is the subject of a clause stands behind so few words of it at most: "so then my neighbour …". */
    private static final int AT_THE_HEAD = 2;

    private final Map<String, PhraseBook<String>> books = new HashMap<>();
    private final Set<String> vocabulary = new HashSet<>();
    private final Comparisons comparisons;

    public Moods(Words words) {
        List<String> names = words.list(FILE, "/names");
        PhraseFile file = new PhraseFile(words, FILE, Map.of("name", names));
        for (String sort : List.of(
                "negation",
                "intent",
                "supposing",
                "others",
                "household",
                "said",
                "pastseason",
                "habits",
                "comparing",
                "sarcasm",
                "reporting",
                "listing",
                "done-anyway")) {
            PhraseBook<String> book = file.book("/" + sort, sort);
            books.put(sort, book);
            vocabulary.addAll(book.vocabulary());
        }
        names.forEach(vocabulary::remove); // No slip of the pen is mended to a name.
        comparisons = new Comparisons(books.get("comparing"));
    }

    public Set<String> vocabulary() {
        return vocabulary;
    }

    /**
     * The mood of a doing.
     *
     * @param begin where its clause starts
     * @param to where its clause ends
     * @param sentence the whole sentence's stretch
     */
    public Mood of(ActionSaid action, Passage passage, int begin, int to, int[] sentence) {
        int from = afterBut(passage, afterReport(passage, begin, action.words().nextSetBit(0)), action);
        if (has("sarcasm", passage, 0, passage.size()) || told(passage, sentence, action)) {
            return Mood.NOT_OURS;
        }
        if (hasBeside("pastseason", passage, sentence, action)
                || hasBeside("habits", passage, sentence, action)
                || Relative.only(passage, action, sentence)
                || Relative.conceded(passage, action, begin)) {
            return Mood.NOT_OURS;
        }
        if (Forecast.only(passage, sentence, action) || others(passage, from, action)) {
            return Mood.NOT_OURS;
        }
        return action.form() != Form.PAST && listed(passage, sentence) ? Mood.MEANT : ours(action, passage, from, to);
    }

    /** Whether such words stand in the sentence and not only in what the doing is compared with. */
    private boolean hasBeside(String sort, Passage passage, int[] sentence, ActionSaid action) {
        return books.get(sort).all(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .anyMatch(found -> !OtherUses.counted(passage, found)
                        && !OtherUses.addressed(passage, found)
                        && !(sort.equals("pastseason") && OtherUses.parted(passage, found, action))
                        && !comparisons.hold(found, action, passage, sentence));
    }

    /** "Jobs for Saturday: sow peas, feed the toms": a list of what is to be done. */
    private boolean listed(Passage passage, int[] sentence) {
        return books.get("listing").all(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .anyMatch(found -> found.start() - sentence[0] <= 2);
    }

    /** "Should have got them in, but they are up": what stands before a "but" reaches no further. */
    private static int afterBut(Passage passage, int from, ActionSaid action) {
        for (int at = action.words().nextSetBit(0) - 1; at > from; at--) {
            boolean so = passage.word(at).equals("so") && Set.of("i", "we").contains(passage.word(at + 1));
            if (so) {
                return at + 1;
            }
            if (passage.word(at).equals("but")
                    && !passage.word(at - 1).equals("nothing")
                    && !passage.word(at - 1).equals("all")) {
                return at + 1;
            }
        }
        return from;
    }

    /** "I should like to record that" only opens what is told; where it ends, or where the clause starts when nothing opens it. */
    private int afterReport(Passage passage, int begin, int verb) {
        return begin >= verb
                ? begin
                : books.get("reporting").all(passage.tokens(), begin, verb, passage).stream()
                        .mapToInt(Found::end)
                        .max()
                        .orElse(begin);
    }

    /** Whether something seen is told of the grower's own plants and of now. */
    public boolean here(Passage passage, int[] sentence, int start) {
        return !has("pastseason", passage, sentence[0], comparisons.behind(passage, start, sentence[1]))
                && !has("said", passage, sentence[0], start)
                && !has("sarcasm", passage, 0, passage.size())
                && (!has("others", passage, sentence[0], start) || has("household", passage, sentence[0], sentence[1]))
                && (!theirs(passage, sentence[0], sentence[1])
                        || says(passage, sentence[0], sentence[1], OURS)); // "Jean has greenfly on her beans."
    }

    /** Whether a clause tells of a season that is over: "caterpillars got the lot last year", and not "worse than last year". */
    public boolean ofAnotherYear(Passage passage, int from, int to) {
        return books
                .get("pastseason")
                .all(passage.tokens(), from, comparisons.behind(passage, from, to), passage)
                .stream()
                .anyMatch(found -> !RETURNING.contains(passage.word(found.start()))
                        && !OtherUses.counted(passage, found)
                        && !says(passage, from, to, NOW));
    }

    /** Whether a clause tells of somebody else's plants: somebody is its subject, "next door has mildew", or owns them, "all his tomatoes". */
    public boolean ofAnotherGrower(Passage passage, int from, int to) {
        int compared = comparisons.behind(passage, from, to);
        boolean another = books.get("others").all(passage.tokens(), from, compared, passage).stream()
                .anyMatch(found -> found.start() - from <= AT_THE_HEAD
                        && !ANYBODY.contains(passage.word(found.start()))
                        && !OtherUses.addressed(passage, found)
                        && !says(passage, found.end(), to, OURS));
        return (another || theirs(passage, from, to) && !says(passage, from, to, OURS))
                && !has("household", passage, from, to);
    }

    /** Whether a clause speaks of the grower's own again. */
    public boolean ofOurs(Passage passage, int from, int to) {
        return says(passage, from, to, OURS);
    }

    private Mood ours(ActionSaid action, Passage passage, int from, int to) {
        int verb = action.words().nextSetBit(0);
        boolean over = action.form() == Form.PAST && !says(passage, from, verb, Set.of("if", "wish", "unless"));
        if (has("supposing", passage, over ? afterComma(passage, from, verb) : from, verb)
                || ((action.state() || PLAIN_TOO.contains(passage.word(verb)))
                        && awaited(passage, from, verb, passage.size()))) {
            return Mood.NOT_OURS;
        }
        int near = afterComma(passage, from, verb);
        boolean negated = near < verb
                        && books.get("negation").all(passage.tokens(), near, verb, passage).stream()
                                .anyMatch(found -> !OtherUses.counted(passage, found)
                                        && !(STOPPING.contains(passage.word(found.start())) && verb - found.end() > 2))
                || negatedWithin(action, passage);
        boolean anyway = endsWith("done-anyway", passage, from, verb);
        boolean inTime = Set.of("nearly", "almost").contains(passage.word(verb - 3))
                && passage.word(verb - 2).equals("forgot");
        if (inTime) {
            return Mood.DONE;
        }
        if (negated || noneBehind(action, passage)) {
            return Mood.NOT_OURS;
        }
        if (meant(action, passage, from, verb) && !anyway) {
            return Mood.MEANT;
        }
        if (action.form() == null) {
            return Mood.DONE;
        }
        return Tenses.mood(action, passage, from, to, anyway);
    }

    /** "Want to sow"; what has the form of the past is meant only where the words stand right before it: "to be planted". */
    private boolean meant(ActionSaid action, Passage passage, int from, int verb) {
        return from < verb
                && books.get("intent").all(passage.tokens(), from, verb, passage).stream()
                        .anyMatch(found -> !OtherUses.counted(passage, found)
                                && !OtherUses.beside(passage, found)
                                && !OtherUses.towards(passage, found)
                                && (action.form() != Form.PAST
                                        || PLAIN_TOO.contains(passage.word(verb))
                                        || !parted(passage, found.end(), verb)));
    }

    private static boolean parted(Passage passage, int from, int to) {
        for (int at = from; at < to; at++) {
            if (Set.of(",", "but", "so", "-", "(").contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Flowering: none", "sowing - nil". */
    private static boolean noneBehind(ActionSaid action, Passage passage) {
        int at = action.lastWord() + 1;
        if (action.form() == Form.PAST && Set.of("nowt", "nothing", "none").contains(passage.word(at))) {
            return true;
        }
        boolean mark = Set.of(":", "-", "=").contains(passage.word(at));
        return mark
                && Set.of("none", "nil", "nothing", "nowt", "zero", "no", "n/a", "nada")
                        .contains(passage.word(at + 1));
    }

    /** "When the squash are up I'll pot them on" tells nothing yet. */
    private static boolean awaited(Passage passage, int from, int verb, int end) {
        boolean when = false;
        for (int at = from; at < verb; at++) {
            when |= passage.word(at).equals("when");
        }
        boolean later = false;
        for (int at = verb; at < end; at++) {
            later |= Set.of("will", "shall", "can", "should").contains(passage.word(at));
        }
        return when && later;
    }

    /** A "no" before a comma or a "but" reaches no further. */
    private static int afterComma(Passage passage, int from, int verb) {
        int at = verb;
        while (at > from
                && !Set.of(",", "but").contains(passage.word(at - 1))
                && !(passage.word(at - 1).equals("so")
                        && verb - at <= 2 // "Nothing came up so we sowed again".
                        && !passage.word(at).equals("much"))) { // "Have not so much as watered a pot".
            at--;
        }
        return at;
    }

    private static boolean negatedWithin(ActionSaid action, Passage passage) {
        for (int at = action.start(); at < action.end(); at++) {
            if (Set.of("not", "no", "never").contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    private boolean told(Passage passage, int[] sentence, ActionSaid action) {
        return has("said", passage, afterBut(passage, sentence[0], action), action.start()) || quoted(passage, action);
    }

    /** Words between quotation marks are another's, unless they are only a name. */
    private static boolean quoted(Passage passage, ActionSaid action) {
        int before = 0;
        int after = 0;
        for (int at = 0; at < passage.size(); at++) {
            if (passage.word(at).equals("\"")) {
                before += at < action.start() ? 1 : 0;
                after += at >= action.end() ? 1 : 0;
            }
        }
        return before % 2 != 0 && after > 0;
    }

    private boolean others(Passage passage, int from, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        int near = verb - 1;
        while (near > from
                && Set.of("was", "were", "have", "had", "just", "been", "also", "then", "am")
                        .contains(passage.word(near))) {
            near--;
        }
        if (Set.of("i", "we").contains(passage.word(near))) {
            return false; // "The man came about the meter while I was tying in the tomatoes."
        }
        if (OthersThenMe.denied(passage, action, from)
                || OthersThenMe.seen(passage, action, from)
                || OthersThenMe.theirs(passage, action)
                || OthersThenMe.hasHad(passage, action)) {
            return true;
        }
        boolean another = from < verb
                && books.get("others").all(passage.tokens(), from, verb, passage).stream()
                        .anyMatch(found -> !OtherUses.addressed(passage, found) && !OtherUses.comeFrom(passage, found));
        return (another || anothers(passage, from, verb, verb + 1)) && !has("household", passage, from, passage.size());
    }

    private static boolean says(Passage passage, int from, int to, Set<String> words) {
        for (int at = from; at < to; at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Sarah sowed her tomatoes": what belongs to her she did. */
    private static boolean anothers(Passage passage, int from, int verb, int end) {
        return !says(passage, from, verb, OURS)
                && (verb > from && Set.of("her", "his").contains(passage.word(end)) || theirs(passage, from, verb));
    }

    /** "His toms are red". */
    private static boolean theirs(Passage passage, int from, int verb) {
        return passage.crops().stream()
                .anyMatch(crop -> crop.start() > from
                        && crop.end() <= verb
                        && Set.of("his", "her").contains(passage.word(crop.start() - 1)));
    }

    private boolean has(String sort, Passage passage, int from, int to) {
        return from < to
                && books.get(sort).all(passage.tokens(), from, to, passage).stream()
                        .anyMatch(found -> !OtherUses.counted(passage, found) && !OtherUses.addressed(passage, found));
    }

    private boolean endsWith(String sort, Passage passage, int from, int to) {
        for (Found<String> found : books.get(sort).all(passage.tokens(), from, Math.max(from, to), passage)) {
            if (to - found.end() <= 1) {
                return true;
            }
        }
        return false;
    }
}
