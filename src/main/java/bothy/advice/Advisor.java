package bothy.advice;

import bothy.advice.Reasons.Inference;
import bothy.advice.facts.Asked;
import bothy.advice.facts.AtStage;
import bothy.advice.facts.Meant;
import bothy.advice.facts.Sign;
import bothy.advice.facts.Told;
import bothy.almanac.Places;
import bothy.almanac.Sheet;
import bothy.garden.Advice;
import bothy.garden.Given;
import bothy.garden.Given.Neglect;
import bothy.garden.Given.Occasion;
import bothy.garden.Given.Sureness;
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
public final class Advisor {
    /** No garden needs as many; a rule that feeds itself is stopped here. */
    private static final int MOST_FIRINGS = 20_000;

    private final RuleBook rules;
    private final DayFacts dayFacts;

    public Advisor(RuleBook rules, Map<String, Sheet> sheets, Places places) {
        this.rules = rules;
        this.dayFacts = new DayFacts(sheets, places);
    }

    /**
     * Runs the rules.
     *
     * @throws AdviceFailed when a rule fails in the run, or rules keep feeding each other
     */
    public Advised advise(Day day) {
        KieSession session = rules.base().newKieSession();
        try {
            Reasons reasons = new Reasons();
            session.addEventListener((org.kie.api.event.rule.AgendaEventListener) reasons);
            session.addEventListener((org.kie.api.event.rule.RuleRuntimeEventListener) reasons);
            dayFacts.of(day).forEach(session::insert);
            if (session.fireAllRules(MOST_FIRINGS) >= MOST_FIRINGS) {
                throw new AdviceFailed("the rules never come to an end", null);
            }
            return gather(session, reasons, day);
        } catch (AdviceFailed known) {
            throw known;
        } catch (RuntimeException thrown) {
            throw new AdviceFailed(String.valueOf(thrown.getMessage()), thrown);
        } finally {
            session.dispose();
        }
    }

    private static Advised gather(KieSession session, Reasons reasons, Day day) {
        List<Ordered> found = new ArrayList<>();
        Map<String, Stage> stages = new HashMap<>();
        for (Object fact : session.getObjects()) {
            if (fact instanceof Advice advice) {
                found.add(new Ordered(
                        given(advice, reasons, day), reasons.of(advice).order()));
            } else if (fact instanceof AtStage at) {
                stages.put(at.planting(), at.stage());
            }
        }
        // As the rules stand in their files, so the steps of a task follow each other.
        found.sort(Comparator.comparing((Ordered one) -> one.given().neglect())
                .thenComparing(one -> one.given().due())
                .thenComparing(Ordered::order)
                .thenComparing(one -> String.valueOf(one.given().planting())));
        List<Given> given = strongest(found);
        return new Advised(given, stages, reasons.fired());
    }

    private record Ordered(Given given, int order) {}

    /** The same advice given twice for one planting is given once, on its stronger occasion. */
    private static List<Given> strongest(List<Ordered> found) {
        Map<String, Given> kept = new LinkedHashMap<>();
        for (Ordered one : found) {
            Given given = one.given();
            kept.merge(
                    given.id() + " " + given.planting(),
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
                    : root instanceof Sign sign && sign.justTold()
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
