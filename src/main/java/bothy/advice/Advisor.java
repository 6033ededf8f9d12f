package bothy.advice;

import bothy.advice.Reasons.Inference;
import bothy.advice.clinic.Clinic;
import bothy.advice.clinic.Clinic.Found;
import bothy.advice.facts.Answered;
import bothy.advice.facts.Asked;
import bothy.advice.facts.AtStage;
import bothy.advice.facts.Case;
import bothy.advice.facts.Evidence;
import bothy.advice.facts.Meant;
import bothy.advice.facts.Sign;
import bothy.advice.facts.Told;
import bothy.advice.facts.Verdict;
import bothy.advice.reckoned.NothingUpChance;
import bothy.almanac.Climates;
import bothy.almanac.Places;
import bothy.almanac.Sheet;
import bothy.almanac.SowingCalendars;
import bothy.almanac.troubles.TroubleBook;
import bothy.garden.Advice;
import bothy.garden.Diagnosis;
import bothy.garden.Doubt;
import bothy.garden.Given;
import bothy.garden.Given.Neglect;
import bothy.garden.Given.Occasion;
import bothy.garden.Given.Sureness;
import bothy.garden.Planting;
import bothy.garden.Stage;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.kie.api.runtime.KieSession;

/** Gives advice: one stateless run of the rules for each day that is asked about. Safe for use by many threads. */
public final class Advisor implements AutoCloseable {
    /** No garden needs as many; a rule that feeds itself is stopped here. */
    private static final int MOST_FIRINGS = 20_000;

    private static final int FRESH_STAGE_DAYS = 30;

    private final RuleBook rules;
    private final DayFacts dayFacts;
    private final Map<String, Sheet> sheets;
    private final TroubleBook troubles;

    /** An advisor that looks into no troubles. */
    public Advisor(RuleBook rules, Map<String, Sheet> sheets, Places places) {
        this(rules, sheets, places, TroubleBook.none(), Climates.ofNoPlace(), SowingCalendars.none());
    }

    /**
     * @param troubles causes of troubles and what tells them apart
     */
    public Advisor(RuleBook rules, Map<String, Sheet> sheets, Places places, TroubleBook troubles) {
        this(rules, sheets, places, troubles, Climates.ofNoPlace(), SowingCalendars.none());
    }

    /**
     * @param troubles causes of troubles and what tells them apart
     * @param climates what is guessed from the grower's place
     * @param calendars when crops are sown where frost does not say it
     */
    public Advisor(
            RuleBook rules,
            Map<String, Sheet> sheets,
            Places places,
            TroubleBook troubles,
            Climates climates,
            SowingCalendars calendars) {
        this.rules = rules;
        this.dayFacts = new DayFacts(sheets, places, climates, calendars);
        this.sheets = sheets;
        this.troubles = troubles;
    }

    /** The troubles that it looks into. */
    public TroubleBook troubles() {
        return troubles;
    }

    /**
     * Runs the rules.
     *
     * @throws AdviceFailed when a rule fails in the run, or rules keep feeding each other
     */
    public Advised advise(Day day) {
        try {
            return advised(day);
        } catch (AdviceFailed known) {
            throw known;
        } catch (RuntimeException thrown) {
            throw new AdviceFailed(String.valueOf(thrown.getMessage()), thrown);
        }
    }

    private Advised advised(Day day) {
        Clinic clinic = new Clinic(troubles, day);
        List<Object> facts = dayFacts.of(day, clinic.plantings());
        KieSession session = rules.session(
                Map.of("today", day.today(), "plantings", byId(every(Planting.class, facts)), "sheets", sheets));
        try {
            Reasons reasons = new Reasons();
            session.addEventListener((org.kie.api.event.rule.AgendaEventListener) reasons);
            session.addEventListener((org.kie.api.event.rule.RuleRuntimeEventListener) reasons);
            List<NothingUpChance> seedbeds = every(NothingUpChance.class, facts);
            // What is likely of seed that is not up is weighed with the case first, so that both tell the same chances.
            facts.stream().filter(fact -> !(fact instanceof NothingUpChance)).forEach(session::insert);
            clinicFacts(clinic, session).forEach(session::insert);
            fire(session);
            List<Diagnosis> diagnoses = clinic.diagnoses(found(session, reasons), freshStages(session, day), seedbeds);
            Clinic.verdicts(diagnoses).forEach(session::insert);
            Clinic.seedbeds(seedbeds, diagnoses).forEach(session::insert);
            fire(session);
            return gather(session, reasons, day, diagnoses);
        } finally {
            session.dispose();
        }
    }

    private static Map<String, Planting> byId(List<Planting> plantings) {
        Map<String, Planting> byId = new HashMap<>();
        plantings.forEach(planting -> byId.put(planting.id(), planting));
        return byId;
    }

