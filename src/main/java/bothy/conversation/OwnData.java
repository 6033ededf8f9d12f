package bothy.conversation;

import bothy.conversation.Conversation.Outcome;
import bothy.diary.Page;
import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Reply;
import bothy.garden.SettingChange;
import bothy.replying.Replier;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A grower's right to what is kept: all of it handed out, or all of it removed, the latter after asking whether it is meant. */
final class OwnData {
    private static final String DATA = "data";
    private static final String REMOVE = "delete";
    private static final String REALLY = "delete-really";
    private static final String KEEP = "keep";
    private static final String HAND_OUT = "export";

    private final Replier replier;
    private final Page page;
    private final Garden garden;
    private final Memory memory;

    OwnData(Replier replier, Page page, Garden garden, Memory memory) {
        this.replier = replier;
        this.page = page;
        this.garden = garden;
        this.memory = memory;
    }

    static Heard handOut() {
        return told(HAND_OUT);
    }

    static Heard remove() {
        return told(REMOVE);
    }

    private static Heard told(String value) {
        List<SettingChange> settings = List.of(new SettingChange(DATA, value));
        return new Heard(
                List.of(), List.of(), List.of(), settings, List.of(), List.of(), null, List.of(), Kind.SETTING, false);
    }

    /** Does what was asked for; empty when nothing of it was. */
    Optional<Outcome> outcome(Heard heard) {
        return heard.settings().stream()
                .filter(change -> change.setting().equals(DATA))
                .map(SettingChange::value)
                .findFirst()
                .map(this::done);
    }

    private Outcome done(String asked) {
        return switch (asked) {
            case REALLY -> removed();
            case REMOVE -> asking();
            case KEEP -> kept();
            default -> handedOut();
        };
    }

    private Outcome kept() {
        page.keepState(MemoryJson.write(memory.waitingFor(null)));
        return outcome(new Reply(replier.talk("nothing-deleted"), List.of()), false);
    }

    private Outcome handedOut() {
        var lines = page.lines();
        Reply reply = lines.isEmpty()
                ? new Reply(replier.talk("diary-empty"), List.of())
                : new Reply(
                        replier.talk("my-data", Map.of("count", String.valueOf(lines.size()))),
                        List.of(),
                        List.of(DiaryFile.json(garden, lines), DiaryFile.csv(garden)));
        return outcome(reply, false);
    }

    private Outcome asking() {
        Doubt doubt = new Doubt(
                Doubt.About.ADVICE,
                Map.of("question", replier.talk("delete-question"), "advice", ""),
                List.of(
                        new Choice(replier.talk("button-delete"), "yes", told(REALLY)),
                        new Choice(replier.talk("button-keep"), "no", told(KEEP))),
                null);
        page.keepState(MemoryJson.write(memory.waitingFor(doubt)));
        Reply reply = new Reply(
                replier.talk("delete-question"),
                doubt.choices().stream().map(Choice::label).toList());
        return outcome(reply, true);
    }

    private Outcome removed() {
        page.forget();
        return outcome(new Reply(replier.talk("deleted"), List.of()), false);
    }

    private static Outcome outcome(Reply reply, boolean asks) {
        return new Outcome(reply, List.of(), List.of(), null, asks, Set.of(), List.of());
    }
}
