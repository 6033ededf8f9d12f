package bothy.reading;

import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Plan;
import bothy.garden.Question;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.grammar.Clauses;
import bothy.reading.grammar.CropNames;
import bothy.reading.grammar.Grammar;
import bothy.reading.grammar.HeadedList;
import bothy.reading.grammar.LaterSentences;
import bothy.reading.grammar.Moods;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.told.Asking;
import bothy.reading.told.Particulars;
import bothy.reading.told.Recalled;
import bothy.reading.told.Statements;
import bothy.reading.told.Told;
import bothy.reading.told.UncertainBeside;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Gathers what the sentences of a message tell, ask and show. */
final class Sentences {
    private static final String HAULMS = "haulms cut";
    private static final Set<String> WEATHER_TOLD = Set.of("temperature", "rain", "frost");

    /** "I'm in Kent, what can I sow now" tells a place and asks. */
    private static final Set<String> QUESTION_WORDS = Set.of(
            "what", "when", "which", "where", "how", "can", "should", "shall", "is", "am", "do", "who", "anything");

    private final Clauses clauses;
    private final Statements statements;
    private final Asking asking;
    private final Questions questions;
    private final Inquiries inquiries;
    private final RipenessShown ripeness;
    private final TwoQuestions twoQuestions;
    private final Signs signs;
    private final ClosestSigns closestSigns;
    private final Settings settings;
    private final KindOf kinds;
    private final CropNames cropNames;
    private final PointsBack pointsBack;
    private final FrostToCome frostToCome;
    private final GrowingWished growingWished;

    /** What was gathered from all sentences. */
    record Gathered(
            List<Told> told,
            List<Plan> plans,
            List<Inquiry> asked,
            List<SignSeen> seen,
            List<SettingChange> set,
            boolean chores) {

        /** The same with other questions. */
        Gathered asking(List<Inquiry> questions) {
            return new Gathered(told, plans, questions, seen, set, chores);
        }
    }

    Sentences(
            Moods moods,
            Particulars particulars,
            Questions questions,
            Signs signs,
            Settings settings,
            KindOf kinds,
            FrostToCome frostToCome,
            GrowingWished growingWished,
            Grammar grammar) {
        this.growingWished = growingWished;
        this.frostToCome = frostToCome;
        this.clauses = new Clauses(moods);
        this.statements = new Statements(particulars, grammar);
        this.asking = new Asking(grammar.cropNames());
        this.questions = questions;
        this.inquiries = new Inquiries(questions);
        this.ripeness = new RipenessShown(questions.cues());
        this.twoQuestions = new TwoQuestions(inquiries);
        this.pointsBack = new PointsBack(inquiries, questions.matters());
        this.signs = signs;
        this.closestSigns = new ClosestSigns(signs);
        this.settings = settings;
        this.kinds = kinds;
        this.cropNames = grammar.cropNames();
    }

