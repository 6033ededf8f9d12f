package bothy.channel.telegram;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;

/** Updates as the service writes them, from chat 4711 unless said otherwise. */
final class Said {
    static final long SCHOOL = 4711;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Said() {}

    static String text(int message, String text) {
        return text(SCHOOL, message, text);
    }

    static String text(long chat, int message, String text) {
        return told("message", chat, message, "\"text\":" + quoted(text));
    }

    static String edited(int message, String text) {
        return told("edited_message", SCHOOL, message, "\"edit_date\":1809176400,\"text\":" + quoted(text));
    }

    static String with(int message, String fields) {
        return told("message", SCHOOL, message, fields);
    }

    static String inGroup(int message, String fields) {
        return "{\"message\":{\"message_id\":" + message
                + ",\"date\":1809172800,\"chat\":{\"id\":-100200300,\"type\":\"supergroup\",\"title\":\"School plot\"},"
                + "\"from\":{\"id\":77,\"is_bot\":false,\"first_name\":\"Ida\"}," + fields + "}}";
    }

    static String tap(String id, String data) {
        return tap(SCHOOL, id, data);
    }

    static String tap(long chat, String id, String data) {
        return "{\"callback_query\":{\"id\":\"" + id + "\",\"from\":{\"id\":" + chat
                + ",\"is_bot\":false,\"first_name\":\"Ida\"},\"chat_instance\":\"1\",\"data\":" + quoted(data)
                + ",\"message\":{\"message_id\":501,\"date\":1809172800,\"chat\":{\"id\":" + chat
                + ",\"type\":\"private\"},\"text\":\"Which?\"}}}";
    }

    private static String told(String kind, long chat, int message, String fields) {
        return "{\"" + kind + "\":{\"message_id\":" + message + ",\"date\":1809172800,\"chat\":{\"id\":" + chat
                + ",\"type\":\"private\",\"first_name\":\"Ida\"},\"from\":{\"id\":" + chat
                + ",\"is_bot\":false,\"first_name\":\"Ida\"},\"some_new_field\":{\"a\":[1]}," + fields + "}}";
    }

    private static String quoted(String text) {
        try {
            return MAPPER.writeValueAsString(text);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
