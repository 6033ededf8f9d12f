package bothy.replying;

import bothy.almanac.Sheet;
import bothy.almanac.Wording;
import bothy.almanac.troubles.TroubleBook;
import bothy.garden.Diagnosis;
import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Reply;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Words one reply. Safe for use by many threads. */
public final class Replier {
    /** Before this nothing is said. */
    private static final String PERSON_UNWELL = "caution-person-unwell";

    private final Wording wording;
    private final Map<String, Sheet> sheets;
    private final TroubleBook troubles;

    /**
     * What a trouble teaches, to be kept as a note.
     *
     * @param outcome "better", "worse" or "died"
     */
    public Optional<String> lesson(Diagnosis diagnosis, String outcome, Garden garden) {
        return new Lessons(troubles.words()).of(diagnosis, outcome).map(figures(garden)::in);
    }

    /** A replier that knows of no troubles. */
    public Replier(Wording wording, Map<String, Sheet> sheets) {
        this(wording, sheets, TroubleBook.none());
    }

    public Replier(Wording wording, Map<String, Sheet> sheets, TroubleBook troubles) {
        this.wording = wording;
        this.sheets = sheets;
        this.troubles = troubles;
    }

    /** The reply to a message. */
    public Answer answer(Turn turn) {
        Phrasing phrasing = phrasing(turn);
        List<String> paragraphs = new ArrayList<>();
        Choosing choosing = new Choosing(wording, turn);
        List<Given> spoken = choosing.spoken();
        paragraphs.addAll(phrasing.advice(spoken));
        boolean somebodyUnwell = spoken.stream().anyMatch(given -> given.id().equals(PERSON_UNWELL));
        phrasing.receipts()
                .line(turn.written(), turn.takenBack(), turn.standingAgain())
                .ifPresent(receipt -> paragraphs.add(somebodyUnwell ? paragraphs.size() : 0, receipt));
        paragraphs.addAll(listsAsked(turn, phrasing));
        Set<Given> all = withListed(spoken, turn, phrasing);
        paragraphs.addAll(phrasing.advice(added(all, choosing)));
        if (!somebodyUnwell) {
            paragraphs.addAll(phrasing.unanswered().lines(spoken));
        }
        if (paragraphs.isEmpty() && turn.doubt() == null) {
            paragraphs.add(phrasing.nothingUnderstood());
        }
        LocalDate look = phrasing.nextLook(spoken)
                .or(() -> phrasing.nextLook(List.copyOf(all)))
                .orElse(null);
        Doubt doubt = turn.doubt() != null
                ? turn.doubt()
                : phrasing.questionOf(spoken).orElse(null);
        return finished(turn, paragraphs, List.copyOf(all), look, doubt);
    }

    /** What stands in a list asked for was said as well. */
    private static Set<Given> withListed(List<Given> spoken, Turn turn, Phrasing phrasing) {
        Set<Given> all = new LinkedHashSet<>(spoken);
        for (Inquiry inquiry : turn.heard().inquiries()) {
            if (inquiry.question() == Question.TO_DO) {
                all.addAll(phrasing.week().listed(turn.given(), inquiry));
            }
        }
        return all;
    }

    /** Adds the cautions that belong to what is said but are not said yet, and returns them. */
    private static List<Given> added(Set<Given> all, Choosing choosing) {
        List<Given> missing = choosing.cautions(all).stream()
                .filter(one -> !all.contains(one))
                .toList();
        all.addAll(missing);
        return missing;
    }

    private Answer finished(Turn turn, List<String> paragraphs, List<Given> spoken, LocalDate look, Doubt unitless) {
        Phrasing phrasing = phrasing(turn);
        FixedFigures figures = figures(turn.garden());
        Doubt doubt = unitless == null ? null : figures.in(unitless);
        if (look != null) {
            paragraphs.add(phrasing.lookAgain(look));
        }
        if (doubt != null) {
            paragraphs.add(phrasing.question(doubt));
        }
        return new Answer(new Reply(figures.in(String.join("\n\n", paragraphs)), buttons(doubt)), spoken, doubt, look);
    }

    private static FixedFigures figures(Garden garden) {
        return new FixedFigures(garden.grower().units());
    }

    private Phrasing phrasing(Turn turn) {
        Vocabulary vocabulary = new Vocabulary(wording, sheets, turn.garden(), turn.today());
        Verdicts verdicts = new Verdicts(troubles, vocabulary.names(), turn);
        return new Phrasing(wording, vocabulary, sheets, verdicts, turn);
    }

    private static List<String> buttons(Doubt doubt) {
        return doubt == null
                ? List.of()
                : doubt.choices().stream().map(Choice::label).toList();
    }