    Gathered gathered(Passage whole) {
        List<Clause> said = new ArrayList<>();
        List<int[]> listed = new ArrayList<>();
        List<Inquiry> asked = new ArrayList<>();
        List<SignSeen> seen = new ArrayList<>();
        List<SettingChange> set = new ArrayList<>();
        List<Plan> toCome = new ArrayList<>();
        Passage passage = whole;
        int[] labelled = null;
        int[] behind = null;
        for (int[] sentence : whole.sentences()) {
            int[] before = behind;
            behind = PointsBack.weighsOnly(whole, sentence) ? behind : sentence;
            List<Found<String>> troubles = TroubleOrDoing.withoutSoil(passage, seenIn(passage, sentence));
            int asks = questions.begins(passage, sentence);
            boolean asksPlainly = asks >= sentence[0] && QUESTION_WORDS.contains(passage.word(asks));
            boolean asksAfter = asksPlainly && asks > sentence[0] + 1;
            List<SettingChange> told = settings.in(passage, sentence, asksAfter ? asks : sentence[1]);
            boolean asksMeaning = !questions.meanings().in(passage, sentence).isEmpty();
            if ((mark(passage, sentence) || asksMeaning)
                    && told.stream().allMatch(one -> one.setting().equals("soil"))) {
                told = List.of(); // "Which is less trouble on clay?", "what is loam"
            }
            passage = without(passage, sentence, troubles, !told.isEmpty());
            // "Ate the last one today, remind me in March": March is the day of no eating.
            passage = passage.withoutDays(settings.reminders().begins(passage, sentence, told), sentence[1]);
            passage = FeedLabels.apart(told.isEmpty() ? passage : settings.apart(passage, sentence), sentence);
            int begins = questions.begins(passage, sentence);
            labelled = begins < 0 && FeedLabels.read(passage, sentence) ? sentence : labelled;
            boolean safety = false;
            boolean frost = told.isEmpty() && frostToCome.in(passage, sentence);
            if (frost || begins >= 0 && HeatToCome.ahead(passage, sentence)) {
                passage = FrostToCome.unwritten(passage, sentence);
            }
            boolean nothingElse = begins < 0 && told.isEmpty() && !frost && troubles.isEmpty();
            if (nothingElse && !doing(passage, sentence) && HeatToCome.ahead(passage, sentence)) {
                // "It is going to be 35 all week": what is told of heat to come asks what to do.
                passage = FrostToCome.unwritten(passage, sentence);
                asked.add(HeatToCome.heatWave());
            }
            if (nothingElse && questions.toldForAdvice().in(passage, sentence)) {
                asked.addAll(ToldForAdvice.asked(inquiries.all(passage, sentence, sentence[0])));
            }
            if (frost && begins < 0) {
                toCome.add(FrostToCome.plan(passage, sentence));
            } else if (begins >= 0
                    && told.stream().noneMatch(ReminderWishes::ofMessages)
                    && (told.isEmpty()
                            || asksAfter
                            || (asksPlainly || mark(passage, sentence)) && asksToo(passage, sentence, begins))) {
                Passage here = passage;
                List<Inquiry> two = frost ? List.of() : twoQuestions.in(passage, sentence, begins);
                List<Inquiry> all = !two.isEmpty()
                        ? two
                        : inquiries.all(passage, sentence, begins).stream()
                                .map(inquiry -> frost ? FrostToCome.asked(inquiry, here, sentence) : inquiry)
                                .toList();
                all = OffTopic.each(all, kinds, passage, sentence, begins);
                all = frost ? all : pointsBack.with(before, all, passage, sentence, begins);
                if (all.size() == 1 && !asked.isEmpty()) {
                    all = List.of(GoesOnAsking.from(asked.get(asked.size() - 1), all.get(0), passage, begins));
                }
                all = frost ? all : questions.notes().in(all, passage, begins, sentence[1], troubles);
                troubles = NotesAsked.withoutAsked(troubles, all, begins);
                toCome.addAll(frost ? FrostToCome.beside(all, passage, sentence) : List.of());
                asked.addAll(NarrowsDown.only(asked, all, passage, sentence) ? List.of() : all);
                safety = all.get(0).question() == Question.SAFE;
                troubles = InQuestion.seen(passage, troubles, all.get(0), begins);
                troubles = questions.cues().noTroubles(passage, all.get(0), troubles);
            }
            for (Found<String> trouble : Signs.once(passage, troubles)) {
                seen.addAll(SeedSeen.each(passage, sentence, signs.seen(passage, sentence, trouble)));
            }
            set.addAll(told);
            List<Clause> own = new ArrayList<>(
                    clauses.in(apart(passage, troubles), sentence[0], begins < 0 ? sentence[1] : begins));
            int reminder = settings.reminders().begins(passage, sentence, told);
            own.removeIf(clause -> clause.action().start() > reminder);
            if (begins >= 0) {
                // "Sow carrots how deep" orders nothing.
                own.removeIf(clause -> clause.mood() == Mood.UNCLEAR || InQuestion.onlyNamed(whole, sentence, clause));
                // "Onions in store at 10 °C, how long will they last" asks of that warmth.
                boolean ofStore =
                        !asked.isEmpty() && asked.get(asked.size() - 1).question() == Question.HOW_STORE;
                own.removeIf(clause -> ofStore && clause.action().action().equals("temperature"));
                Inquiry last = asked.isEmpty() ? null : asked.get(asked.size() - 1);
                own.removeIf(clause -> last != null
                        && questions
                                .cues()
                                .ripeness(
                                        whole,
                                        last,
                                        clause.action().start(),
                                        clause.action().end()));
            }
            if (begins < 0) {
                int[] here = sentence;
                own.removeIf(clause -> ripeness.only(whole, here, clause.action()));
            }
            if (begins < 0 && before != null && mark(passage, before)) {
                // "How do you pick chard? Pull the stalk or cut it": goes on asking.
                own.removeIf(clause ->
                        clause.mood() == Mood.UNCLEAR && clause.action().form() == Form.PLAIN);
            }
            if (safety) {
                // "The toddler just ate a raw bean, is that dangerous?"
                own.removeIf(clause -> Set.of("ate", "eaten", "eat", "swallowed", "munched")
                        .contains(whole.word(clause.action().words().nextSetBit(0))));
            }
            boolean bare = own.isEmpty() && begins < 0 && troubles.isEmpty() && told.isEmpty();
            List<Clause> rest = LaterSentences.counted(passage, sentence, own, said);
            List<Clause> more = bare
                    ? LaterSentences.goingOn(passage, sentence, said)
                    : LaterSentences.closing(passage, rest, listed);
            List<Clause> found = begins < 0 && troubles.isEmpty() && told.isEmpty()
                    ? Weighed.with(passage, sentence, more)
                    : Weighed.beforeTheTotal(passage, sentence, begins, asked, more);
            if (!found.isEmpty() || !HeadedList.lists(passage, sentence)) {
                listed.clear();
            } else if (bare) {
                listed.add(sentence);
            }
            said.addAll(found);
        }
        if (labelled != null && asked.stream().noneMatch(one -> one.question() == Question.FEED_DOSE)) {
            asked.add(inquiries.ofLabel(passage, labelled));
        }
        set.removeIf(one -> !seen.isEmpty() && ReminderWishes.over(whole, one));
        asked.replaceAll(inquiry -> LookingBack.of(whole, WorthKeeping.of(whole, inquiry), seen));
        asked.replaceAll(inquiry -> AwayAsked.of(whole, set, DripAsked.of(whole, inquiry)));
        said.removeIf(clause -> FeedLabels.onlyNamed(whole, clause, asked));
        said.removeIf(clause ->
                !seen.isEmpty() && (TroubleOrDoing.beside(whole, clause) || BesideATrouble.only(whole, clause, seen)));
        Chores.handOn(whole, said);
        List<Clause> chores = said.stream().filter(Chores::is).toList();
        said.removeAll(chores);
        List<Told> told = statements.told(passage, said).stream()
                .filter(one -> !ofNoPlant(one.event()) && !CuesTold.curd(whole, one.event()))
                .toList();
        List<Told> certain = seen.isEmpty() ? told : Recalled.without(told, passage.situation());
        List<Told> lines = UncertainBeside.without(certain, !asked.isEmpty() || !seen.isEmpty());
        if (asked.size() == 1 && HowLongAlone.is(whole, lines)) {
            asked.clear();
        }
        List<Plan> plans = Stream.concat(toCome.stream(), statements.plans(passage, said).stream())
                .toList();
        asked.addAll(DripAsked.told(whole, asked, lines.isEmpty() && seen.isEmpty()));
        if (lines.isEmpty() && plans.isEmpty() && asked.isEmpty() && seen.isEmpty()) {
            asked.addAll(growingWished.in(passage));
            if (asked.isEmpty() && set.isEmpty()) {
                asked.addAll(ripeness.asked(whole));
            }
            questions
                    .notes()
                    .unasked(whole)
                    .filter(one -> asked.isEmpty() && set.isEmpty())
                    .ifPresent(asked::add);
        }
        return new Gathered(
                lines,
                plans,
                SeedSeen.asked(passage, seen, asked),
                closestSigns.of(whole, seen),
                set,
                chores.stream().anyMatch(clause -> clause.mood() == Mood.DONE));
    }

