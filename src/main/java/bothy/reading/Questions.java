package bothy.reading;

import bothy.almanac.RulesBroken;
import bothy.almanac.Words;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds where a message asks, and which of the known questions it is. */
final class Questions {
    private static final String FILE = "questions";
    private static final Set<String> LEADING = Set.of(
            "so",
            "and",
            "but",
            "also",
            "ok",
            "okay",
            "hi",
            "hello",
            "please",
            "hey",
            ",",
            "well",
            "now",
            "right",
            "then",
            "just",
            "morning",
            "oh",
            "kindly",
            "sir",
            "madam",
            "mate",
            "lads",
            "folks",
            "all",
            "everyone",
            "bot",
            "good",
            "evening",
            "afternoon",
            "hiya",
            "yo",
            "um",
            "er",
            "erm",
            "quick",
            "question",
            "one",
            ":",
            "-",
            "thanks",
            "again",
            "sorry",
            "if",
            "bothy",
            "dear",
            "team",
            "anyway",
            "actually",
            "wait");
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
    /** What the question word adds to a phrase of its kind: less than one word that carries meaning. */
    private static final int LEAD = 2;
    /** What a frame weighs against phrases, and what each of its names adds. */
    private static final int FRAME = 0;

    private static final int NAME = 1;
    private static final int REPORT_REACH = 12;
    /** How far into a question its question word stands at most, in words. */
    private static final int NEAR_HEAD = 2;

    private static final Set<String> INVERTED = Set.of(
            "do", "does", "is", "are", "was", "can", "could", "should", "shall", "will", "would", "may", "might",
            "have", "has", "am", "how", "what", "when", "which", "why", "where");
    private static final Set<String> SUBJECTS = Set.of(
            "i", "we", "it", "they", "that", "this", "these", "those", "you", "the", "my", "our", "there", "anyone",
            "to", "now", "next", "should", "do", "can", "is", "are");
    /** After "will" or "can" at the head of a sentence these tell of the grower: "will sow more", "can confirm". */
    private static final Set<String> WITHOUT_SUBJECT = Set.of(
            "be",
            "do",
            "not",
            "sow",
            "plant",
            "need",
            "have",
            "say",
            "confirm",
            "report",
            "love",
            "like",
            "see",
            "try",
            "get",
            "go",
            "put",
            "let",
            "keep",
            "start",
            "take",
            "water",
            "feed",
            "pick",
            "probably",
            "also",
            "then",
            "soon",
            "just",
            "definitely",
            "add",
            "make",
            "pot",
            "harvest",
            "lift",
            "move",
            "wait",
            "finish",
            "use",
            "cover",
            "thin",
            "tie",
            "store",
            "dig",
            "prick",
            "still",
            "never",
            "always",
            "only");

    private final PhraseBook<String> cues = new PhraseBook<>();
    private final PhraseBook<String> marked = new PhraseBook<>();
    private final PhraseBook<String> reports = new PhraseBook<>();
    private final PhraseBook<Question> asked = new PhraseBook<>();
    private final PhraseBook<Question> always = new PhraseBook<>();
    private final PhraseBook<String> topics = new PhraseBook<>();
    private final PhraseBook<Set<Question>> leads = new PhraseBook<>();
    private final Set<String> little;
    private final Framed framed;
    private final NumbersAsked numbers;
    private final MattersAsked matters;
    private final ClimateAsked climate;

