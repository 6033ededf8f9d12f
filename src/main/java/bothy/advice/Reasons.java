package bothy.advice;

import bothy.advice.facts.Assumable;
import bothy.advice.facts.AtStage;
import bothy.advice.facts.Reached;
import bothy.almanac.Sheet;
import bothy.garden.Given.Because;
import bothy.garden.Given.Known;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.base.definitions.rule.impl.RuleImpl;
import org.kie.api.definition.rule.Rule;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.event.rule.ObjectUpdatedEvent;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.rule.Match;

/** Remembers, while the rules run, which rule inferred what from which facts. */
final class Reasons extends DefaultAgendaEventListener implements RuleRuntimeEventListener {
    /** Parts of each kind of fact, looked up once: the lookup is slow and asked for thousands of times. */
    private static final ClassValue<List<RecordComponent>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<RecordComponent> computeValue(Class<?> kind) {
            return List.of(kind.getRecordComponents());
        }
    };

    static final String COMMON_PRACTICE = "common practice";
    private final Map<Object, Inference> inferences = new IdentityHashMap<>();
    private final Map<Object, Because> reasons = new IdentityHashMap<>();
    private final Map<Object, Boolean> told = new IdentityHashMap<>();
    private final Set<String> fired = new HashSet<>();
    private Match current;

    /** A rule that fired and what it matched. */
    record Inference(Rule rule, List<Object> matched, Map<String, Object> figures) {

        String source() {
            return text("source", COMMON_PRACTICE);
        }

        /** The rule's place among all rules, in the order of the files. */
        int order() {
            return rule instanceof RuleImpl written ? written.getLoadOrder() : 0;
        }

        String text(String annotation, String otherwise) {
            Object value = rule.getMetaData().get(annotation);
            return value == null ? otherwise : unquoted(value.toString());
        }

        private static String unquoted(String text) {
            int from = text.startsWith("\"") ? 1 : 0;
            int to = text.endsWith("\"") && text.length() > from ? text.length() - 1 : text.length();
            return text.substring(from, to);
        }
    }

    Set<String> fired() {
        return fired;
    }

    Inference of(Object fact) {
        return inferences.get(fact);
    }

    @Override
    public void beforeMatchFired(BeforeMatchFiredEvent event) {
        current = event.getMatch();
    }

    @Override
    public void afterMatchFired(AfterMatchFiredEvent event) {
        fired.add(event.getMatch().getRule().getName());
        current = null;
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
        if (current != null && event.getRule() != null) {
            inferences.putIfAbsent(
                    event.getObject(),
                    new Inference(event.getRule(), List.copyOf(current.getObjects()), figures(current)));
        }
    }

    @Override
    public void objectUpdated(ObjectUpdatedEvent event) {
        // Facts are records: nothing is ever updated.
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
        inferences.remove(event.getOldObject());
    }

    private static Map<String, Object> figures(Match match) {
        Map<String, Object> figures = new LinkedHashMap<>();
        for (String id : match.getDeclarationIds()) {
            if (id.startsWith("$") && !id.startsWith("$pattern") && !id.contains("GENERATED")) {
                Object value = match.getDeclarationValue(id);
                if (Figures.isFigure(value)) {
                    figures.put(id.substring(1), value);
                }
            }
        }
        return figures;
    }

    /** Why a fact is there: the rule that inferred it, what it matched, and so on down. */
    Because because(Object fact) {
        Because known = reasons.get(fact);
        if (known == null) {
            known = reasoned(inferences.get(fact));
            reasons.put(fact, known);
        }
        return known;
    }

    private Because reasoned(Inference inference) {
        List<Known> known = new ArrayList<>();
        List<Because> from = new ArrayList<>();
        for (Object matched : inference.matched()) {
            if (matched instanceof AtStage || matched instanceof Reached) {
                // How far a planting has come is plain to see; the rules behind it would only bury the reason.
                known.add(known(matched));
            } else if (inferences.containsKey(matched)) {
                from.add(because(matched));
            } else if (matched instanceof Record) {
                known.add(known(matched));
            }
        }
        return new Because(inference.rule().getName(), inference.source(), known, from);
    }

    /** Whether everything that a fact rests on was told rather than assumed. */
    boolean restsOnToldFacts(Object fact) {
        Inference inference = inferences.get(fact);
        if (inference == null) {
            return !(fact instanceof Assumable assumable) || assumable.told();
        }
        Boolean known = told.get(fact);
        if (known == null) {
            known = inference.matched().stream().allMatch(this::restsOnToldFacts);
            told.put(fact, known);
        }
        return known;
    }

    /**
     * All facts that a fact rests on, down to the given ones. How far a planting has come is one of them: a spotted leaf shows that it
     * is up, and what is to be done with plants that are up is no answer to the spots.
     */
    List<Object> roots(Object fact) {
        Inference inference = inferences.get(fact);
        if (inference == null || fact instanceof AtStage || fact instanceof Reached) {
            return List.of(fact);
        }
        List<Object> roots = new ArrayList<>();
        inference.matched().forEach(matched -> roots.addAll(roots(matched)));
        return roots;
    }

    private static Known known(Object fact) {
        if (fact instanceof Sheet sheet) {
            return new Known("Sheet", Map.of("crop", sheet.crop()));
        }
        Map<String, Object> values = new LinkedHashMap<>();
        for (RecordComponent component : COMPONENTS.get(fact.getClass())) {
            try {
                Object value = component.getAccessor().invoke(fact);
                if (value != null) {
                    values.put(component.getName(), value);
                }
            } catch (IllegalAccessException | InvocationTargetException unreadable) {
                throw new IllegalStateException(unreadable);
            }
        }
        return new Known(fact.getClass().getSimpleName(), values);
    }
}
