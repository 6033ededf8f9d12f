package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.SettingChange;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reminds of what the grower asked for, in the grower's own words, and asks whether it is done. */
final class Reminding {
    /** Said behind the words of a reminder they tell that it was done. */
    private static final String DONE = " - done";
    /** These change how many plants there are, so they are not written on the strength of a tap. */
    private static final Set<What> COUNTED = Set.of(What.SOWN, What.DIED, What.HARVESTED, What.STORED);

    private final Knowledge knowledge;
    private final Garden garden;
    private final LocalDate today;

    Reminding(Knowledge knowledge, Garden garden, LocalDate today) {
        this.knowledge = knowledge;
        this.garden = garden;
        this.today = today;
    }

    /** The sentence to begin with; empty when none of them has words of its own. */
    Optional<String> opening(List<Reminder> due) {
        List<String> words = due.stream()
                .map(Reminder::of)
                .filter(of -> of != null)
                .map(of -> "“" + of + "”")
                .toList();
        return words.isEmpty()
                ? Optional.empty()
                : Optional.of(knowledge.replier().talk("reminder-of", Map.of("what", String.join(", ", words))));
    }

    /** Whether it is done; asked only where it is clear what a yes means. */
    Optional<Doubt> question(List<Reminder> due) {
        if (due.size() != 1 || due.get(0).of() == null) {
            return Optional.empty();
        }
        Reminder one = due.get(0);
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(talk("button-done"), "yes", done(one)));
        choices.add(new Choice(talk("button-not-yet"), "no", tomorrow(one)));
        if (!one.recurs()) {
            choices.add(new Choice(talk("button-skip"), "skip", Heard.nothing(Kind.CHAT)));
        }
        return Optional.of(new Doubt(
                Doubt.About.ADVICE,
                Map.of("question", talk("reminder-done"), "about", "reminder " + one.line(), Doubt.TASK, "yes"),
                choices,
                null));
    }

    /** What the words of a reminder tell once it is done; nothing where more than one planting could be meant. */
    private Heard done(Reminder one) {
        Heard read = knowledge
                .reading()
                .read(
                        one.of() + DONE,
                        new Situation(
                                today,
                                garden.grower(),
                                garden.plantings(),
                                null,
                                List.of(),
                                List.of(),
                                List.of(),
                                List.of(),
                                garden.happened(),
                                List.of()));
        List<Statement> told = read.statements();
        boolean clear = !told.isEmpty() && told.stream().allMatch(Reminding::isClear);
        return clear
                ? Heard.of(told.stream()
                        .map(each -> Statement.sure(each.event(), each.plantings()))
                        .toList())
                : Heard.nothing(Kind.CHAT);
    }

    private static boolean isClear(Statement told) {
        return !told.plantings().isEmpty()
                && told.event().crop() != null
                && told.event().on() != null
                && told.event().what() != What.NOTE
                && !COUNTED.contains(told.event().what());
    }

    private Heard tomorrow(Reminder one) {
        return new Heard(
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        new SettingChange("remindOn", today.plusDays(1).toString()),
                        new SettingChange("remindOf", one.of())),
                List.of(),
                List.of(),
                null,
                List.of(),
                Kind.SETTING,
                false);
    }

    private String talk(String id) {
        return knowledge.replier().talk(id);
    }
}