    private List<String> listsAsked(Turn turn, Phrasing phrasing) {
        List<String> lists = new ArrayList<>();
        for (Inquiry inquiry : turn.heard().inquiries()) {
            if (inquiry.question() == Question.TO_DO) {
                lists.add(phrasing.week().list(turn.given(), inquiry));
            } else if (Recorded.answers(inquiry)) {
                lists.add(phrasing.recorded().list(inquiry));
            } else if (inquiry.question() == Question.STATUS) {
                lists.add(phrasing.plot().list(turn.given(), inquiry));
            }
        }
        // "Have I told you all? How much in total" asks twice for one list.
        return lists.stream().distinct().toList();
    }

    /** What goes out unasked: the list, or the urgent and due advice given. */
    public Answer unasked(Turn turn, Unasked unasked) {
        List<Given> due = unasked.due();
        Phrasing phrasing = phrasing(turn);
        List<String> paragraphs = new ArrayList<>();
        Set<Given> said = new LinkedHashSet<>(due);
        List<Given> listed = new ArrayList<>();
        if (unasked.opening() != null) {
            paragraphs.add(unasked.opening());
        }
        if (unasked.week()) {
            Inquiry week = Inquiry.of(Question.TO_DO, null, List.of());
            paragraphs.add(phrasing.week().list(turn.given(), week));
            listed.addAll(phrasing.week().listed(turn.given(), week));
            said.addAll(listed);
        } else {
            paragraphs.addAll(phrasing.advice(due));
        }
        paragraphs.addAll(phrasing.advice(added(said, new Choosing(wording, turn))));
        LocalDate look =
                phrasing.nextLook(due).or(() -> phrasing.nextLook(listed)).orElse(null);
        return finished(
                turn,
                paragraphs,
                List.copyOf(said),
                look,
                Optional.ofNullable(unasked.first())
                        .or(() -> phrasing.questionOf(due))
                        .or(() -> phrasing.questionOf(today(listed, turn)))
                        .orElse(unasked.question()));
    }

    private static List<Given> today(List<Given> listed, Turn turn) {
        return listed.stream()
                .filter(given -> !given.due().isAfter(turn.today()))
                .toList();
    }

    /** Whether the wording of an advice ends with a question of its own. */
    public boolean asks(Given given) {
        Wording.Says says = wording.says(given.id());
        return says != null && says.in(given.crop()).ask() != null;
    }

    /** The question whether a task is done, with the answers done, not yet and skip; empty for what is no task. */
    public Optional<Doubt> whetherDone(Given given, Turn turn) {
        return new FollowingUp(wording, phrasing(turn), turn).whetherDone(given).map(figures(turn.garden())::in);
    }

    /** What a crop is called where the garden lies. */
    public String named(String crop, Garden garden, LocalDate today) {
        return new Vocabulary(wording, sheets, garden, today).names().many(crop);
    }

    /** A fixed sentence of the wording. */
    public String talk(String id) {
        return Objects.requireNonNull(wording.talk().get(id), () -> "no wording talk." + id);
    }

    /** A sentence of the wording with names filled in; {@code [parts]} with unknown names are left out. */
    public String talk(String id, Map<String, String> words) {
        return Sentence.talk(wording.talk(), id, words);
    }

    /** Why advice was given: its rules, the facts that they matched, how sure it is and the source; the same for several plantings once. */
    public List<String> why(List<Given> spoken, Turn turn) {
        Phrasing phrasing = phrasing(turn);
        Explaining explaining = new Explaining(wording, new Vocabulary(wording, sheets, turn.garden(), turn.today()));
        Map<String, String> ofTroubles = new LinkedHashMap<>();
        Map<String, List<Given>> alike = new LinkedHashMap<>();
        for (Given given : spoken) {
            Optional<String> ofTrouble = phrasing.whyTrouble(given);
            String kind = ofTrouble.isPresent() ? Turn.key(given) : Explaining.kind(given);
            ofTrouble.ifPresent(why -> ofTroubles.put(kind, why));
            alike.computeIfAbsent(kind, none -> new ArrayList<>()).add(given);
        }
        FixedFigures figures = figures(turn.garden());
        return alike.entrySet().stream()
                .map(one -> ofTroubles.containsKey(one.getKey())
                        ? ofTroubles.get(one.getKey())
                        : explaining.why(one.getValue()))
                .map(figures::in)
                .toList();
    }

    /** A diary line in a few words, for receipts and for choosing among lines. */
    public String line(Event event, Turn turn) {
        return phrasing(turn)
                .receipts()
                .words(List.of(event))
                .orElse(event.what().word());
    }

    /** A day as the grower reads it. */
    public String day(LocalDate date, Turn turn) {
        return phrasing(turn).vocabulary().quantities().nearDay(date);
    }
}
