package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Amendment;
import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Kind;
import bothy.garden.Logged;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.grammar.CropNames;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import bothy.reading.told.PlantingsMeant;
import bothy.reading.told.Told;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Recognises messages that take back or put right what was just told, and works out the lines that stand from then on. */
final class Corrections {
    /** A message of more words that opens with "sorry" and tells nothing puts nothing right. By judgement. */
    private static final int REGRETS = 14;

    /** Of what was told longer ago nobody says "scrap that". By judgement. */
    private static final int JUST_TOLD_DAYS = 14;

    private static final Set<String> BESIDE = Set.of("too", "also", "another", "besides", "plus");

    private final PhraseBook<String> undo;
    private final PhraseBook<String> cues;
    private final PhraseBook<String> strong;
    private final PhraseBook<String> same;
    private final PhraseBook<String> anywhere;
    private final PhraseBook<String> miscounted;
    private final PhraseBook<String> planned;
    private final PhraseBook<String> elsewhere;
    private final Set<String> leading;
    private final FigureAfterNo figureAfterNo;
    private final WhichEntry whichEntry;

    Corrections(Words words, CropNames cropNames) {
        PhraseFile file = new PhraseFile(words, "corrections", Map.of());
        undo = file.book("/undo", "undo");
        cues = file.book("/cues", "cue");
        strong = file.book("/strong", "strong");
        same = file.book("/same", "same");
        anywhere = file.book("/anywhere", "anywhere");
        miscounted = file.book("/miscounted", "miscounted");
        planned = file.book("/planned", "planned");
        elsewhere = file.book("/elsewhere", "elsewhere");
        leading = leading(words, "/leading-unnamed");
        figureAfterNo = new FigureAfterNo(words);
        whichEntry = new WhichEntry(cropNames);
    }