    private static <T> List<T> every(Class<T> kind, List<Object> facts) {
        return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Lets go of the compiled rules; no run may be under way. */
    @Override
    public void close() {
        rules.close();
    }

    private static void fire(KieSession session) {
        if (session.fireAllRules(MOST_FIRINGS) >= MOST_FIRINGS) {
            throw new AdviceFailed("the rules never come to an end", null);
        }
    }

    /** The facts of the cases, with the sheets of crops that no planting brought in. */
    private List<Object> clinicFacts(Clinic clinic, KieSession session) {
        List<Object> facts = new ArrayList<>(clinic.facts());
        clinic.crops().stream()
                .map(sheets::get)
                .filter(sheet -> sheet != null && session.getFactHandle(sheet) == null)
                .forEach(facts::add);
        return facts;
    }

    /** What the rules found for and against causes, as the rules stand in their files, so that the order never varies. */
    private static List<Found> found(KieSession session, Reasons reasons) {
        record Placed(Found found, int order) {}
        List<Placed> placed = new ArrayList<>();
        for (Object fact : session.getObjects()) {
            Inference inference = fact instanceof Evidence || fact instanceof Answered ? reasons.of(fact) : null;
            if (inference != null) {
                placed.add(
                        new Placed(new Found(fact, inference.rule().getName(), inference.source()), inference.order()));
            }
        }
        placed.sort(Comparator.comparingInt(Placed::order)
                .thenComparing(one -> one.found().fact().toString()));
        return placed.stream().map(Placed::found).toList();
    }

    private static Map<String, Stage> stages(KieSession session) {
        Map<String, Stage> stages = new HashMap<>();
        for (Object fact : session.getObjects()) {
            if (fact instanceof AtStage at) {
                stages.put(at.planting(), at.stage());
            }
        }
        return stages;
    }

    /**
     * A stage that a planting came to long ago says little about where it stands now, since nobody may have told the next; but what was
     * stored stays in store.
     */
    private static Map<String, Stage> freshStages(KieSession session, Day day) {
        Map<String, Stage> stages = new HashMap<>();
        for (Object fact : session.getObjects()) {
            if (fact instanceof AtStage at
                    && at.since() != null
                    && (at.stage() == Stage.STORED
                            || !at.since().isBefore(day.today().minusDays(FRESH_STAGE_DAYS)))) {
                stages.put(at.planting(), at.stage());
            }
        }
        return stages;
    }

    private static Advised gather(KieSession session, Reasons reasons, Day day, List<Diagnosis> diagnoses) {
        List<Ordered> found = new ArrayList<>();
        for (Object fact : session.getObjects()) {
            if (fact instanceof Advice advice) {
                found.add(new Ordered(
                        given(advice, reasons, day), reasons.of(advice).order()));
            }
        }
        // As the rules stand in their files, so the steps of a task follow each other.
        found.sort(Comparator.comparing((Ordered one) -> one.given().neglect())
                .thenComparing(one -> one.given().due())
                .thenComparing(Ordered::order)
                .thenComparing(one -> String.valueOf(one.given().planting())));
        List<Given> given = strongest(found);
        return new Advised(given, stages(session), reasons.fired(), diagnoses);
    }

    private record Ordered(Given given, int order) {}

    /** The same advice given twice for one planting is given once, on its stronger occasion. */
    private static List<Given> strongest(List<Ordered> found) {
        Map<String, Given> kept = new LinkedHashMap<>();
        for (Ordered one : found) {
            Given given = one.given();
            kept.merge(
                    given.id() + " " + given.planting() + " " + given.figures().get(Doubt.CASE),
                    given,
                    (a, b) -> b.occasion().compareTo(a.occasion()) < 0 ? b : a);
        }
        return List.copyOf(kept.values());
    }

    private static Given given(Advice advice, Reasons reasons, Day day) {
        Inference inference = reasons.of(advice);
        Occasion occasion = occasion(reasons.roots(advice));
        LocalDate due = advice.due() == null ? day.today() : advice.due();
        return new Given(
                advice.id(),
                advice.planting(),
                crop(advice.planting(), day),
                due,
                occasion == Occasion.STANDING ? nextCheck(advice, day) : advice.nextCheck(),
                occasion,
                sureness(inference.source(), reasons.restsOnToldFacts(advice)),
                neglect(inference),
                inference.figures(),
                reasons.because(advice));
    }

    /** What was left undone past its next check is looked at again after as long a time, not every day. */
    private static LocalDate nextCheck(Advice advice, Day day) {
        LocalDate next = advice.nextCheck();
        if (next == null || advice.due() == null || next.isAfter(day.today())) {
            return next;
        }
        long rest = Math.max(1, ChronoUnit.DAYS.between(advice.due(), next));
        return day.today().plusDays(rest);
    }

    private static String crop(String planting, Day day) {
        if (planting == null) {
            return null;
        }
        return DayFacts.cropInPacket(planting).orElseGet(() -> day.garden()
                .planting(planting)
                .map(bothy.garden.Planting::crop)
                .orElse(null));
    }

    private static Occasion occasion(List<Object> roots) {
        Occasion strongest = Occasion.STANDING;
        for (Object root : roots) {
            Occasion one = root instanceof Asked
                    ? Occasion.ASKED
                    : ofTrouble(root)
                            ? Occasion.SIGN
                            : root instanceof Told
                                    ? Occasion.TOLD
                                    : root instanceof Meant ? Occasion.PLANNED : Occasion.STANDING;
            if (one.compareTo(strongest) < 0) {
                strongest = one;
            }
        }
        return strongest;
    }

    /** A sign just told, a closer look at it, or what became of it. */
    private static boolean ofTrouble(Object root) {
        return root instanceof Sign sign
                ? sign.justTold()
                : root instanceof Verdict verdict
                        ? verdict.justTold()
                        : root instanceof Answered answered && answered.of().equals(Clinic.MESSAGE)
                                || root instanceof Case opened && (opened.justTold() || opened.outcome() != null);
    }

    private static Sureness sureness(String source, boolean toldOnly) {
        boolean published = !source.startsWith(Reasons.COMMON_PRACTICE);
        if (published && toldOnly) {
            return Sureness.SURE;
        }
        return published || toldOnly ? Sureness.FAIRLY_SURE : Sureness.RULE_OF_THUMB;
    }

    private static Neglect neglect(Inference inference) {
        String word = inference.text("neglect", "nothing-much");
        return Neglect.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