    Questions(Words words) {
        Map<String, List<String>> groups = new HashMap<>();
        List<String> steps = new ArrayList<>();
        words.lists(FILE, "/steps").forEach((topic, names) -> {
            steps.addAll(names);
            names.forEach(name -> topics.add(new Phrase(name, Map.of()), topic));
        });
        groups.put("step", steps);
        groups.put("laterstep", steps);
        words.list(FILE, "/cues").forEach(text -> add(words, "/cues", text, groups, cues, text));
        words.list(FILE, "/marked").forEach(text -> add(words, "/marked", text, groups, marked, text));
        words.lists(FILE, "/asked")
                .forEach((name, texts) -> texts.forEach(
                        text -> add(words, "/asked/" + name, text, groups, asked, question(words, name))));
        words.lists(FILE, "/always")
                .forEach((name, texts) -> texts.forEach(
                        text -> add(words, "/always/" + name, text, groups, always, question(words, name))));
        words.names(FILE, "/leads").forEach(lead -> {
            String at = "/leads/" + lead;
            Set<Question> kinds = new HashSet<>();
            words.list(FILE, at + "/to").forEach(name -> kinds.add(question(words, name)));
            words.list(FILE, at + "/by").forEach(text -> add(words, at + "/by", text, groups, leads, kinds));
        });
        words.list(FILE, "/reports").forEach(text -> add(words, "/reports", text, groups, reports, text));
        framed = new Framed(words);
        numbers = new NumbersAsked(words);
        matters = new MattersAsked(words);
        climate = new ClimateAsked(words);
        little = new HashSet<>(words.list(FILE, "/little"));
    }

    static Question question(Words words, String name) {
        return Question.of(name)
                .orElseThrow(() -> new RulesBroken(List.of(words.problem(
                        FILE,
                        "/asked/" + name,
                        "there is no question \"" + name + "\"; use a word of the exchange vocabulary."))));
    }

    private static <T> void add(
            Words words, String at, String text, Map<String, List<String>> groups, PhraseBook<T> book, T meaning) {
        try {
            book.add(new Phrase(text, groups), meaning);
        } catch (IllegalArgumentException wrong) {
            throw new RulesBroken(
                    List.of(words.problem(FILE, at, "\"" + text + "\" is no phrase: " + wrong.getMessage() + ".")));
        }
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(cues.vocabulary());
        all.addAll(marked.vocabulary());
        all.addAll(asked.vocabulary());
        all.addAll(always.vocabulary());
        all.addAll(topics.vocabulary());
        all.addAll(framed.vocabulary());
        all.addAll(numbers.vocabulary());
        all.addAll(matters.vocabulary());
        all.addAll(climate.vocabulary());
        return all;
    }

    MattersAsked matters() {
        return matters;
    }

    NumbersAsked numbers() {
        return numbers;
    }

    ClimateAsked climate() {
        return climate;
    }

