package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Doubt;
import bothy.garden.Doubt.About;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** Reads a message as the answer to the question that waits. */
final class Answers {
    private static final Set<What> MEASURED = Set.of(What.RAIN, What.WATERED, What.FED, What.HARVESTED);
    private static final Set<What> SEEN =
            Set.of(What.EMERGED, What.FLOWERING, What.FRUIT_SET, What.COLOUR_TURNED, What.RAIN, What.FROST);
    private static final String DONE = "done";
    private static final Map<String, Integer> ORDINALS = Map.of(
            "first", 0, "1st", 0, "second", 1, "2nd", 1, "third", 2, "3rd", 2, "fourth", 3, "4th", 3, "former", 0,
            "latter", 1);
    private final PhraseBook<String> words = new PhraseBook<>();
    private final FigureAfterNo figureAfterNo;
    /** Crops whose planting is their sowing. */
    private final Set<String> plantedSown = new HashSet<>();

    private final Ordering ordering;

    /** How the numbers of choices are named. */
    private record Ordering(Map<String, Integer> byWord) {}

    private static final Set<String> SUBJECTS = Set.of("it", "they", "i", "we", "that", "thats");
    private static final Set<String> AFTER_AN_ANSWER = Set.of(
            "and",
            "but",
            "now",
            "yes",
            "thanks",
            "thank",
            "already",
            "too",
            "all",
            "indeed",
            "yesterday",
            "today",
            "so");

    Answers(Words words) {
        PhraseFile file = new PhraseFile(words, "answers", Map.of());
        for (String meaning : words.names("answers", "")) {
            file.into(this.words, "/" + meaning, meaning);
        }
        ordering = new Ordering(ORDINALS);
        figureAfterNo = new FigureAfterNo(words);
        words.names("crops", "/crops").stream()
                .filter(crop ->
                        words.text("crops", "/crops/" + crop + "/planted", "").equals("sown"))
                .forEach(plantedSown::add);
    }

    /** "Put in 20 hills of Shetland Lass." "Potatoes": what was put in is sown, now that its crop is known. */
    private Heard begun(Heard heard) {
        if (heard.statements().isEmpty()) {
            return heard;
        }
        return Heard.of(heard.statements().stream()
                .map(statement -> statement.event().what() == What.PLANTED_OUT
                                && plantedSown.contains(statement.event().crop())
                        ? settled(statement, statement.event().withWhat(What.SOWN), List.of())
                        : statement)
                .toList());
    }

    Set<String> vocabulary() {
        return words.vocabulary();
    }

    /**
     * What is taken as said when the message answers the waiting question.
     *
     * @param own whether the message has something of its own to say
     * @return empty when it is no answer
     */
    Optional<Heard> read(Passage passage, boolean own) {
        Doubt pending = passage.situation().pending();
        if (pending == null || passage.size() == 0) {
            return Optional.empty();
        }
        Optional<Choice> labelled = labelled(passage.message(), pending);
        if (labelled.isPresent()) {
            return labelled.map(Answers::said);
        }
        String word = opening(passage);
        if (pending.about() == About.ADVICE && "no".equals(word) && figureAfterNo.in(passage)) {
            return Optional.empty();
        }
        if (own) {
            return word != null && !word.equals("unknown") ? byWord(word, pending) : Optional.empty();
        }
        Optional<Heard> byFigure = ofAnother(passage, pending) ? Optional.empty() : byFigure(passage, pending);
        if (byFigure.isPresent()) {
            return byFigure;
        }
        Optional<Heard> named = byName(passage, pending, word);
        return named.isPresent() || word == null ? named : byWord(word, pending);
    }

    static Heard said(Choice choice) {
        return choice.then() == null ? Heard.nothing(Kind.CHAT) : choice.then();
    }

    private static Optional<Choice> labelled(String message, Doubt pending) {
        String said = bare(message);
        return pending.choices().stream()
                .filter(choice -> bare(choice.label()).equals(said)
                        || (choice.meaning() != null && bare(choice.meaning()).equals(said)))
                .findFirst();
    }

