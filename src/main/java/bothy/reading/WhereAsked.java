package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds where a sentence begins to ask. */
final class WhereAsked {
    /** So many words may stand between the forgetting and what was forgotten. */
    private static final int FORGOTTEN_REACH = 5;

    private static final String FILE = "questions";
    private static final Set<String> EXCLAIMED = Set.of(
            "lovely",
            "nice",
            "great",
            "exciting",
            "wonderful",
            "annoying",
            "sad",
            "cute",
            "funny",
            "beautiful",
            "brilliant",
            "amazing",
            "cool");
    private static final Set<String> INVERTED = Set.of(
            "do", "does", "is", "are", "was", "can", "could", "should", "shall", "will", "would", "may", "might",
            "have", "has", "am", "how", "what", "when", "which", "why", "where");
    private static final Set<String> SUBJECTS = Set.of(
            "i", "we", "it", "they", "that", "this", "these", "those", "you", "the", "my", "our", "there", "anyone",
            "to", "now", "next", "should", "do", "can", "is", "are");

    /** Persons and stuffs that are asked of without an article and end in no "s". */
    private static final Set<String> MASSES = Set.of(
            "someone",
            "anybody",
            "everyone",
            "my",
            "your",
            "coffee",
            "chicken",
            "seaweed",
            "comfrey",
            "wood",
            "tomato");

    private static final Set<String> OBJECTS =
            Set.of("the", "it", "them", "my", "our", "a", "an", "some", "these", "those", "to", "over");

    private static final int REPORT_REACH = 30;

    private final PhraseBook<String> cues = new PhraseBook<>();
    private final PhraseBook<String> marked = new PhraseBook<>();
    private final PhraseBook<String> reports = new PhraseBook<>();
    private final PhraseBook<Question> always = new PhraseBook<>();
    private final Set<String> leading;
    /** After "will" or "can" at the head of a sentence these tell of the grower: "will sow more", "can confirm". */
    private final Set<String> withoutSubject;

    WhereAsked(Words words, Map<String, List<String>> groups) {
        leading = Set.copyOf(words.list(FILE, "/leading"));
        withoutSubject = Set.copyOf(words.list(FILE, "/without-subject"));
        Map.of("/cues", cues, "/marked", marked, "/reports", reports).forEach((at, book) -> words.list(FILE, at)
                .forEach(text -> Questions.add(words, at, text, groups, book, text)));
        words.lists(FILE, "/always")
                .forEach((name, texts) -> texts.forEach(text -> Questions.add(
                        words, "/always/" + name, text, groups, always, Questions.question(words, name))));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(cues.vocabulary());
        all.addAll(marked.vocabulary());
        all.addAll(always.vocabulary());
        return all;
    }

