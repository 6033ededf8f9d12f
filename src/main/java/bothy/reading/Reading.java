package bothy.reading;

import bothy.almanac.CraftNotes;
import bothy.almanac.Words;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Kind;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.reading.grammar.CropNames;
import bothy.reading.grammar.Grammar;
import bothy.reading.grammar.Moods;
import bothy.reading.said.Passage;
import bothy.reading.told.Particulars;
import bothy.reading.told.Told;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Reads what growers write. Built once from the words files, then only read: many threads may share it. Any text gives an answer;
 * none fails.
 */
public final class Reading {
    private static final Logger LOG = LoggerFactory.getLogger(Reading.class);
    private final Grammar grammar;
    private final ZonesNear zonesNear;
    private final Signs signs;
    private final Sentences sentences;
    private final Corrections corrections;
    private final Set<String> leading;
    private final Answers answers;
    private final Languages languages;
    private final CloserLook closerLook;
    private final LooseSigns looseSigns;
    private final PlainWords plainWords;
    private final Set<String> complaints;
    private final Set<String> faint;
    private final Set<String> mild;
    private final Set<String> plans;
    private final Set<String> whereabouts;
    private final Guesses guesses;
    private final EatingAsked eating;
    private final GoodFood goodFood;
    private final AsksAlike asksAlike;
    private final Hearsay hearsay;
    private final OtherPlotsAndYears otherPlotsAndYears;

    /** @throws bothy.almanac.RulesBroken when a words file is missing or a phrase in one cannot be read */
    public Reading(Words words, CraftNotes notes) {
        Moods moods = new Moods(words);
        Particulars particulars = new Particulars(words);
        Questions questions = new Questions(words, notes);
        Settings settings = new Settings(words);
        KindOf kinds = new KindOf(words);
        FrostToCome frostToCome = new FrostToCome(words);
        GrowingWished growingWished = new GrowingWished(words);
        asksAlike = new AsksAlike(words);
        zonesNear = new ZonesNear(words);
        guesses = new Guesses(words, questions);
        eating = questions.eating();
        goodFood = new GoodFood(words);
        hearsay = new Hearsay(words);
        signs = new Signs(words, moods, hearsay);
        answers = new Answers(words);
        closerLook = new CloserLook(words);
        looseSigns = new LooseSigns(words);
        plainWords = new PlainWords(words);
        complaints = Set.copyOf(words.list("clues", "/complaints"));
        faint = Set.copyOf(words.list("clues", "/faint-complaints"));
        mild = Set.copyOf(words.list("clues", "/mild-complaints"));
        plans = Set.copyOf(words.list("clues", "/plans"));
        whereabouts = Set.copyOf(words.list("clues", "/whereabouts"));
        otherPlotsAndYears = new OtherPlotsAndYears(moods, complaints);
        Set<String> known = new HashSet<>();
        List.of(
                        moods.vocabulary(),
                        particulars.vocabulary(),
                        questions.vocabulary(),
                        settings.vocabulary(),
                        kinds.vocabulary(),
                        frostToCome.vocabulary(),
                        growingWished.vocabulary(),
                        asksAlike.vocabulary(),
                        hearsay.vocabulary(),
                        signs.vocabulary(),
                        answers.vocabulary(),
                        closerLook.vocabulary(),
                        looseSigns.vocabulary(),
                        plainWords.vocabulary(),
                        Corrections.vocabulary(words))
                .forEach(known::addAll);
        grammar = new Grammar(words, known);
        languages = new Languages(grammar.spelling());
        corrections = new Corrections(words, grammar.cropNames());
        leading = Corrections.leading(words, "/leading-described");
        sentences = new Sentences(
                moods, particulars, questions, signs, settings, kinds, frostToCome, growingWished, grammar);
    }

    /**
     * What a message says.
     *
     * @param text the message, any text
     * @param situation the day, the grower, the plantings and what was talked about last
     */
    public Heard read(String text, Situation situation) {
        try {
            return understood(text == null ? "" : text, situation);
        } catch (RuntimeException defect) {
            // A message must never stop the conversation; what was not read is told as such.
            LOG.error("A message could not be read: {} {}", defect.getClass().getName(), place(defect));
            LOG.debug("A message could not be read", defect);
            return nothingUnderstood(text);
        }
    }

    /** Where it arose; its own words may repeat the grower's. */
    private static String place(RuntimeException defect) {
        StackTraceElement[] stack = defect.getStackTrace();
        return stack.length == 0 ? "" : "at " + stack[0];
    }

    private static Heard nothingUnderstood(String text) {
        String begin = text.substring(0, Math.min(text.length(), 80));
        return new Heard(
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                List.of(begin),
                Kind.CHAT,
                false);
    }

    /** What a message tells of a trouble beside the signs that {@link #read} names. */
    public Description description(String text, Situation situation) {
        Passage whole = plainWords.of(hearsay.without(grammar.whole(text, situation)));
        Passage told = PlantingHoles.without(eating.withoutWhatIsAsked(whole));
        return new Description(
                closerLook,
                looseSigns,
                complaints,
                faint,
                mild,
                plans,
                whereabouts,
                () -> grammar.crops(text, situation),
                situation.plantings().stream()
                        .filter(planting -> !planting.over())
                        .map(Planting::crop)
                        .collect(Collectors.toSet()),
                otherPlotsAndYears.without(told),
                goodFood.without(told),
                goodFood.without(whole));
    }

