package bothy.channel.telegram;

import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.telegram.telegrambots.meta.api.objects.message.Message;

/** Whether the bot is spoken to: always in a chat of two; in a group by a command, by its name, or by an answer to what it said. */
final class Address {
    private static final Pattern COMMAND = Pattern.compile("(?s)/\\w+(@(\\w+))?(\\s.*)?");

    private final Me me;

    Address(Me me) {
        this.me = me;
    }

    boolean meant(Message told) {
        return byPerson(told)
                && hasContent(told)
                && told.getChat() != null
                && (told.isUserMessage() || addressed(told));
    }

    /** Who writes in the name of a group is shown as a bot of the service's own. */
    private static boolean byPerson(Message told) {
        return told.getFrom() == null
                || told.getSenderChat() != null
                || !Boolean.TRUE.equals(told.getFrom().getIsBot());
    }

    /** Everything but notices such as "joined the group". */
    private static boolean hasContent(Message told) {
        return Stream.of(
                        told.getText(),
                        told.getCaption(),
                        told.getPhoto(),
                        told.getLocation(),
                        told.getDocument(),
                        told.getVoice(),
                        told.getAudio(),
                        told.getVideo(),
                        told.getVideoNote(),
                        told.getAnimation(),
                        told.getSticker())
                .anyMatch(Objects::nonNull);
    }

    private boolean addressed(Message told) {
        if (told.isChannelMessage()) {
            return false;
        }
        String text = told.getText() != null ? told.getText() : String.valueOf(told.getCaption());
        var command = COMMAND.matcher(text);
        if (command.matches()) {
            return command.group(2) == null || command.group(2).equalsIgnoreCase(me.name());
        }
        return answersMe(told) || name(text).find();
    }

    private boolean answersMe(Message told) {
        Message before = told.getReplyToMessage();
        return before != null && before.getFrom() != null && before.getFrom().getId() == me.id();
    }

    private Matcher name(String text) {
        return Pattern.compile("\\s*@" + Pattern.quote(me.name()) + "\\b[,:]?", Pattern.CASE_INSENSITIVE)
                .matcher(text);
    }

    /** The text without the bot's name in it: "/week@bothybot" is "/week", "@bothybot sowed beans" is "sowed beans". */
    String withoutName(String text) {
        return text.contains("@") ? name(text).replaceAll("").strip() : text.strip();
    }
}
