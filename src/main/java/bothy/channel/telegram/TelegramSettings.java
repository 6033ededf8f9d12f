package bothy.channel.telegram;

import java.net.URI;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How to reach the service and what it is told.
 *
 * @param token the bot's token, a secret
 * @param service base address of the Bot API
 * @param commands the command menu: name without stroke ("week") and what it does in a few words, in order
 * @param buttonPast what a grower sees who taps a button of an older question, at most 200 characters
 * @param longPoll how long the service may hold a request for updates open
 * @param patience how long one other request may take
 * @param overall the pace of all messages together
 * @param eachChat the pace of messages to one chat
 * @param eachGroup the pace of messages to one group
 * @param workers how many chats may be handled at the same time; those that wait for the disk at once share one flush: more than there are cores
 */
public record TelegramSettings(
        String token,
        URI service,
        Map<String, String> commands,
        String buttonPast,
        Duration longPoll,
        Duration patience,
        Rate overall,
        Rate eachChat,
        Rate eachGroup,
        int workers) {

    /** Where the service is. */
    public static final URI PUBLIC = URI.create("https://api.telegram.org");

    /**
     * A pace.
     *
     * @param perSecond messages a second in the long run
     * @param burst how many may go at once after a rest, at least 1
     */
    public record Rate(double perSecond, int burst) {}

    public TelegramSettings {
        commands = new LinkedHashMap<>(commands);
    }

    /** The paces are the service's published guidance (about 30 a second, 1 a second in a chat, 20 a minute in a group), a little less. */
    public static TelegramSettings of(String token, Map<String, String> commands, String buttonPast) {
        return new TelegramSettings(
                token,
                PUBLIC,
                commands,
                buttonPast,
                Duration.ofSeconds(50),
                Duration.ofSeconds(20),
                new Rate(25, 25),
                new Rate(1, 3),
                new Rate(0.3, 3),
                12);
    }

    public TelegramSettings withService(URI service) {
        return new TelegramSettings(
                token, service, commands, buttonPast, longPoll, patience, overall, eachChat, eachGroup, workers);
    }

    public TelegramSettings withTimes(Duration longPoll, Duration patience) {
        return new TelegramSettings(
                token, service, commands, buttonPast, longPoll, patience, overall, eachChat, eachGroup, workers);
    }

    public TelegramSettings withPace(Rate overall, Rate eachChat, Rate eachGroup) {
        return new TelegramSettings(
                token, service, commands, buttonPast, longPoll, patience, overall, eachChat, eachGroup, workers);
    }

    /** Messages are sent to an address of the bot's own instead of being asked for. */
    public record Webhook(URI address, String secret) {
        @Override
        public String toString() {
            return "Webhook[" + address + "]";
        }
    }

    /** A text with the token blotted out. */
    String withoutToken(String text) {
        return text == null || token.isBlank() ? text : text.replace(token, "(token)");
    }

    @Override
    public String toString() {
        return "TelegramSettings[" + service + "]";
    }
}
