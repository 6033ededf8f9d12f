package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Document;
import bothy.garden.Incoming;
import bothy.garden.Reply;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The service sends the messages by itself, with a secret. */
class SentByWebhookTest {
    private static final String SECRET = "a-secret-of-the-school-plot_2027";

    @TempDir
    Path folder;

    private Rig rig;

    @BeforeEach
    void make_ready() {
        rig = new Rig(folder);
    }

    @AfterEach
    void close() {
        rig.close();
    }

    private void start(Through post) {
        rig.start(
                rig.settings(),
                post,
                new TelegramSettings.Webhook(URI.create("https://bothy.example/telegram"), SECRET));
        rig.await("the webhook", () -> rig.api.webhook().has("url"));
    }

    private static String update(int id, String told) {
        return told.replaceFirst("\\{", "{\"update_id\":" + id + ",");
    }

    @Test
    void the_service_is_told_the_address_and_the_secret() {
        start(new Through(rig.store));

        assertThat(rig.api.webhook().path("url").asText()).isEqualTo("https://bothy.example/telegram");
        assertThat(rig.api.webhook().path("secret_token").asText()).isEqualTo(SECRET);
    }

    @Test
    void a_message_is_taken_in_once_and_answered() {
        start(new Through(rig.store));

        assertThat(rig.channel.delivered(update(1, Said.text(1, "sowed beans")), SECRET))
                .isEqualTo(200);
        assertThat(rig.channel.delivered(update(1, Said.text(1, "sowed beans")), SECRET))
                .isEqualTo(200);

        rig.awaitTexts("Noted: sowed beans");
    }

    @Test
    void without_the_secret_nothing_is_taken_in() {
        start(new Through(rig.store));

        assertThat(rig.channel.delivered(update(1, Said.text(1, "let me in")), null))
                .isEqualTo(401);
        assertThat(rig.channel.delivered(update(1, Said.text(1, "let me in")), ""))
                .isEqualTo(401);
        assertThat(rig.channel.delivered(update(1, Said.text(1, "let me in")), SECRET + "x"))
                .isEqualTo(401);
        assertThat(rig.channel.delivered(update(1, Said.text(1, "let me in")), SECRET.substring(1)))
                .isEqualTo(401);
        assertThat(rig.store.unhandled(TelegramChannel.NAME, 10)).isEmpty();
    }

    @Test
    void what_cannot_be_read_is_refused_and_harms_nothing() {
        start(new Through(rig.store));

        assertThat(rig.channel.delivered("{\"update_id\":", SECRET)).isEqualTo(400);
        assertThat(rig.channel.delivered("null", SECRET)).isEqualTo(400);
        assertThat(rig.channel.delivered("[]", SECRET)).isEqualTo(400);
        assertThat(rig.channel.delivered(update(2, Said.text(2, "still here")), SECRET))
                .isEqualTo(200);
        rig.awaitTexts("Noted: still here");
    }

    @Test
    void an_update_that_names_no_time_is_answered_and_holds_nobody_up() {
        start(new Through(rig.store));
        String timeless = Said.text(1, "sowed beans").replace("\"date\":1809172800,", "");

        assertThat(rig.channel.delivered(update(1, timeless), SECRET)).isEqualTo(200);
        assertThat(rig.channel.delivered(update(2, Said.text(2, "and peas")), SECRET))
                .isEqualTo(200);

        rig.awaitTexts("Noted: sowed beans", "Noted: and peas");
    }

    @Test
    void what_cannot_be_made_durable_is_to_be_sent_again() {
        start(new Through(rig.store) {
            @Override
            public int receive(List<Incoming> incoming) {
                throw new IllegalStateException("The disk is full.");
            }
        });

        assertThat(rig.channel.delivered(update(1, Said.text(1, "sowed beans")), SECRET))
                .isEqualTo(503);
    }

    @Test
    void a_polling_channel_takes_nothing_by_webhook() {
        rig.channel = new TelegramChannel(rig.settings(), rig.store, null, Clock.systemUTC());

        assertThat(rig.channel.delivered(update(1, Said.text(1, "hello")), SECRET))
                .isEqualTo(401);
    }

    @Test
    void documents_follow_the_text_of_a_reply() {
        rig.answer = message -> new Reply(
                "Here it is.",
                List.of(),
                List.of(new Document("diary.csv", "text/csv", "day,what\n2027-05-20,sown\n")));
        start(new Through(rig.store));

        rig.channel.delivered(update(1, Said.text(1, "/mydata")), SECRET);

        rig.await("the document", () -> rig.api.documents().size() == 1);
        assertThat(rig.api.documents().get(0))
                .contains("diary.csv")
                .contains("2027-05-20,sown")
                .contains("4711");
        assertThat(rig.api.texts()).containsExactly("Here it is.");
    }
}