    /** "Cut the tops off", where nothing grows whose tops could be meant. */
    private boolean ofNoPlant(Event event) {
        boolean haulms = event.what() == What.NOTE && HAULMS.equals(event.detail()) && event.crop() == null;
        // "Four kohlrabi the size of a tennis ball" have set no fruit.
        return haulms || event.what() == What.FRUIT_SET && event.crop() != null && !cropNames.bears(event.crop());
    }

    /** "When may the sweetcorn go out, we are in Perthshire?" tells a setting and asks. */
    private boolean asksToo(Passage passage, int[] sentence, int begins) {
        Inquiry first = inquiries.all(passage, sentence, begins).get(0);
        return first.question() != Question.OTHER || first.topic() != null;
    }

    /** Whether a sentence tells what was done to plants, and not of the weather alone. */
    private static boolean doing(Passage passage, int[] sentence) {
        return Passage.within(passage.actions(), sentence[0], sentence[1]).stream()
                .anyMatch(action -> !WEATHER_TOLD.contains(action.action()));
    }

    private static boolean mark(Passage passage, int[] sentence) {
        return passage.word(sentence[1]).equals("?");
    }

    private List<Found<String>> seenIn(Passage passage, int[] sentence) {
        List<Found<String>> seen = signs.in(passage, sentence);
        return seen.isEmpty() ? signs.in(PartsMeant.named(passage, sentence), sentence) : seen;
    }

