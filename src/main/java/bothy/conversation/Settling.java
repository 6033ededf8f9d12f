package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.replying.Answer;
import bothy.replying.Replier;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What follows for a raised task from the answer done, not yet or skip. */
final class Settling {
    private static final int LEAST_LETTERS = 4;
    private final Replier replier;
    private final Memory memory;
    private final Doubt.Choice chosen;

    /** @param chosen the answer to the question that waited, {@code null} when none of those offered */
    Settling(Replier replier, Memory memory, Doubt.Choice chosen) {
        this.replier = replier;
        this.memory = memory;
        this.chosen = chosen;
    }

    /** The choice that a message takes: the button tapped, or for an advice the label written out; {@code null} for none. */
    static Doubt.Choice chosen(Doubt pending, Message message) {
        if (pending == null) {
            return null;
        }
        boolean advice = pending.about() == Doubt.About.ADVICE;
        String written = message.text().strip().replaceAll("[.!]+$", "").toLowerCase(Locale.ROOT);
        for (Doubt.Choice choice : pending.choices()) {
            boolean spelled = advice
                    && written.length() >= LEAST_LETTERS
                    && choice.label().toLowerCase(Locale.ROOT).startsWith(written);
            if (choice.label().equals(message.pressed()) || message.pressed() == null && spelled) {
                return choice;
            }
        }
        return null;
    }

    /**
     * The choice that a word stands for where it is asked whether a task is done: "yep" and "did it" are done there.
     *
     * @param word what the message means as an answer and nothing else, {@code null} for none
     */
    static Doubt.Choice meant(Doubt ofATask, String word) {
        String meaning = "done".equals(word) ? "yes" : word;
        return ofATask.choices().stream()
                .filter(choice -> choice.meaning().equals(meaning))
                .findFirst()
                .orElse(null);
    }

    private Optional<String> about() {
        // How a trouble looks now is an answer to its case, not a task done or left.
        return chosen == null || CaseNotes.ofACase(memory.pending())
                ? Optional.empty()
                : Optional.ofNullable(memory.pending().arguments().get("about"));
    }

    /** A short word where the answer told nothing that a receipt could say. */
    Optional<Answer> answer(Heard heard) {
        return about().filter(task -> toldNothing(heard)).map(task -> switch (String.valueOf(chosen.meaning())) {
            case "yes" -> said("done-well");
            case "skip" -> said("left-out");
            default -> said("not-yet");
        });
    }

    private static boolean toldNothing(Heard heard) {
        return heard.equals(Heard.nothing(Kind.CHAT));
    }

    private Answer said(String talk) {
        return new Answer(new Reply(replier.talk(talk), List.of()), List.<Given>of(), null, null);
    }

    /** How long the task rests now. */
    Raised settled(Heard heard, LocalDate today) {
        Raised before = memory.unasked();
        return about().map(task -> switch (String.valueOf(chosen.meaning())) {
                    case "no" -> toldNothing(heard) ? before.notYet(task, today) : before;
                    case "yes" -> toldNothing(heard) ? before.leftOut(task, today) : before.done(task);
                    case "skip" -> before.leftOut(task, today);
                    default -> before;
                })
                .orElse(before);
    }
}
