package bothy.reading;

import bothy.almanac.CraftNotes;
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

/** Tells which of the known questions a sentence asks. */
final class Questions {
    private static final String FILE = "questions";
    /** What the question word adds to a phrase of its kind: less than one word that carries meaning. */
    private static final int LEAD = 2;
    /** What a frame weighs against phrases, and what each of its names adds. */
    private static final int FRAME = 0;

    private static final int NAME = 1;
    /** How far into a question its question word stands at most, in words. */
    private static final int NEAR_HEAD = 2;

    /** What asks for a reason asks for nothing else, whatever it names: "why do you earth up potatoes". */
    private static final Set<Question> OF_REASONS = Set.of(Question.WHY);
    /** Weather told before a question is what makes the grower ask: "it poured last night, do I still water". */
    private static final Set<String> WEATHER = Set.of("rain", "temperature", "soil-checked");

    /** A verb behind its subject tells and does not ask. */
    private static final Set<String> TOLD_WITH = Set.of("is", "are", "was", "were", "has", "have");

    private final PhraseBook<Question> asked = new PhraseBook<>();
    private final WhereAsked where;
    private final PhraseBook<String> topics = new PhraseBook<>();
    private final PhraseBook<String> dangers = new PhraseBook<>();
    private final PhraseBook<Set<Question>> leads = new PhraseBook<>();
    private final Set<String> little;
    private final Framed framed;
    private final NumbersAsked numbers;
    private final MattersAsked matters;
    private final ClimateAsked climate;
    private final EatingAsked eating;
    private final PeriodAsked periods;
    private final CuesTold cues;
    private final MeaningsAsked meanings;
    private final ReasonsAsked reasons;
    private final NotesAsked notes;
    private final ToldForAdvice toldForAdvice;

    Questions(Words words, CraftNotes notes) {
        Map<String, List<String>> groups = new HashMap<>();
        List<String> steps = new ArrayList<>();
        words.lists(FILE, "/steps").forEach((topic, names) -> {
            steps.addAll(names);
            names.forEach(name -> topics.add(new Phrase(name, Map.of()), topic));
        });
        words.lists(FILE, "/dangers")
                .forEach((danger, names) -> names.forEach(name -> dangers.add(new Phrase(name, Map.of()), danger)));
        groups.put("step", steps);
        groups.put("laterstep", steps);
        where = new WhereAsked(words, groups);
        toldForAdvice = new ToldForAdvice(words);
        words.lists(FILE, "/asked")
                .forEach((name, texts) -> texts.forEach(
                        text -> add(words, "/asked/" + name, text, groups, asked, question(words, name))));
        words.names(FILE, "/leads").forEach(lead -> {
            String at = "/leads/" + lead;
            Set<Question> kinds = new HashSet<>();
            words.list(FILE, at + "/to").forEach(name -> kinds.add(question(words, name)));
            words.list(FILE, at + "/by").forEach(text -> add(words, at + "/by", text, groups, leads, kinds));
        });
        framed = new Framed(words);
        numbers = new NumbersAsked(words);
        matters = new MattersAsked(words);
        climate = new ClimateAsked(words);
        eating = new EatingAsked(words);
        periods = new PeriodAsked(words);
        cues = new CuesTold(words);
        meanings = new MeaningsAsked(words);
        reasons = new ReasonsAsked(words);
        this.notes = new NotesAsked(words, notes);
        little = new HashSet<>(words.list(FILE, "/little"));
    }

    static Question question(Words words, String name) {
        return Question.of(name)
                .orElseThrow(() -> new RulesBroken(List.of(words.problem(
                        FILE,
                        "/asked/" + name,
                        "there is no question \"" + name + "\"; use a word of the exchange vocabulary."))));
    }

    static <T> void add(
            Words words, String at, String text, Map<String, List<String>> groups, PhraseBook<T> book, T meaning) {
        try {
            book.add(new Phrase(text, groups), meaning);
        } catch (IllegalArgumentException wrong) {
            throw new RulesBroken(
                    List.of(words.problem(FILE, at, "\"" + text + "\" is no phrase: " + wrong.getMessage() + ".")));
        }
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(where.vocabulary());
        all.addAll(asked.vocabulary());
        all.addAll(topics.vocabulary());
        all.addAll(dangers.vocabulary());
        all.addAll(framed.vocabulary());
        all.addAll(numbers.vocabulary());
        all.addAll(matters.vocabulary());
        all.addAll(climate.vocabulary());
        all.addAll(eating.vocabulary());
        all.addAll(periods.vocabulary());
        all.addAll(cues.vocabulary());
        all.addAll(meanings.vocabulary());
        all.addAll(reasons.vocabulary());
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

    EatingAsked eating() {
        return eating;
    }

    PeriodAsked periods() {
        return periods;
    }

    CuesTold cues() {
        return cues;
    }

    MeaningsAsked meanings() {
        return meanings;
    }

    NotesAsked notes() {
        return notes;
    }

    ReasonsAsked reasons() {
        return reasons;
    }

    /** The token at which a sentence starts to ask, or −1 when it does not ask. */
    int begins(Passage passage, int[] sentence) {
        return where.begins(passage, sentence);
    }

    ToldForAdvice toldForAdvice() {
        return toldForAdvice;
    }

    /** Which question a stretch asks; {@link Question#OTHER} when none of the known ones. */
    Question asked(Passage passage, int[] sentence, int begins) {
        Question command = where.commanded(passage, sentence);
        if (command != null) {
            return command;
        }
        Set<Question> led = led(passage, begins, sentence[1]);
        if (led.equals(OF_REASONS) || toldThenWhy(passage, sentence, begins)) {
            return Question.WHY;
        }
        boolean told = passage.actions().stream()
                .anyMatch(action ->
                        action.start() >= sentence[0] && action.end() <= begins && !WEATHER.contains(action.action()));
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

    /** "The lettuces are going to seed, why?" */
    private static boolean toldThenWhy(Passage passage, int[] sentence, int begins) {
        int last = sentence[1] - 1;
        while (last > begins && passage.tokens().get(last).mark()) {
            last--;
        }
        return begins > sentence[0]
                && last > begins
                && TOLD_WITH.contains(passage.word(begins))
                && passage.word(last).equals("why")
                && passage.word(last - 1).equals(",");
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

    /** What a question about danger is about, {@code null} when it does not say. */
    String danger(Passage passage, int from, int to) {
        return dangers.find(passage.tokens(), from, to, passage).stream()
                .findFirst()
                .map(Found::meaning)
                .orElse(null);
    }

    /** The step that a how-to is about, {@code null} when none is named. */
    String topic(Passage passage, int from, int to) {
        return topics.find(passage.tokens(), from, to, passage).stream()
                .max(java.util.Comparator.comparingInt(found -> found.place().length()))
                .map(Found::meaning)
                .orElse(null);
    }
}
