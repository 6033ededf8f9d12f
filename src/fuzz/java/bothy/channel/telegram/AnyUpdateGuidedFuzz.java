package bothy.channel.telegram;

import bothy.garden.Incoming;
import com.code_intelligence.jazzer.junit.FuzzTest;
import com.code_intelligence.jazzer.mutation.annotation.NotNull;
import com.code_intelligence.jazzer.mutation.annotation.WithUtf8Length;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever body a request to the webhook has, it is taken in or passed over, and what was taken in can be read again. Run by
 * {@code mvn verify -Pfuzz-guided}.
 */
class AnyUpdateGuidedFuzz {
    private static final Me ME = new Me(4711, "school_plot_bot");
    private static final Instant NOW = Instant.parse("2027-05-19T09:00:00Z");

    static Stream<Arguments> seen() {
        String chat =
                "\"chat\":{\"id\":1,\"type\":\"private\"},\"from\":{\"id\":1,\"is_bot\":false,\"first_name\":\"Ida\"}";
        String group =
                "\"chat\":{\"id\":-1,\"type\":\"group\"},\"from\":{\"id\":1,\"is_bot\":false,\"first_name\":\"Ida\"}";
        return Stream.of(
                        "\"message\":{\"message_id\":1,\"date\":1809172800," + chat + ",\"text\":\"sowed 6 peas\"}",
                        "\"message\":{\"message_id\":2,\"date\":1809172800," + group
                                + ",\"text\":\"@school_plot_bot /week\",\"entities\":[{\"type\":\"mention\",\"offset\":0,\"length\":16}]}",
                        "\"edited_message\":{\"message_id\":3,\"date\":1809172800,\"edit_date\":1809172900," + chat
                                + ",\"text\":\"8\"}",
                        "\"message\":{\"message_id\":4,\"date\":1809172800," + chat
                                + ",\"location\":{\"latitude\":53.8,\"longitude\":-1.5}}",
                        "\"message\":{\"message_id\":5,\"date\":1809172800," + chat
                                + ",\"media_group_id\":\"9\",\"caption\":\"spots\",\"photo\":[{\"file_id\":\"a\",\"file_unique_id\":\"b\",\"width\":1,\"height\":1}]}",
                        "\"callback_query\":{\"id\":\"1\",\"chat_instance\":\"1\",\"data\":\"812.0\",\"from\":{\"id\":1,\"is_bot\":false,\"first_name\":\"Ida\"},\"message\":{\"message_id\":6,\"date\":1809172800,"
                                + chat + ",\"text\":\"Which?\"}}")
                .map(fields -> Arguments.of("{\"update_id\":7," + fields + "}"));
    }

    @MethodSource("seen")
    @FuzzTest(maxDuration = "5m")
    void any_body_is_taken_in_or_passed_over(@NotNull @WithUtf8Length(max = 2000) String body) {
        Delivery.update(body)
                .flatMap(update -> Letter.incoming(update, ME, NOW))
                .ifPresent(AnyUpdateGuidedFuzz::read);
    }

    private static void read(Incoming incoming) {
        Letter letter = Letter.of(incoming);
        if (letter.tap().isEmpty()) {
            letter.message(incoming, ME);
        }
    }
}