    /** The token at which a sentence starts to ask, or −1 when it does not ask. */
    int begins(Passage passage, int[] sentence) {
        if (!reports.all(passage.tokens(), sentence[0], Math.min(sentence[1], sentence[0] + REPORT_REACH), passage)
                .isEmpty()) {
            return -1;
        }
        boolean mark = sentence[1] < passage.size() && passage.word(sentence[1]).equals("?");
        int begins = first(cues.all(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .filter(cue -> !whatever(passage, cue) && !marvels(passage, cue) && !date(passage, cue))
                .filter(cue -> !SoundsAsking.only(passage, cue.start(), mark))
                .filter(cue -> mark
                        || !relative(passage, sentence, cue)
                                && !aside(passage, sentence, cue)
                                && !withoutSubject(passage, cue)
                                && !notKept(passage, sentence, cue))
                .toList());
        for (Found<String> cue : marked.all(passage.tokens(), sentence[0], sentence[1], passage)) {
            if (marvels(passage, cue)
                    || !mark && (withoutSubject(passage, cue) || notKept(passage, sentence, cue))
                    || date(passage, cue)
                    || accomplished(passage, cue)
                    || SoundsAsking.only(passage, cue.start(), mark)) {
                continue;
            }
            if (mark
                    || opens(passage, sentence[0], cue.start()) && asksThere(passage, cue)
                    || turnsTo(passage, cue) && asksThere(passage, cue)) {
                begins = begins < 0 ? cue.start() : Math.min(begins, cue.start());
            }
        }
        if (begins >= 0 || !mark) {
            return command(passage, sentence) ? sentence[0] : begins;
        }
        return lastPart(passage, sentence);
    }

    /** "It stays limp no matter how much I water": whatever it be, nothing is asked. */
    private static boolean whatever(Passage passage, Found<String> cue) {
        return passage.word(cue.start() - 1).equals("matter")
                && passage.word(cue.start() - 2).equals("no");
    }

    /** "Frost again, would you believe": nobody is asked. */
    private static boolean marvels(Passage passage, Found<String> cue) {
        int at = cue.start() + 1;
        boolean scoffs = passage.word(at).equals("my")
                && Set.of("foot", "eye", "arse", "backside", "hat", "elbow")
                        .contains(passage.word(at + 1)); // "May my foot."
        return scoffs
                || Set.of("you", "ye", "u", "yous", "anyone").contains(passage.word(at))
                        && Set.of("believe", "credit", "imagine").contains(passage.word(at + 1));
    }

    /** "Did it, 60 leeks planted out": what follows says what was done. */
    private static boolean accomplished(Passage passage, Found<String> cue) {
        int at = cue.start();
        boolean did = Set.of("did", "done").contains(passage.word(at))
                && Set.of("it", "them", "that", "this").contains(passage.word(at + 1));
        return did
                && (Set.of(",", "-", "!", ":", "and", "the").contains(passage.word(at + 2))
                        || passage.numbers().stream().anyMatch(number -> number.start() == at + 2)
                        || passage.cropAt(at + 2).isPresent());
    }

    /** "Might do some more next weekend": who tells of a plan leaves the "I" out. */
    private static boolean withoutSubject(Passage passage, Found<String> cue) {
        boolean cannot = passage.word(cue.start()).equals("can")
                && passage.word(cue.start() + 1).equals("not"); // "Cannot remember."
        return cannot
                || Set.of("might", "may", "will", "could", "should").contains(passage.word(cue.start()))
                        && Set.of(
                                        "do", "try", "have", "go", "get", "give", "put", "pick", "start", "need",
                                        "leave", "wait", "make", "just")
                                .contains(passage.word(cue.start() + 1));
    }

    /** "Forgot to write down how many", "one day last week, forget which": what is not known any more, and not asked. */
    private static boolean notKept(Passage passage, int[] sentence, Found<String> cue) {
        int end = cue.end();
        while (Set.of("many", "much", "day", "one", "ones", "exactly", "now", "though")
                .contains(passage.word(end))) {
            end++;
        }
        boolean closes = end >= sentence[1] || passage.tokens().get(end).mark();
        boolean past = Set.of("they", "it", "that", "those", "i", "we").contains(passage.word(cue.end()))
                && Set.of("were", "was", "did", "put", "sowed", "planted").contains(passage.word(cue.end() + 1));
        return (closes || past)
                && IntStream.range(Math.max(sentence[0], cue.start() - FORGOTTEN_REACH), cue.start())
                        .anyMatch(at -> Set.of("forgot", "forget", "forgotten", "lost", "remember", "recall")
                                .contains(passage.word(at)));
    }

    /** "On 16 May we had frost": the month, not the verb. */
    private static boolean date(Passage passage, Found<String> cue) {
        return passage.days().stream().anyMatch(day -> day.start() <= cue.start() && cue.start() < day.end());
    }

    /** "It was one evening, I could not swear to which, that I sowed …", "er what else oh": nobody is asked. */
    private static boolean aside(Passage passage, int[] sentence, Found<String> cue) {
        boolean told = passage.actions().stream()
                .anyMatch(action -> action.start() > cue.end()
                        && action.end() <= sentence[1]
                        && action.form() == Form.PAST
                        && Set.of("i", "we").contains(passage.word(action.start() - 1)));
        boolean closed = passage.word(cue.end()).equals(",") && told;
        boolean musing = passage.word(cue.start()).equals("what")
                && passage.word(cue.start() + 1).equals("else")
                && Set.of("oh", "um", "er", "ah", "yes", "ok", "and", "", ",", "-")
                        .contains(passage.word(cue.start() + 2));
        return closed || musing;
    }

    /** "…, which is more than I can say": goes on with what was told and asks nothing. */
    private boolean relative(Passage passage, int[] sentence, Found<String> cue) {
        boolean which = passage.word(cue.start()).equals("which") && !opens(passage, sentence[0], cue.start());
        boolean remains = passage.word(cue.start()).startsWith("what")
                && !opens(passage, sentence[0], cue.start())
                && Set.of("over", "on", "onto", "with", "of", "from", "round", "around", "under")
                        .contains(passage.word(cue.start() - 1))
                && IntStream.range(cue.start() + 1, cue.start() + 4)
                        .anyMatch(at -> Set.of("left", "remains", "remained").contains(passage.word(at)));
        int whole = cue.start() - 2; // "20 staked, 5 of which needed two canes".
        boolean share = passage.word(cue.start()).equals("which")
                && passage.word(cue.start() - 1).equals("of")
                && (Set.of("some", "most", "many", "all", "both", "few", "one", "half", "none", "two", "three")
                                .contains(passage.word(whole))
                        || passage.numbers().stream().anyMatch(number -> number.end() == whole + 1));
        return share
                || remains // "Straw over what is left of them".
                || which
                        && (passage.word(cue.start() - 1).equals(",")
                                        && passage.actions().stream().anyMatch(action -> action.end() <= cue.start())
                                || Set.of("is", "are", "was", "were", "has", "have", "will", "can", "had")
                                        .contains(passage.word(cue.start() + 1)));
    }

    /** "Was all set to dig": the grower left out the "I". */
    private static final Set<String> OWN_DOING = Set.of(
            "all",
            "going",
            "about",
            "set",
            "ready",
            "just",
            "hoping",
            "planning",
            "thinking",
            "meaning",
            "not",
            "out",
            "away",
            "busy",
            "up",
            "in",
            "gonna",
            "so",
            "too",
            "only",
            "supposed",
            "meant");

    /** At the head of a sentence "when" and "how" may also tell; an inverted verb asks. */
    private boolean asksThere(Passage passage, Found<String> cue) {
        String next = passage.word(cue.start() + 1);
        return switch (passage.word(cue.start())) {
            case "when", "enough", "worth", "too" -> false;
            case "ought" -> !next.equals("to");
            case "am" -> next.equals("i");
            case "was", "were" -> !OWN_DOING.contains(next);
            // "Ain't put a drop on them all week."
            case "is", "are", "have", "has" ->
                !next.equals("not") || passage.message().contains("?");
            case "can", "might", "may" -> namesWho(passage, cue.start() + 1);
            case "would", "will", "could", "should", "shall" ->
                !withoutSubject.contains(next)
                        && !takesObject(passage, cue.start() + 1)
                        && !doneBy(passage, cue.start() + 1)
                        && !(next.equals("you") && passage.word(cue.start() + 2).equals("believe"));
            case "what" -> !Set.of("a", "an").contains(next);
            case "how" -> !EXCLAIMED.contains(next);
            default -> true;
        };
    }

    /** Whether a word names whom or what is asked of; "might switch to drip" left out the "I". */
    private static boolean namesWho(Passage passage, int at) {
        String word = passage.word(at);
        return SUBJECTS.contains(word)
                || passage.end("crop", at) > 0
                || word.length() > 3 && word.endsWith("s")
                || MASSES.contains(word);
    }

    /** "Will switch the whole bed to drip": a verb with its object, not what is asked of. */
    private static boolean takesObject(Passage passage, int verb) {
        return !namesWho(passage, verb) && OBJECTS.contains(passage.word(verb + 1));
    }

    /** "Will planted the beans": a name. */
    private static boolean doneBy(Passage passage, int verb) {
        return passage.actions().stream()
                .anyMatch(action -> action.start() == verb
                        && action.form() == Form.PAST
                        && action.words().get(verb));
    }

    /** "The stalks are corky, does that mean …": after a comma a verb before its subject asks. */
    private boolean turnsTo(Passage passage, Found<String> cue) {
        boolean parted = Set.of(",", "-", "so", "and", "but", ":", ")").contains(passage.word(cue.start() - 1));
        return parted
                && !passage.word(cue.start()).equals("which")
                && INVERTED.contains(passage.word(cue.start()))
                && (SUBJECTS.contains(passage.word(cue.start() + 1)) || passage.end("crop", cue.start() + 1) > 0);
    }

    private boolean opens(Passage passage, int start, int at) {
        for (int before = start; before < at; before++) {
            if (!leading.contains(passage.word(before))) {
                return false;
            }
        }
        return true;
    }

    private static boolean closes(Passage passage, int from, int to) {
        for (int at = from; at < to; at++) {
            if (!Set.of("please", "then", "now", "thanks", "mate", "ta", ",", "bot", "today")
                    .contains(passage.word(at))) {
                return false;
            }
        }
        return true;
    }

    private static int first(List<Found<String>> found) {
        return found.stream().mapToInt(Found::start).min().orElse(-1);
    }

    /** "Sowed the peas yesterday, too early?" asks only at the end. */
    private static int lastPart(Passage passage, int[] sentence) {
        for (int at = sentence[1] - 1; at > sentence[0]; at--) {
            int part = at;
            if (Set.of(",", "because", "cause", "cos", "cuz", "since").contains(passage.word(at))) {
                boolean doing = passage.actions().stream()
                        .anyMatch(action -> action.start() > part && action.end() <= sentence[1]);
                boolean before = passage.actions().stream()
                        .anyMatch(action -> action.start() >= sentence[0] && action.end() <= part);
                return before && !doing && !passage.word(at + 1).equals("or") ? at + 1 : sentence[0];
            }
        }
        return sentence[0];
    }

    private boolean command(Passage passage, int[] sentence) {
        return commanded(passage, sentence) != null;
    }

    /** The question that a plain command asks ("this week"), {@code null} when the sentence is none. */
    Question commanded(Passage passage, int[] sentence) {
        for (Found<Question> found : always.all(passage.tokens(), sentence[0], sentence[1], passage)) {
            if (opens(passage, sentence[0], found.start()) && closes(passage, found.end(), sentence[1])) {
                return found.meaning();
            }
        }
        return null;
    }
}