    static String bare(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\d°]+", " ")
                .replaceAll("^ ?the ", "")
                .strip();
    }

    private String opening(Passage passage) {
        return words.find(passage.tokens(), 0, passage.size(), passage).stream()
                .filter(found -> found.start() == 0
                        || passage.tokens().subList(0, found.start()).stream()
                                .allMatch(token -> token.mark()
                                        || Set.of(
                                                        "oh", "um", "er", "well", "i", "hmm", "sorry", "in", "ah",
                                                        "just", "it", "they", "was")
                                                .contains(token.word())))
                .filter(found -> !begins(passage, found))
                .map(Found::meaning)
                .findFirst()
                .orElse(null);
    }

    /** What a message means that is an answer and nothing else, as "not yet" or "yep, done" is; {@code null} when it is none. */
    String meaning(Passage passage) {
        List<Found<String>> found = words.find(passage.tokens(), 0, passage.size(), passage);
        boolean nothingElse = IntStream.range(0, passage.size())
                .allMatch(at -> passage.tokens().get(at).mark()
                        || found.stream().anyMatch(one -> one.start() <= at && at < one.end()));
        return found.isEmpty() || !nothingElse ? null : found.get(0).meaning();
    }

    /** "It is" answers; "it is going yellow" and "no frost since April" tell something of their own. */
    private static boolean begins(Passage passage, Found<String> found) {
        boolean no = passage.word(found.start()).equals("no") && found.end() == found.start() + 1;
        if (no && found.end() < passage.size() && !PlainNo.before(passage.word(found.end()))) {
            return true;
        }
        return SUBJECTS.contains(passage.word(found.start()))
                && found.end() < passage.size()
                && !passage.tokens().get(found.end()).mark()
                && !AFTER_AN_ANSWER.contains(passage.word(found.end()));
    }

    private static Optional<Heard> byWord(String said, Doubt pending) {
        if (said.equals("all")) {
            return all(pending);
        }
        if (said.equals(DONE) && pending.choices().stream().anyMatch(Answers::seen)) {
            return Optional.empty();
        }
        String word = said.equals(DONE) ? "yes" : said;
        Optional<Choice> meant = pending.choices().stream()
                .filter(choice -> word.equalsIgnoreCase(choice.meaning()))
                .findFirst();
        if (meant.isPresent()) {
            return meant.map(Answers::said);
        }
        boolean letGo = word.equals("unknown")
                || (word.equals("no") && !pending.choices().isEmpty());
        if (word.equals("yes") && pending.choices().size() == 1) {
            return Optional.of(said(pending.choices().get(0)));
        }
        return letGo ? Optional.of(Heard.nothing(Kind.LET_GO)) : Optional.empty();
    }

    /** Whether a choice tells of what plants do, not of what is done to them. */
    private static boolean seen(Choice choice) {
        return choice.then() != null
                && choice.then().statements().stream()
                        .anyMatch(statement -> SEEN.contains(statement.event().what()));
    }

    /** "Both": the waiting statement is about all the plantings asked about. */
    private static Optional<Heard> all(Doubt pending) {
        if (pending.about() != About.WHICH_PLANTING || pending.draft() == null) {
            return Optional.empty();
        }
        List<String> ids = pending.choices().stream().map(Choice::meaning).toList();
        return Optional.of(filled(pending.draft(), statement -> settled(statement, statement.event(), ids)));
    }

    /** A message about other crops than the one asked about answers nothing with its figures. */
    private static boolean ofAnother(Passage passage, Doubt pending) {
        List<String> asked = pending.draft() == null
                ? List.of()
                : pending.draft().statements().stream()
                        .map(one -> one.event().crop())
                        .filter(Objects::nonNull)
                        .toList();
        return !asked.isEmpty()
                && !passage.crops().isEmpty()
                && passage.crops().stream().noneMatch(crop -> asked.stream().anyMatch(crop::canMean));
    }

    private Optional<Heard> byFigure(Passage passage, Doubt pending) {
        return switch (pending.about()) {
            case WHICH_DATE -> day(passage, pending);
            case HOW_MANY ->
                amount(passage, pending).or(() -> counted(pending) ? number(passage, pending) : Optional.empty());
            case CAP_HOLDS -> CapAsked.answered(passage, pending);
            default -> Optional.empty();
        };
    }

    private static Optional<Heard> day(Passage passage, Doubt pending) {
        LocalDate today = passage.situation().today();
        Optional<LocalDate> day = passage.days().stream()
                .filter(DaySaid::known)
                .map(DaySaid::past)
                .filter(on -> !on.isAfter(today))
                .findFirst();
        if (day.isEmpty() || pending.draft() == null) {
            return Optional.empty();
        }
        return Optional.of(filled(
                pending.draft(),
                statement -> settled(statement, statement.event().withOn(day.get()), statement.plantings())));
    }

    /** What was measured is answered by a measure: "it was 12 mm". */
    private static Optional<Heard> amount(Passage passage, Doubt pending) {
        if (pending.draft() == null
                || passage.quantities().isEmpty()
                || pending.draft().statements().stream()
                        .noneMatch(one -> MEASURED.contains(one.event().what()))) {
            return Optional.empty();
        }
        Quantity told = passage.quantities().get(0);
        return told.value() < 0 || told.degrees()
                ? Optional.empty()
                : Optional.of(filled(
                        pending.draft(),
                        statement -> settled(
                                statement,
                                statement.event().withAmount(told.value(), told.unit()),
                                statement.plantings())));
    }

    private static boolean counted(Doubt pending) {
        return pending.draft() == null
                || pending.draft().statements().stream()
                        .noneMatch(one -> MEASURED.contains(one.event().what())
                                && one.event().what() != What.HARVESTED);
    }

    private static Optional<Heard> number(Passage passage, Doubt pending) {
        List<NumberSaid> numbers = passage.counts(0, passage.size());
        if (numbers.isEmpty()
                || pending.draft() == null
                || numbers.get(0).value() < 0
                || numbers.get(0).value() > 20_000) {
            return Optional.empty();
        }
        int count = (int) numbers.get(0).value();
        return Optional.of(filled(
                pending.draft(),
                statement -> settled(statement, statement.event().withCount(count), statement.plantings())));
    }

    private Optional<Heard> byName(Passage passage, Doubt pending, String word) {
        if (pending.about() == About.WHICH_DEGREES
                && word != null
                && (word.equals("celsius") || word.equals("fahrenheit"))) {
            String scale = word.equals("celsius") ? "C" : "F";
            return pending.choices().stream()
                    .filter(choice -> scale.equals(choice.meaning()))
                    .findFirst()
                    .map(Answers::said);
        }
        boolean ofACrop = pending.about() == About.WHICH_CROP || pending.about() == About.DID_YOU_MEAN;
        // "3 runners" names the crop and counts it: no third choice.
        Optional<Heard> crop = ofACrop ? NamedAnswer.crop(passage, pending).map(this::begun) : Optional.empty();
        Optional<Heard> ordinal = crop.isPresent() ? crop : ordinal(passage, pending);
        if (ordinal.isPresent()) {
            return ordinal;
        }
        if (pending.about() == About.WHICH_PLANTING) {
            return NamedAnswer.planting(passage, pending);
        }
        return ofACrop ? Optional.empty() : NamedAnswer.overlapping(passage, pending);
    }

    /** "The second", "number 2", "2". */
    private Optional<Heard> ordinal(Passage passage, Doubt pending) {
        int index = -1;
        for (int at = 0; at < passage.size(); at++) {
            index = ordering.byWord().getOrDefault(passage.word(at), index);
            index = passage.word(at).equals("last") ? pending.choices().size() - 1 : index;
        }
        List<NumberSaid> numbers = passage.numbers();
        boolean bareNumber = numbers.size() == 1
                && passage.size() <= 3
                && numbers.get(0).whole()
                && numbers.get(0).value() >= 1;
        if (index < 0 && bareNumber && !passage.word(numbers.get(0).start()).equals("one")) {
            index = (int) numbers.get(0).value() - 1;
        }
        return index < 0 || index >= pending.choices().size() || passage.size() > 6
                ? Optional.empty()
                : Optional.of(said(pending.choices().get(index)));
    }

    static Statement settled(Statement statement, Event event, List<String> plantings) {
        return new Statement(event, plantings, true, statement.from(), statement.to(), statement.assumed());
    }

    static Heard filled(Heard draft, UnaryOperator<Statement> fill) {
        List<Statement> statements = new ArrayList<>();
        draft.statements().forEach(statement -> statements.add(statement.sure() ? statement : fill.apply(statement)));
        return Heard.of(statements);
    }
}
