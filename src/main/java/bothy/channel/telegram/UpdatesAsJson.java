package bothy.channel.telegram;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.telegram.telegrambots.meta.api.methods.botapimethods.PartialBotApiMethod;
import org.telegram.telegrambots.meta.api.objects.message.MaybeInaccessibleMessage;
import org.telegram.telegrambots.meta.api.objects.message.Message;

/**
 * Reads and writes updates as JSON without growing. The library lets a message's date tell what kind of message it is, and Jackson keeps
 * a reader for every kind it meets: about a hundred bytes for each second in which there was a message, for ever. Here every message is
 * read as a message; one that the bot may no longer see has the date 0.
 */
final class UpdatesAsJson {
    static final ObjectMapper MAPPER = JsonMapper.builder()
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .addMixIn(MaybeInaccessibleMessage.class, OfOneKind.class)
            .build();

    private UpdatesAsJson() {}

    /** Lets the library read so too; to be called before its first request. */
    static void inTheLibrary() {
        OfTheLibrary.readAsOneKind();
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NONE)
    @JsonDeserialize(as = Message.class)
    private interface OfOneKind {}

    /** The library's mapper is open to subclasses of its methods alone. */
    private abstract static class OfTheLibrary extends PartialBotApiMethod<String> {
        static void readAsOneKind() {
            OBJECT_MAPPER.addMixIn(MaybeInaccessibleMessage.class, OfOneKind.class);
        }
    }
}
