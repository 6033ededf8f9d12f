package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.telegram.telegrambots.meta.api.methods.send.SendMessage;
import org.telegram.telegrambots.meta.api.objects.Update;

class UpdatesAsJsonTest {
    private static final int MESSAGES = 50_000;
    private static final long FIRST = 1_809_172_800;
    /** A hundred bytes kept of each would be more than twice as much. */
    private static final long MOST_KEPT_BYTES = 2_000_000;

    private interface Reader {
        Object read(String message) throws Exception;
    }

    private static String message(long date) {
        return "{\"message_id\":7,\"date\":" + date + ",\"text\":\"hi\",\"chat\":{\"id\":5,\"type\":\"private\"}}";
    }

    private static String update(String message) {
        return "{\"update_id\":1,\"message\":" + message + "}";
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static long kept(Reader reader) throws Exception {
        for (int i = 0; i < 2000; i++) {
            reader.read(message(FIRST));
        }
        long before = used();
        for (int i = 0; i < MESSAGES; i++) {
            reader.read(message(FIRST + i));
        }
        return used() - before;
    }

    @Test
    void nothing_is_kept_of_the_seconds_in_which_messages_were_sent() throws Exception {
        UpdatesAsJson.inTheLibrary();

        assertThat(kept(message -> Delivery.update(update(message)).orElseThrow()))
                .as("an update")
                .isLessThan(MOST_KEPT_BYTES);
        assertThat(kept(message ->
                        new SendMessage("5", "x").deserializeResponse("{\"ok\":true,\"result\":" + message + "}")))
                .as("an answer to a message sent")
                .isLessThan(MOST_KEPT_BYTES);
    }

    @Test
    void a_message_that_can_no_longer_be_seen_has_its_chat() throws Exception {
        Update tapped = UpdatesAsJson.MAPPER.readValue(
                "{\"update_id\":1,\"callback_query\":{\"id\":\"9\",\"data\":\"812.0\",\"from\":{\"id\":5,\"is_bot\":false,\"first_name\":\"I\"},\"message\":"
                        + "{\"message_id\":7,\"date\":0,\"chat\":{\"id\":5,\"type\":\"private\"}}}}",
                Update.class);

        assertThat(tapped.getCallbackQuery().getMessage().getChatId()).isEqualTo(5);
    }
}