    /** Words that may stand before those that take something back. */
    static Set<String> leading(Words words, String besides) {
        return Stream.of("/leading", besides)
                .flatMap(at -> words.list("corrections", at).stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    static Set<String> vocabulary(Words words) {
        PhraseFile file = new PhraseFile(words, "corrections", Map.of());
        Set<String> all = new java.util.HashSet<>();
        List.of("/cues", "/undo", "/strong", "/same", "/miscounted", "/planned", "/elsewhere")
                .forEach(at -> all.addAll(file.book(at, at).vocabulary()));
        return all;
    }

    /**
     * What a correcting message comes to, or empty when it corrects nothing.
     *
     * @param told statements that the message would make if it were none
     */
    Optional<Heard> read(Passage passage, List<Told> told, boolean asks) {
        boolean recounts = opens(miscounted, passage);
        boolean forAnother = told.isEmpty() && opens(elsewhere, passage);
        boolean regrets = passage.word(0).equals("sorry")
                && passage.word(1).equals("to")
                && Set.of("say", "report", "tell", "hear").contains(passage.word(2)); // "Sorry to say 2 beans died".
        if (asks && !recounts || passage.size() == 0 || forAnother || regrets) {
            return Optional.empty();
        }
        if (opens(undo, passage) && !figureBehind(passage)) {
            return Optional.of(waits(passage) ? Heard.nothing(Kind.LET_GO) : takenBack(passage));
        }
        if (opens(cues, passage) && SeveralPutRight.ofEachOnly(passage)) {
            return Optional.of(Heard.correcting(List.of())); // "Sorry, karela 2 seeds each": of how many is not told.
        }
        List<Logged> denied = denied(passage);
        if (!denied.isEmpty() && told.isEmpty()) {
            return Optional.of(Heard.takingBack(denied));
        }
        Optional<Heard> several = opens(cues, passage) || opens(strong, passage) || noBeforeComma(passage)
                ? SeveralPutRight.of(passage)
                : Optional.empty();
        if (several.isPresent()) {
            return several;
        }
        if (opens(same, passage) || told.isEmpty() && GoingOn.only(passage)) {
            return SameFor.in(passage);
        }
        boolean ofItsOwn = weatherOfItsOwn(told, passage.situation()) || anotherCropToo(passage, told);
        if (ofItsOwn && !opens(strong, passage)) {
            return Optional.empty();
        }
        if (told.isEmpty() && !recounts && onlyPlanned(passage)) {
            return Optional.empty();
        }
        Changes changes = Changes.in(passage, told);
        boolean meant = recounts
                || opens(strong, passage)
                || opens(undo, passage)
                || changes.contrast()
                || told.isEmpty()
                        && !anywhere.all(passage.tokens(), 0, passage.size(), passage)
                                .isEmpty();
        boolean firm = meant;
        meant |= opens(cues, passage)
                && Set.of("no", "sorry", "oops", "wait", "actually", "nope", "whoops")
                        .contains(passage.word(0))
                // "Sorry not been on, mad week at work. … Will have a look at the weekend": regrets, at length.
                && !(passage.word(0).equals("sorry") && told.isEmpty() && passage.size() > REGRETS);
        boolean leads = meant || opens(cues, passage) || noBeforeComma(passage);
        boolean idle = changes.none() && !firm && !noBeforeComma(passage);
        if (idle || !leads && !Pointing.only(passage, told)) {
            return Optional.empty();
        }
        List<Inquiry> asked = passage.situation().asked();
        if (changes.contrast() && changes.crop() != null && told.isEmpty() && !asked.isEmpty()) {
            // "Not the corn, the tomatillos", right after a question: it is the question that is put right.
            CropSaid crop = changes.crop();
            List<String> ids = PlantingsMeant.ids(PlantingsMeant.of(crop, passage, 0, passage.size(), true));
            return Optional.of(Heard.nothing(Kind.QUESTION)
                    .asking(asked.stream()
                            .map(one -> one.ofCrop(crop.crop()).about(ids))
                            .toList()));
        }
        return corrected(passage, changes, told, meant || noBeforeComma(passage));
    }

    /** "Thinking about leeks next year instead of onions": what is to come was never told wrong. */
    private boolean onlyPlanned(Passage passage) {
        return (DoingDenied.only(passage)
                        || !planned.all(passage.tokens(), 0, passage.size(), passage)
                                .isEmpty())
                && !opens(strong, passage)
                && !opens(cues, passage)
                && !noBeforeComma(passage);
    }

    /** Whether a message opens with words that put something right and hardly say anything else: "correction: 15 beans". */
    boolean opens(Passage passage) {
        return opens(strong, passage) || opens(miscounted, passage) || noBeforeComma(passage);
    }

    /** "No not five, it is four" of a count told lately: put right, whatever was asked meanwhile. */
    Optional<Heard> recounted(Passage passage, List<Told> told) {
        Changes changes = Changes.in(passage, told);
        List<Logged> wrong = changes.contrast() && changes.wrongCount() != null
                ? changes.refuted(passage.situation().lately())
                : List.of();
        return wrong.isEmpty() ? Optional.empty() : Optional.of(amended(wrong, changes));
    }

    /** "The leeks were 56, not 65" of what was told at any time. */
    Optional<Heard> refuted(Passage passage, List<Told> told) {
        Changes changes = Changes.in(passage, told);
        if (!changes.contrast() || changes.wrongCount() == null || changes.crop() == null) {
            return Optional.empty();
        }
        List<Logged> wrong = changes.refuted(passage.situation().earlier());
        return wrong.isEmpty() ? Optional.empty() : Optional.of(amended(wrong, changes));
    }

    /** "Scratch that 16 lb", "scrap that, 8": what stands behind is put in the place of what was told. */
    private boolean figureBehind(Passage passage) {
        return undo.all(passage.tokens(), 0, Math.min(passage.size(), 14), passage).stream()
                .anyMatch(found -> {
                    int at = passage.word(found.end()).equals(",")
                                    || passage.word(found.end()).equals("-")
                            ? found.end() + 1
                            : found.end();
                    int figure = passage.end("n", at);
                    // "Scrap that, 2.5 on the beans": behind it stands what it is of.
                    boolean of = Set.of("on", "for").contains(passage.word(figure));
                    return figure > 0 && (passage.crops().isEmpty() || of);
                });
    }

    /** "Scrap that" right after something that was asked back: nothing of it is written yet, so what was written before it stands. */
    private static boolean waits(Passage passage) {
        Doubt pending = passage.situation().pending();
        return pending != null
                && pending.draftTells()
                && !pending.askedBefore()
                && !pending.putOff()
                && passage.crops().isEmpty()
                && (pending.draft() == null
                        || pending.draft().statements().stream().noneMatch(Statement::sure));
    }

    /** "It was 85 degrees today" after a planting tells of the day; only a temperature told just before can be put right by it. */
    private static boolean weatherOfItsOwn(List<Told> told, Situation situation) {
        return !told.isEmpty()
                && told.stream()
                        .map(one -> one.event().what())
                        .allMatch(what -> (what.ofThePlot() || what == What.TEMPERATURE || what == What.SOIL_CHECKED)
                                && situation.lately().stream()
                                        .noneMatch(
                                                line -> line.entry() instanceof Event event && event.what() == what));
    }

    /** "Sorry, I have 60 onion sets too": of a crop that nothing was told of lately, and beside what was. */
    private static boolean anotherCropToo(Passage passage, List<Told> told) {
        boolean beside = passage.words().stream().anyMatch(BESIDE::contains)
                || passage.message().toLowerCase(Locale.ROOT).contains("as well");
        return beside
                && told.stream()
                        .map(one -> one.event().crop())
                        .anyMatch(crop -> crop != null
                                && passage.situation().lately().stream()
                                        .noneMatch(line ->
                                                line.entry() instanceof Event event && crop.equals(event.crop())));
    }

    private Optional<Heard> corrected(Passage passage, Changes changes, List<Told> told, boolean meant) {
        List<Logged> lately = passage.situation().lately();
        List<Logged> wanted = wanted(passage, changes);
        if (changes.none()) {
            boolean said = meant && told.isEmpty();
            return said && noBeforeComma(passage) && passage.size() < 3
                    ? Optional.empty()
                    : said ? Optional.of(Heard.correcting(List.of())) : Optional.empty();
        }
        if (wanted.isEmpty()) {
            return nothingToCorrect(lately, told, meant, changes);
        }
        if (wanted.size() > 1 && !changes.forAll()) {
            return Optional.of(whichEntry.of(wanted, changes));
        }
        return Optional.of(amended(wanted, changes));
    }

    /** Lines of the last message, unless only an earlier one says what is called wrong. */
    private static List<Logged> wanted(Passage passage, Changes changes) {
        Situation situation = passage.situation();
        List<Logged> earlier =
                changes.contrast() && changes.refuted(situation.lately()).isEmpty()
                        ? changes.refuted(situation.earlier())
                        : List.of();
        if (earlier.isEmpty()) {
            List<Logged> recounted = recounted(changes, situation);
            return recounted.isEmpty() ? changes.lines(situation) : recounted;
        }
        return earlier;
    }

    /** "Sorry, only 7 beans", when lettuces were told last: the newest count of beans of this day is meant, not 7 beans for the lettuces. */
    private static List<Logged> recounted(Changes changes, Situation situation) {
        boolean toldLast = situation.lately().stream().anyMatch(line -> ofCrop(changes, line));
        return changes.count() == null || changes.crop() == null || changes.contrast() || toldLast
                ? List.of()
                : situation.earlier().stream()
                        .filter(line -> ofCrop(changes, line)
                                && line.entry() instanceof Event event
                                && event.count() != null
                                && situation.today().equals(event.on()))
                        .limit(1)
                        .toList();
    }

    private static boolean ofCrop(Changes changes, Logged line) {
        return line.entry() instanceof Event event
                && changes.crop() != null
                && changes.crop().canMean(event.crop());
    }

    private static Optional<Heard> nothingToCorrect(
            List<Logged> lately, List<Told> told, boolean meant, Changes changes) {
        if (!told.isEmpty() && !changes.contrast() && (!meant || lately.isEmpty())) {
            return Optional.empty();
        }
        return meant ? Optional.of(Heard.correcting(List.of())) : Optional.empty();
    }

    private Heard takenBack(Passage passage) {
        Situation situation = passage.situation();
        List<Logged> named =
                situation.lately().stream().filter(line -> names(passage, line)).toList();
        if (named.isEmpty() && !passage.crops().isEmpty()) {
            boolean pointing = passage.words().stream().limit(3).anyMatch(Set.of("that", "it")::contains);
            named = situation.earlier().stream()
                    .filter(line -> names(passage, line))
                    .filter(line -> !pointing
                            || line.at()
                                    .atZone(situation.grower().zone())
                                    .toLocalDate()
                                    .isAfter(situation.today().minusDays(JUST_TOLD_DAYS)))
                    .limit(1)
                    .toList();
        }
        // What is named and not found is not to be mistaken for what was told last.
        return Heard.takingBack(named.isEmpty() && passage.crops().isEmpty() ? situation.lately() : named);
    }

    /** "No, I haven't watered the pumpkins": the lines that the message says never happened. */
    private static List<Logged> denied(Passage passage) {
        boolean opens =
                Set.of("no", "nope", "sorry", "actually", "wait", "oops").contains(passage.word(0));
        boolean not = passage.tokens().stream().anyMatch(token -> token.is("not") || token.is("never"));
        if (!opens || !not) {
            return List.of();
        }
        Set<What> doings = EntryDescribed.in(passage, 0, passage.size()).doings();
        return passage.situation().lately().stream()
                .filter(line -> line.entry() instanceof Event event
                        && doings.contains(event.what())
                        && (passage.crops().isEmpty() || names(passage, line)))
                .toList();
    }

    private static boolean names(Passage passage, Logged line) {
        return line.entry() instanceof Event event
                && passage.crops().stream().anyMatch(crop -> crop.canMean(event.crop()));
    }

    static Heard amended(List<Logged> lines, Changes changes) {
        return Heard.correcting(lines.stream()
                .map(line -> new Amendment(line.number(), changes.applied(line.entry())))
                .toList());
    }

    private boolean opens(PhraseBook<String> book, Passage passage) {
        return book.all(passage.tokens(), 0, Math.min(passage.size(), 14), passage).stream()
                .anyMatch(found -> passage.tokens().subList(0, found.start()).stream()
                        .allMatch(token -> token.mark() || leading.contains(token.word())));
    }

    private boolean noBeforeComma(Passage passage) {
        return FigureAfterNo.NOES.contains(passage.word(0))
                && passage.size() > 1
                && (figureAfterNo.in(passage)
                        || passage.tokens().get(1).mark()
                        || passage.word(1).equals("it")
                        || passage.word(1).equals("that"));
    }
}
