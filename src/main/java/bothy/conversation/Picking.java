package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Given;
import bothy.garden.Given.Because;
import bothy.garden.Given.Neglect;
import bothy.garden.Given.Occasion;
import bothy.replying.Replier;
import bothy.replying.Turn;
import bothy.replying.Unasked;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Picks, out of the advice of the day, what is worth speaking up for. Little of it: who is nagged stops reading. */
final class Picking {
    private static final int MOST = 3;
    private static final int MOST_AGAIN = 5;
    private static final String WHOLE_PLOT = "";
    private static final String WEATHER = "WeatherDay";

    private final Replier replier;
    private final Reminding reminding;
    private final Raised raised;
    private final Turn turn;
    private final Occasions occasions;

    Picking(Replier replier, Reminding reminding, Raised raised, Turn turn, Occasions occasions) {
        this.replier = replier;
        this.reminding = reminding;
        this.raised = raised;
        this.turn = turn;
        this.occasions = occasions;
    }

    Unasked picked() {
        boolean week = occasions.list() && growing() && anythingThisWeek();
        List<Given> due = new ArrayList<>();
        String opening = null;
        List<Reminder> reminders = occasions.reminders();
        if (!reminders.isEmpty()) {
            opening = reminding.opening(reminders).orElse(null);
            if (reminders.stream().anyMatch(one -> one.of() == null)) {
                again().forEach(due::add);
                opening = opening != null ? opening : replier.talk(due.isEmpty() ? "reminder-nothing" : "reminder");
            }
        }
        if (occasions.morning()) {
            Stream.concat(harmful(), toCheck())
                    .filter(given -> !due.contains(given))
                    .limit(MOST)
                    .forEach(due::add);
        } else if (occasions.evening()) {
            harmful().filter(Picking::byWeather).limit(MOST).forEach(due::add);
        }
        return new Unasked(due, week, opening, reminding.question(reminders).orElse(null), question(due, week));
    }

    private boolean growing() {
        return !turn.garden().growing().isEmpty();
    }

    /** What stands today and is to be done. */
    private Stream<Given> dueToday() {
        return turn.given().stream()
                .filter(given -> given.occasion() == Occasion.STANDING
                        && !given.due().isAfter(turn.today())
                        && given.neglect() != Neglect.PERSON_HURT);
    }

    private Stream<Given> harmful() {
        return dueToday()
                .filter(given -> given.neglect() == Neglect.PLANTS_LOST || given.neglect() == Neglect.CROP_LOST)
                .filter(given -> !raised.rests(Turn.key(given), turn.today()));
    }

    private Stream<Given> again() {
        return dueToday()
                .filter(given -> raised.again().isEmpty() || raised.again().contains(Turn.key(given)))
                .limit(MOST_AGAIN);
    }

    /** On the day for which a reply promised the next look: one thing for each planting, a question before a task. */
    private Stream<Given> toCheck() {
        List<Given> found = new ArrayList<>();
        for (String planting : promised()) {
            dueToday()
                    .filter(given -> planting.equals(given.planting() == null ? WHOLE_PLOT : given.planting()))
                    .filter(given -> given.neglect() != Neglect.NOTHING_MUCH || replier.asks(given))
                    .filter(given -> !raised.rests(Turn.key(given), turn.today()))
                    .min(Comparator.comparing(given -> !replier.asks(given)))
                    .ifPresent(found::add);
        }
        return found.stream();
    }

    private List<String> promised() {
        return raised.checks().entrySet().stream()
                .filter(check -> !check.getValue().isAfter(turn.today()))
                .map(java.util.Map.Entry::getKey)
                .sorted()
                .toList();
    }

    private boolean anythingThisWeek() {
        LocalDate end = turn.today().plusDays(7);
        return turn.given().stream()
                .anyMatch(given ->
                        given.occasion() == Occasion.STANDING && given.due().isBefore(end));
    }

    private Doubt question(List<Given> due, boolean week) {
        return week || due.isEmpty()
                ? null
                : replier.whetherDone(due.get(0), turn).orElse(null);
    }

    /** Whether the forecast or the weather of these days is what the advice rests on. */
    static boolean byWeather(Given given) {
        return given.because() != null && byWeather(given.because());
    }

    private static boolean byWeather(Because because) {
        return because.known().stream().anyMatch(known -> known.kind().equals(WEATHER))
                || because.from().stream().anyMatch(Picking::byWeather);
    }
}