    /** The token at which a sentence starts to ask, or −1 when it does not ask. */
    int begins(Passage passage, int[] sentence) {
        if (!reports.all(passage.tokens(), sentence[0], Math.min(sentence[1], sentence[0] + REPORT_REACH), passage)
                .isEmpty()) {
            return -1;
        }
        boolean mark = sentence[1] < passage.size() && passage.word(sentence[1]).equals("?");
        int begins = first(cues.all(passage.tokens(), sentence[0], sentence[1], passage));
        for (Found<String> cue : marked.all(passage.tokens(), sentence[0], sentence[1], passage)) {
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

    /** At the head of a sentence "when" and "how" may also tell; an inverted verb asks. */
    private static boolean asksThere(Passage passage, Found<String> cue) {
        String next = passage.word(cue.start() + 1);
        return switch (passage.word(cue.start())) {
            case "when", "enough", "worth", "too" -> false;
            case "would", "will", "can", "could", "should", "shall", "might" ->
                !WITHOUT_SUBJECT.contains(next)
                        && !(next.equals("you") && passage.word(cue.start() + 2).equals("believe"));
            case "what" -> !Set.of("a", "an").contains(next);
            case "how" -> !EXCLAIMED.contains(next);
            default -> true;
        };
    }

    /** "The stalks are corky, does that mean …": after a comma a verb before its subject asks. */
    private static boolean turnsTo(Passage passage, Found<String> cue) {
        boolean parted = Set.of(",", "-", "so", "and", "but", ":", ")").contains(passage.word(cue.start() - 1));
        return parted
                && INVERTED.contains(passage.word(cue.start()))
                && (SUBJECTS.contains(passage.word(cue.start() + 1)) || passage.end("crop", cue.start() + 1) > 0);
    }

    private static boolean opens(Passage passage, int start, int at) {
        for (int before = start; before < at; before++) {
            if (!LEADING.contains(passage.word(before))) {
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
            if (passage.word(at).equals(",")) {
                boolean doing = passage.actions().stream()
                        .anyMatch(action -> action.start() > part && action.end() <= sentence[1]);
                boolean before = passage.actions().stream()
                        .anyMatch(action -> action.start() >= sentence[0] && action.end() <= part);
                return before && !doing ? at + 1 : sentence[0];
            }
        }
        return sentence[0];
    }

    private boolean command(Passage passage, int[] sentence) {
        return commanded(passage, sentence) != null;
    }

    private Question commanded(Passage passage, int[] sentence) {
        for (Found<Question> found : always.all(passage.tokens(), sentence[0], sentence[1], passage)) {
            if (opens(passage, sentence[0], found.start()) && closes(passage, found.end(), sentence[1])) {
                return found.meaning();
            }
        }
        return null;
    }

    /** Which question a stretch asks; {@link Question#OTHER} when none of the known ones. */
    Question asked(Passage passage, int[] sentence, int begins) {
        Question command = commanded(passage, sentence);
        if (command != null) {
            return command;
        }
        if (passage.word(begins).equals("why")) {
            return Question.WHY;
        }
        boolean told =
                passage.actions().stream().anyMatch(action -> action.start() >= sentence[0] && action.end() <= begins);
        Set<Question> led = led(passage, begins, sentence[1]);
        Found<Question> best = null;
        for (Found<Question> found : asked.all(passage.tokens(), told ? begins : sentence[0], sentence[1], passage)) {
            if (best == null
                    || weight(passage, found, led) > weight(passage, best, led)
                    || weight(passage, found, led) == weight(passage, best, led)
                            && found.meaning().ordinal() != best.meaning().ordinal()
                            && earlier(found, best)) {
                best = found;
            }
        }
        int sure = best == null ? 0 : weight(passage, best, led);
        Framed.Told frame = framed.in(passage, told ? begins : sentence[0], sentence[1]);
        return frame != null && FRAME + NAME * frame.names() > sure
                ? frame.question()
                : best == null ? Question.OTHER : best.meaning();
    }

    private static final List<Question> ORDER = List.of(
            Question.WHEN_STOP_WATERING,
            Question.HOW_MUCH_WATER,
            Question.WHEN_WATER,
            Question.FEED_DOSE,
            Question.FEED_WHAT,
            Question.FEED_WHEN,
            Question.WHEN_PLANT_OUT,
            Question.WHEN_SOW,
            Question.STILL_TIME,
            Question.HOW_MANY_FIT,
            Question.SPACING,
            Question.READY,
            Question.HOW_HARVEST,
            Question.HOW_STORE,
            Question.SAFE,
            Question.WHY,
            Question.NEXT,
            Question.TO_DO,
            Question.HOW_TO,
            Question.STATUS,
            Question.WHAT_TO_GROW,
            Question.COMPARE);

    private static boolean earlier(Found<Question> one, Found<Question> other) {
        return ORDER.indexOf(one.meaning()) < ORDER.indexOf(other.meaning());
    }

    /** The kinds that the first words of a question point to: "when" to a day, "how much" to an amount. */
    private Set<Question> led(Passage passage, int begins, int end) {
        return leads.find(passage.tokens(), begins, end, passage).stream()
                .filter(lead -> lead.start() - begins <= NEAR_HEAD)
                .findFirst()
                .map(Found::meaning)
                .orElse(Set.of());
    }

    /** Words that carry meaning weigh more than the little ones around them. */
    private int weight(Passage passage, Found<Question> found, Set<Question> led) {
        int lead = led.contains(found.meaning()) ? LEAD : 0;
        return lead
                + found.place().words().stream()
                        .map(at -> little.contains(passage.word(at)) ? 1 : 3)
                        .sum();
    }

    /** The step that a how-to is about, {@code null} when none is named. */
    String topic(Passage passage, int from, int to) {
        return topics.find(passage.tokens(), from, to, passage).stream()
                .max(java.util.Comparator.comparingInt(found -> found.place().length()))
                .map(Found::meaning)
                .orElse(null);
    }
}