    /**
     * The same of what a message tells and supposes, without what it asks besides: "is it ok to water at night" tells nothing of the
     * nights.
     */
    public Description toldOnly(String text, Situation situation) {
        return description(guesses.withoutOtherQuestions(grammar.whole(text, situation), text), situation);
    }

    private static Heard foreign(String language) {
        return new Heard(
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                List.of(language),
                Kind.FOREIGN,
                false);
    }

    /** As {@link #read}, but a defect shows itself. */
    Heard understood(String text, Situation situation) {
        Passage passage = grammar.passage(text, situation);
        String language = languages.foreign(passage);
        if (language != null) {
            return foreign(language);
        }
        Sentences.Gathered gathered = sentences.gathered(passage);
        Optional<Heard> back = takenBack(passage, gathered);
        if (back.isPresent()) {
            return back.get();
        }
        boolean only = gathered.told().isEmpty()
                && gathered.asked().isEmpty()
                && gathered.seen().isEmpty();
        Optional<Heard> ofAnother = only ? WhoseTrouble.in(passage) : Optional.empty();
        if (ofAnother.isPresent()) {
            return ofAnother.get();
        }
        Heard atOnce = PutRightAtOnce.of(text, situation, this);
        if (atOnce == null) {
            atOnce = MoreThenCorrection.of(text, situation, this);
        }
        if (atOnce != null) {
            return atOnce;
        }
        Heard corrected = corrections.opens(passage) ? CorrectionThenMore.of(text, situation, this) : null;
        if (corrected != null) {
            return corrected;
        }
        if (situation.pending() != null) {
            Optional<Heard> recounted = corrections.recounted(passage, gathered.told());
            if (recounted.isPresent()) {
                return recounted.get();
            }
            Heard first = AnswerThenMore.of(text, situation, this);
            if (first != null) {
                return first;
            }
            boolean own = !gathered.told().isEmpty()
                    || !gathered.asked().isEmpty()
                    || !gathered.seen().isEmpty();
            var answer = answers.read(passage, own);
            if (answer.isPresent()) {
                return own ? Joined.of(answer.get(), sentences.heard(passage, gathered)) : answer.get();
            }
        }
        Optional<Heard> countedAfter = gathered.told().isEmpty()
                        && gathered.asked().isEmpty()
                        && gathered.seen().isEmpty()
                ? CountToldAfter.of(passage)
                : Optional.empty();
        if (countedAfter.isPresent()) {
            return countedAfter.get();
        }
        Optional<List<Inquiry>> alike = asksAlike.in(passage, gathered);
        if (alike.isPresent()) {
            return sentences.heard(passage, gathered.asking(alike.get()));
        }
        boolean ofItsOwn = !gathered.asked().isEmpty() || !gathered.seen().isEmpty() || onlySettings(gathered);
        return corrections
                .read(passage, gathered.told(), ofItsOwn)
                .orElseGet(() -> sentences.heard(passage, gathered))
                .answering(answers.meaning(passage) != null);
    }

    /** "Actually write to me any time but before 8" puts no count right. */
    private static boolean onlySettings(Sentences.Gathered gathered) {
        return !gathered.set().isEmpty() && gathered.told().isEmpty();
    }

    /** An entry that the message describes, taken back or put right; a question behind it is still one. */
    private Optional<Heard> takenBack(Passage passage, Sentences.Gathered gathered) {
        boolean tells = !gathered.told().isEmpty()
                || !gathered.asked().isEmpty()
                || !gathered.seen().isEmpty();
        return new TakingBack(passage, part -> grammar.passage(part, passage.situation()), grammar.cropNames(), leading)
                .heard(tells)
                .map(heard -> passage.message().contains("?") ? heard.asking(gathered.asked()) : heard);
    }

    /** "yes", "no", "done", "unknown" … of a message that is an answer and nothing else; {@code null} of any other. */
    public String answerAlone(String text, Situation situation) {
        return answers.meaning(grammar.passage(text, situation));
    }

    /** A message read only as the answer to the waiting question, {@code null} when it is none or tells something of its own. */
    Heard answer(String text, Situation situation) {
        Passage passage = grammar.passage(text, situation);
        Sentences.Gathered gathered = sentences.gathered(passage);
        boolean own = !gathered.told().isEmpty()
                || !gathered.asked().isEmpty()
                || !gathered.seen().isEmpty();
        return own ? null : answers.read(passage, false).orElse(null);
    }

    /** A message read only as one that puts something right, {@code null} when it is none. */
    Heard correction(String text, Situation situation) {
        Passage passage = grammar.passage(text, situation);
        return corrections.opens(passage)
                ? corrections
                        .read(passage, sentences.gathered(passage).told(), false)
                        .orElse(null)
                : null;
    }

    /** A message read only as one that calls a figure told at any time wrong, {@code null} when it is none. */
    Heard refutation(String text, Situation situation) {
        Passage passage = grammar.passage(text, situation);
        List<Told> told = sentences.gathered(passage).told();
        return told.isEmpty() ? corrections.refuted(passage, told).orElse(null) : null;
    }

    /** Time zones that a place may lie in, the most likely first; empty when no known city is near. */
    public List<String> zonesNear(double latitude, double longitude, int atMost) {
        return zonesNear.of(latitude, longitude, atMost);
    }

    /** The wider sign of which a sign is a case ("wilting" of "wilting-all-day"), {@code null} when it is none. */
    String wider(String sign) {
        return signs.wider(sign);
    }

    CropNames cropNames() {
        return grammar.cropNames();
    }

    Passage passage(String text, Situation situation) {
        return grammar.passage(text, situation);
    }
}