    /** What tells of trouble or of habit is no doing: "flowers dropping", "our last frost is in May". */
    private Passage without(Passage passage, int[] sentence, List<Found<String>> troubles, boolean setting) {
        List<ActionSaid> kept = new ArrayList<>(passage.actions());
        kept.removeIf(action -> action.start() >= sentence[0]
                && action.end() <= sentence[1]
                && (setting && settled(action)
                        || settings.tellsPlace(passage, action)
                        || TroubleOrDoing.troubled(passage, action, troubles)
                        || Lookalikes.only(passage, action)));
        return passage.with(kept);
    }

    /** A crop named only with a trouble is not the object of a doing: "the peas are up but no sign of the carrots". */
    private static Passage apart(Passage passage, List<Found<String>> troubles) {
        return passage.withThings(crop -> NotThePlants.eatenWith(passage, crop)
                || troubles.stream()
                        .anyMatch(trouble -> trouble.start() <= crop.start()
                                && crop.end() <= trouble.end()
                                && !doneBefore(passage, crop, trouble)
                                && passage.actions().stream()
                                        .noneMatch(action ->
                                                action.start() < trouble.end() && trouble.start() < action.end())));
    }

    /** "Dug 5 kg of potatoes, some are hollow": the crop was dug before the trouble is told of it. */
    private static boolean doneBefore(Passage passage, CropSaid crop, Found<String> trouble) {
        boolean counted = passage.numbers().stream().anyMatch(number -> number.end() == crop.start());
        return (counted || parted(passage, crop.end(), trouble.end()))
                && passage.actions().stream()
                        .anyMatch(
                                action -> action.end() <= crop.start() && !parted(passage, action.end(), crop.start()));
    }

    private static boolean parted(Passage passage, int from, int to) {
        for (int at = from; at < to; at++) {
            if (passage.tokens().get(at).mark() || Set.of("and", "but").contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    private static boolean settled(ActionSaid action) {
        return Set.of("frost", "soil-checked", "temperature", "moved").contains(action.action());
    }

    Heard heard(Passage passage, Gathered gathered) {
        List<Statement> lines = gathered.told().stream().map(Told::statement).toList();
        boolean nothing = lines.isEmpty()
                && gathered.asked().isEmpty()
                && gathered.seen().isEmpty()
                && gathered.set().isEmpty()
                && gathered.plans().isEmpty();
        return CapAsked.back(heard(passage, gathered, lines, nothing), passage);
    }

    private Heard heard(Passage passage, Gathered gathered, List<Statement> lines, boolean nothing) {
        return new Heard(
                lines,
                gathered.asked(),
                gathered.seen(),
                gathered.set(),
                List.of(),
                gathered.plans(),
                doubt(passage, gathered),
                nothing && !kinds.onlyFriendly(passage) && !passage.message().isBlank()
                        ? List.of(brief(passage.message()))
                        : List.of(),
                kinds.of(
                        passage,
                        lines,
                        gathered.asked().stream()
                                .filter(inquiry -> !inquiry.onlyTold())
                                .toList(),
                        gathered.seen(),
                        gathered.set(),
                        gathered.plans(),
                        gathered.chores()),
                false);
    }

    private Doubt doubt(Passage passage, Gathered gathered) {
        Doubt asked = asking.about(gathered.told());
        return asked != null || !gathered.set().isEmpty()
                ? asked
                : settings.nowhere(passage)
                        .map(found -> new Doubt(Doubt.About.WHICH_PLACE, Map.of("found", found), List.of(), null))
                        .or(() -> settings.unknownPlace(passage)
                                .filter(found -> gathered.told().isEmpty()
                                        && gathered.asked().isEmpty()
                                        && gathered.seen().isEmpty())
                                .map(found ->
                                        new Doubt(Doubt.About.UNKNOWN_PLACE, Map.of("found", found), List.of(), null)))
                        .orElse(null);
    }

    private static String brief(String message) {
        String text = message.strip();
        return text.length() > 80 ? text.substring(0, 80) : text;
    }
}
