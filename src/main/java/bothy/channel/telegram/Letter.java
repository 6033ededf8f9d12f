package bothy.channel.telegram;

import bothy.garden.Incoming;
import bothy.garden.Message;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.telegram.telegrambots.meta.api.objects.CallbackQuery;
import org.telegram.telegrambots.meta.api.objects.Update;
import org.telegram.telegrambots.meta.api.objects.location.Location;

/**
 * An update as it goes through the inbox. Its id is also that of the message made of it: {@code 4711/12} for message 12 of chat 4711,
 * {@code 4711/12/edit-105} for an edited form of it, {@code 4711/tap-812.0} for a tapped button. So a button counts once, however often
 * it is tapped, and of an album, which comes as many messages, the first.
 */
final class Letter {
    /** The time zone of growers until they tell theirs: the service does not give it. */
    private static final ZoneId ZONE = ZoneOffset.UTC;

    private final Update update;

    private Letter(Update update) {
        this.update = update;
    }

    /** What to put into the inbox; empty when the update is not for the bot. */
    static Optional<Incoming> incoming(Arrived update, Me me, Instant now) {
        Letter letter = new Letter(update);
        return letter.chat(me).map(chat -> {
            String address = chat.toString();
            String grower = TelegramChannel.NAME + ":" + address;
            return new Incoming(TelegramChannel.NAME, letter.id(address), grower, address, now, update.json());
        });
    }

    /** @throws IllegalArgumentException when the body cannot be read */
    static Letter of(Incoming incoming) {
        try {
            return new Letter(UpdatesAsJson.MAPPER.readValue(incoming.body(), Update.class));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("Update " + incoming.id() + " in the inbox cannot be read", e);
        }
    }

    private Optional<Long> chat(Me me) {
        if (tap().isPresent()) {
            return tap().filter(tap -> tap.getData() != null
                            && tap.getMessage() != null
                            && tap.getMessage().getChat() != null)
                    .map(tap -> tap.getMessage().getChatId());
        }
        return told().filter(told -> new Address(me).meant(told))
                .filter(told -> !edited() || told.getLocation() == null) // a live location is edited every few seconds
                .map(told -> told.getChatId());
    }

    private String id(String chat) {
        if (tap().isPresent()) {
            return chat + "/tap-" + tap().get().getData();
        }
        String original = original(chat);
        return edited() ? original + "/edit-" + update.getUpdateId() : original;
    }

    private String original(String chat) {
        var told = told().orElseThrow();
        return told.getMediaGroupId() == null
                ? chat + "/" + told.getMessageId()
                : chat + "/album-" + told.getMediaGroupId();
    }

    Optional<CallbackQuery> tap() {
        return Optional.ofNullable(update.getCallbackQuery());
    }

    private boolean edited() {
        return update.getMessage() == null && update.getEditedMessage() != null;
    }

    private Optional<org.telegram.telegrambots.meta.api.objects.message.Message> told() {
        return Optional.ofNullable(edited() ? update.getEditedMessage() : update.getMessage());
    }

    /** The message of a letter that cannot be read, to answer at all. */
    static Message unread(Incoming incoming) {
        return new Message(incoming.id(), incoming.grower(), incoming.at(), ZONE, "", null, null, false, null, null);
    }

    /** The message of a tapped button with this label. */
    Message pressed(Incoming incoming, String label) {
        return new Message(incoming.id(), incoming.grower(), incoming.at(), ZONE, "", null, null, false, label, null);
    }

    /** The message of anything else. */
    Message message(Incoming incoming, Me me) {
        var told = told().orElseThrow();
        Location place = told.getLocation();
        return new Message(
                incoming.id(),
                incoming.grower(),
                sent(told).orElse(incoming.at()),
                ZONE,
                new Address(me).withoutName(text(told)),
                place == null ? null : place.getLatitude(),
                place == null ? null : place.getLongitude(),
                photo(told),
                null,
                edited() ? original(incoming.chat()) : null);
    }

    /** When it was sent; empty when the update does not say. */
    private Optional<Instant> sent(org.telegram.telegrambots.meta.api.objects.message.Message told) {
        Integer seconds = edited() && told.getEditDate() != null ? told.getEditDate() : told.getDate();
        return Optional.ofNullable(seconds).map(Instant::ofEpochSecond);
    }

    private static String text(org.telegram.telegrambots.meta.api.objects.message.Message told) {
        String text = told.getText() != null ? told.getText() : told.getCaption();
        return text == null ? "" : text;
    }

    private static boolean photo(org.telegram.telegrambots.meta.api.objects.message.Message told) {
        boolean picture = told.getDocument() != null
                && String.valueOf(told.getDocument().getMimeType()).startsWith("image/");
        return picture || told.getPhoto() != null && !told.getPhoto().isEmpty();
    }
}
