package bothy.replying;

import bothy.almanac.Sheet;
import bothy.almanac.Wording;
import bothy.garden.Diagnosis;
import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The words of one turn. */
final class Phrasing {
    private static final Pattern YES_OR_NO = Pattern.compile("^(?:Yes|No)[:,] ");
    private static final String CROPS_HERE = "\u0001";
    /** The advice whose words are made of a verdict. */
    private static final String LIKELIEST_CAUSE = "likeliest-cause";

    private final Wording wording;
    private final Vocabulary vocabulary;
    private final Map<String, Sheet> sheets;
    private final Verdicts verdicts;
    private final Turn turn;

    Phrasing(Wording wording, Vocabulary vocabulary, Map<String, Sheet> sheets, Verdicts verdicts, Turn turn) {
        this.verdicts = verdicts;
        this.wording = wording;
        this.vocabulary = vocabulary;
        this.sheets = sheets;
        this.turn = turn;
    }

    Vocabulary vocabulary() {
        return vocabulary;
    }

    Receipts receipts() {
        return new Receipts(wording, vocabulary);
    }

    Week week() {
        return new Week(wording, vocabulary, turn);
    }

    Recorded recorded() {
        return new Recorded(wording, vocabulary, receipts(), verdicts.words(), turn);
    }

    Plot plot() {
        return new Plot(wording, vocabulary, turn);
    }

    Unanswered unanswered() {
        return new Unanswered(wording, vocabulary, sheets, plot(), turn);
    }

    /** A paragraph for each advice; the same advice for several plantings is one paragraph. */
    List<String> advice(List<Given> spoken) {
        Map<String, List<Given>> alike = new LinkedHashMap<>();
        List<String> ids = spoken.stream().map(Given::id).toList();
        Set<String> found = new TreeSet<>();
        for (Given given : spoken) {
            said(given, true, ids).filter(text -> isNewFinding(given, found)).ifPresent(text -> alike.computeIfAbsent(
                            text, key -> new ArrayList<>())
                    .add(given));
        }
        List<String> paragraphs = new ArrayList<>();
        alike.forEach((text, group) -> paragraphs.add(paragraph(text, group, ids)));
        return paragraphs;
    }

    private String paragraph(String ofSeveral, List<Given> group, List<String> ids) {
        List<String> names =
                group.stream().map(vocabulary.names()::plants).distinct().toList();
        String text =
                names.size() > 1 ? ofSeveral : said(group.get(0), false, ids).orElse(ofSeveral);
        return upper(text.replace(CROPS_HERE, Names.list(names)));
    }

    /** Two signs of one crop that come down to one cause are answered once. */
    private boolean isNewFinding(Given given, Set<String> found) {
        return !given.id().equals(LIKELIEST_CAUSE)
                || verdicts.of(given)
                        .map(diagnosis -> found.add(
                                diagnosis.crop() + ": " + diagnosis.said().cause()))
                        .orElse(true);
    }

    /** What stands ahead is said with its day, unless the sentence names it. */
    private String dated(String text, Given given) {
        if (given.occasion() != Given.Occasion.STANDING || !given.due().isAfter(turn.today())) {
            return text;
        }
        String day = vocabulary.quantities().day(given.due());
        boolean named = text.contains(day);
        return named ? text : vocabulary.quantities().nearDay(given.due()) + ": " + lower(text);
    }

