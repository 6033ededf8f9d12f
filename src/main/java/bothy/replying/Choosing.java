package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Given;
import bothy.garden.Given.Neglect;
import bothy.garden.Given.Occasion;
import bothy.garden.Inquiry;
import bothy.garden.Logged;
import bothy.garden.Question;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Chooses, out of all advice of the day, what a reply says. A phone shows little: the most urgent first, the rest on asking. */
final class Choosing {
    private static final int MOST_FOR_A_PLANTING = 3;
    private static final int MOST_FOR_AN_ANSWER = 5;
    private static final int MOST_NEXT = 3;
    private static final String GROWING = "growing";
    private static final String OF_LABELS = "caution-spraying";
    private final Turn turn;
    private final Wording wording;

    Choosing(Wording wording, Turn turn) {
        this.wording = wording;
        this.turn = turn;
    }

    List<Given> spoken() {
        Set<Given> spoken = new LinkedHashSet<>();
        turn.given().stream().filter(Choosing::first).forEach(spoken::add);
        if (spoken.stream().anyMatch(given -> given.figures().containsKey("alone"))) {
            // Who is unwell wants no gardening now.
            spoken.addAll(cautions(spoken));
            return List.copyOf(spoken);
        }
        if (asksOverview()) {
            spoken.addAll(next());
        }
        spoken.addAll(capped(of(Occasion.SIGN), MOST_FOR_A_PLANTING));
        spoken.addAll(capped(onceForACrop(of(Occasion.ASKED)), MOST_FOR_AN_ANSWER));
        spoken.addAll(next());
        List<Given> told = capped(of(Occasion.TOLD), MOST_FOR_A_PLANTING);
        Set<Given> answers = new LinkedHashSet<>(spoken);
        answers.addAll(told);
        List<Given> onTheSide = urgentOnTheSide(List.copyOf(answers));
        onTheSide.stream().filter(this::mustNotWait).forEach(spoken::add);
        spoken.addAll(told);
        spoken.addAll(onTheSide);
        spoken.addAll(capped(of(Occasion.PLANNED), MOST_FOR_AN_ANSWER));
        spoken.addAll(cautions(spoken));
        return List.copyOf(spoken);
    }

    private List<Given> of(Occasion occasion) {
        return turn.given().stream()
                .filter(given -> given.occasion() == occasion && !isCaution(given))
                .toList();
    }

    /** What holds of a crop that grows is not said of its next packet as well. */
    private List<Given> onceForACrop(List<Given> asked) {
        return asked.stream()
                .filter(given -> grows(given)
                        || asked.stream()
                                .noneMatch(other -> grows(other)
                                        && other.id().equals(given.id())
                                        && Objects.equals(other.crop(), given.crop())))
                .toList();
    }

    private boolean grows(Given given) {
        return given.planting() == null
                || turn.garden().planting(given.planting()).isPresent();
    }

    /** A caution belongs to a person's safety; it goes out with what it belongs to, beyond any limit. */
    private static boolean isCaution(Given given) {
        return given.neglect() == Neglect.PERSON_HURT;
    }

    private static List<Given> capped(List<Given> all, int most) {
        Map<String, Integer> counts = new HashMap<>();
        List<Given> kept = new ArrayList<>();
        for (Given given : all) {
            if (counts.merge(String.valueOf(given.planting()), 1, Integer::sum) <= most) {
                kept.add(given);
            }
        }
        return kept;
    }

    private List<Given> next() {
        List<Given> next = new ArrayList<>();
        for (Inquiry inquiry : turn.heard().inquiries()) {
            if (inquiry.question() == Question.NEXT || overview(inquiry)) {
                standing().stream()
                        .filter(given -> inquiry.plantings().isEmpty()
                                || inquiry.plantings().contains(given.planting()))
                        .sorted(Comparator.comparing(Given::due))
                        .limit(overview(inquiry) ? 1 : MOST_NEXT)
                        .forEach(next::add);
            }
        }
        return next;
    }

    /** Whoever asks how a crop is grown at all has its next step told first. */
    private boolean asksOverview() {
        return turn.heard().inquiries().stream().anyMatch(Choosing::overview);
    }

    private static boolean overview(Inquiry inquiry) {
        return GROWING.equals(inquiry.topic()) && !inquiry.plantings().isEmpty();
    }

    private List<Given> standing() {
        return turn.given().stream()
                .filter(given -> given.occasion() == Occasion.STANDING && !isCaution(given))
                .filter(given -> wording.says(given.id()) != null)
                .toList();
    }

    /** After an entry, the one task of that planting that cannot wait; where an entry called for nothing, the next one to come. */
    private List<Given> urgentOnTheSide(List<Given> spoken) {
        Set<String> told = turn.written().stream()
                .map(Logged::entry)
                .map(Choosing::planting)
                .filter(java.util.Objects::nonNull)
                .collect(Collectors.toSet());
        List<Given> side = new ArrayList<>();
        for (String planting : told) {
            boolean answered = spoken.stream().anyMatch(given -> planting.equals(given.planting()));
            standing().stream()
                    .filter(given -> planting.equals(given.planting()))
                    .filter(given -> !turn.saidToday().contains(Turn.key(given)))
                    .filter(given -> !answered || mustNotWait(given))
                    .filter(given -> spoken.stream().noneMatch(one -> one.id().equals(given.id())))
                    .min(Comparator.comparing(Given::due).thenComparing(Given::neglect))
                    .ifPresent(side::add);
        }
        return side.size() > MOST_NEXT ? side.subList(0, MOST_NEXT) : side;
    }

    /** A sign is answered by its own advice; what else that planting wants can wait. */
    private static String planting(Entry entry) {
        return entry instanceof Event event
                ? event.planting()
                : entry instanceof Amendment amendment && amendment.instead() != null
                        ? planting(amendment.instead())
                        : null;
    }

    private boolean mustNotWait(Given given) {
        return !given.due().isAfter(turn.today()) && given.neglect() == Neglect.PLANTS_LOST;
    }

    /** The cautions that belong to what was told or asked, and to advice spoken. */
    List<Given> cautions(Set<Given> spoken) {
        return turn.given().stream()
                .filter(Choosing::isCaution)
                .filter(caution -> caution.occasion() != Occasion.STANDING || accompanies(caution, spoken))
                .filter(caution -> !saidBefore(caution))
                .toList();
    }

    /** While a trouble is talked over the label is named once a day; what hurts by eating or touching is said each time. */
    private boolean saidBefore(Given caution) {
        return caution.id().equals(OF_LABELS)
                && caution.occasion() == Occasion.SIGN
                && turn.saidToday().contains(Turn.key(caution));
    }

    /** A caution whose rule binds {@code $first} goes before everything else, one that binds {@code $alone} too without it. */
    private static boolean first(Given given) {
        return isCaution(given)
                && given.occasion() != Occasion.STANDING
                && given.figures().containsKey("first");
    }

    /** A caution rule that matched an advice binds that advice's id as {@code $with}. */
    private static boolean accompanies(Given caution, Set<Given> spoken) {
        Object with = caution.figures().get("with");
        return spoken.stream().anyMatch(given -> given.id().equals(with));
    }
}