    private static String lower(String text) {
        return text.isEmpty() ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    private Optional<String> said(Given given, boolean several, List<String> alsoSaid) {
        Optional<Diagnosis> trouble = given.id().equals(LIKELIEST_CAUSE) ? verdicts.of(given) : Optional.empty();
        return trouble.isPresent() ? verdicts.text(trouble.get(), alsoSaid) : said(given, several);
    }

    Optional<String> whyTrouble(Given given) {
        return given.id().equals(LIKELIEST_CAUSE) ? verdicts.of(given).map(verdicts::why) : Optional.empty();
    }

    private Optional<String> said(Given given, boolean several) {
        Wording.Says says = wording.says(given.id());
        if (says == null || says.in(given.crop()).say() == null) {
            return Optional.empty();
        }
        Wording.Says own = says.in(given.crop());
        Optional<String> say =
                fill(own.say(), given, several).map(this::withoutYesOrNo).map(text -> dated(text, given));
        Optional<String> because = own.because() == null ? Optional.empty() : fill(own.because(), given, several);
        return say.map(text -> because.map(reason -> text + " " + upper(reason)).orElse(text));
    }

    /** "Are green potatoes poisonous?" is not answered "no: throw them out", which says whether they are food. */
    private String withoutYesOrNo(String text) {
        boolean harmAsked = turn.heard().inquiries().stream()
                .anyMatch(inquiry -> inquiry.eaten() != null && inquiry.eaten().harm());
        return harmAsked ? upper(YES_OR_NO.matcher(text).replaceFirst("")) : text;
    }

    private Optional<String> fill(String sentence, Given given, boolean several) {
        return new Sentence(sentence)
                .fill(name -> name.equals("crops")
                        ? Optional.of(CROPS_HERE)
                        : name.equals("prevent")
                                ? vocabulary
                                        .word(given, "cause")
                                        .flatMap(cause -> verdicts.prevention(cause, given.crop()))
                                : vocabulary.agreeing(given, name, several).or(() -> vocabulary.word(given, name)));
    }

    String nothingUnderstood() {
        Kind kind = turn.heard().kind();
        if (kind == Kind.CHAT && turn.heard().strange().isEmpty()) {
            return talk(turn.heard().plans().isEmpty() ? "chat" : "planned", Map.of());
        }
        if (kind == Kind.LET_GO) {
            return talk("let-go", Map.of());
        }
        if (kind == Kind.GREETING) {
            return talk("greeting", Map.of());
        }
        if (kind == Kind.CHORE) {
            return talk("chore", Map.of());
        }
        if (kind == Kind.ANSWER) {
            return talk("nothing-asked", Map.of());
        }
        if (kind == Kind.FOREIGN) {
            return onlyEnglish(turn.heard().strange().get(0));
        }
        if (kind == Kind.OFF_TOPIC) {
            return talk("off-topic", Map.of());
        }
        if (kind == Kind.CORRECTION || turn.heard().corrects()) {
            return talk("nothing-to-correct", Map.of());
        }
        boolean knowsHow = !turn.garden().plantings().isEmpty();
        return talk(knowsHow ? "not-understood-again" : "not-understood", Map.of());
    }

    /** In the grower's language where the wording has it, and in English. */
    private String onlyEnglish(String language) {
        String english = talk("only-english", Map.of());
        String own = wording.talk().get("only-english-" + language);
        return own == null ? english : own + " (" + english + ")";
    }

    /** The day on which to look again: the earliest that the spoken advice names. */
    Optional<LocalDate> nextLook(List<Given> spoken) {
        return spoken.stream()
                .filter(given -> given.neglect() != Given.Neglect.PERSON_HURT)
                .map(this::look)
                .filter(Objects::nonNull)
                .filter(day -> day.isAfter(turn.today()))
                .min(Comparator.naturalOrder());
    }

    /** What stands ahead is first looked at when it is due. */
    private LocalDate look(Given given) {
        boolean ahead =
                given.occasion() == Given.Occasion.STANDING && given.due().isAfter(turn.today());
        return ahead ? given.due() : given.nextCheck();
    }

    String lookAgain(LocalDate day) {
        return talk("next-look", Map.of("date", vocabulary.quantities().day(day)));
    }

    /** The question of the first spoken advice that asks one. */
    Optional<Doubt> questionOf(List<Given> spoken) {
        for (Given given : spoken) {
            Optional<Doubt> ofTrouble = given.id().equals(LIKELIEST_CAUSE)
                    ? verdicts.of(given).flatMap(verdicts::question)
                    : Optional.empty();
            if (ofTrouble.isPresent()) {
                return ofTrouble;
            }
            Wording.Says says = wording.says(given.id());
            Wording.Says own = says == null || given.due().isAfter(turn.today()) ? null : says.in(given.crop());
            if (own != null && own.ask() != null && own.answers() != null) {
                Optional<String> question = fill(own.ask(), given, false)
                        .map(text -> text.replace(CROPS_HERE, vocabulary.names().plants(given)));
                if (question.isPresent()) {
                    return Optional.of(
                            new Doubt(Doubt.About.ADVICE, arguments(question.get(), given), choices(own, given), null));
                }
            }
        }
        return Optional.empty();
    }

    private Map<String, String> arguments(String question, Given given) {
        Map<String, String> arguments = new java.util.HashMap<>();
        arguments.put("question", upper(question));
        arguments.put("advice", given.id());
        arguments.put("about", Turn.key(given));
        if (given.figures().get(Doubt.CASE) instanceof String of) {
            arguments.put(Doubt.CASE, of);
            verdicts.of(given)
                    .ifPresent(diagnosis ->
                            arguments.put(Doubt.TROUBLE, diagnosis.signs().get(0)));
        }
        return arguments;
    }

    private List<Choice> choices(Wording.Says says, Given given) {
        return says.answers().stream()
                .map(answer -> new Choice(answer.label(), answer.meaning(), meant(answer, given)))
                .toList();
    }

    private Heard meant(Wording.Answer answer, Given given) {
        LocalDate today = turn.today();
        if (answer.what() != null) {
            Event event = Event.of(What.of(answer.what()).orElseThrow(), null, given.crop(), today)
                    .withDetail(answer.detail());
            return Heard.of(List.of(Statement.sure(event, List.of(given.planting()))));
        }
        if (answer.sign() != null) {
            SignSeen sign = new SignSeen(answer.sign(), given.planting(), given.crop(), today, null, null);
            return new Heard(
                    List.of(),
                    List.of(),
                    List.of(sign),
                    List.of(),
                    List.of(),
                    List.of(),
                    null,
                    List.of(),
                    Kind.TROUBLE,
                    false);
        }
        return Heard.nothing(Kind.CHAT);
    }

    /** The same question with its buttons in everyday names. */
    Doubt dressed(Doubt doubt) {
        if (doubt == null || doubt.about() == Doubt.About.ADVICE) {
            return doubt;
        }
        List<Choice> choices = doubt.choices().stream()
                .map(choice -> new Choice(label(choice), choice.meaning(), choice.then()))
                .toList();
        boolean apart = choices.stream().map(Choice::label).distinct().count() == choices.size();
        return apart ? new Doubt(doubt.about(), doubt.arguments(), choices, doubt.draft()) : doubt;
    }

    private String label(Choice choice) {
        String meaning = choice.meaning();
        if (meaning != null && turn.garden().planting(meaning).isPresent()) {
            return upper(vocabulary.names().planting(meaning));
        }
        return meaning != null && wording.crops().containsKey(meaning)
                ? upper(vocabulary.names().many(meaning))
                : upper(choice.label());
    }

    /** A question that was asked before and not understood to be answered says so first. */
    String question(Doubt doubt) {
        if (doubt.putOff()) {
            return talk("still-waiting", Map.of()) + " " + asked(doubt);
        }
        return doubt.askedBefore() ? talk("not-an-answer", Map.of()) + " " + asked(doubt) : asked(doubt);
    }

    private String asked(Doubt doubt) {
        if (doubt.about() == Doubt.About.ADVICE) {
            return doubt.arguments().get("question");
        }
        String sentence = wording.doubts()
                .get(doubt.about().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        return new Sentence(Objects.requireNonNull(sentence, () -> "no wording doubts." + doubt.about()))
                .fill(name -> Optional.ofNullable(doubt.arguments().get(name)).map(this::readable))
                .orElse(talk("say-again", Map.of()));
    }

    private String readable(String argument) {
        return wording.crops().containsKey(argument)
                ? vocabulary.names().many(argument)
                : argument.replaceAll("-(?!\\d)", " ");
    }

    String talk(String id, Map<String, String> words) {
        return Sentence.talk(wording.talk(), id, words);
    }

    static String upper(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
