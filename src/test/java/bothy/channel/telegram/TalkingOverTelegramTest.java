package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Message;
import bothy.garden.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What growers send and what comes back, through the real library. */
class TalkingOverTelegramTest {
    @TempDir
    Path folder;

    private Rig rig;

    @BeforeEach
    void start() {
        rig = new Rig(folder).start();
    }

    @AfterEach
    void stop() {
        rig.close();
    }

    private Message theOnlyMessage() {
        rig.await("a message", () -> !rig.handled.isEmpty());
        assertThat(rig.handled).hasSize(1);
        return rig.handled.get(0);
    }

    @Test
    void a_text_is_handed_over_and_answered() {
        rig.api.push(Said.text(12, "Sowed 12 climbing beans"));

        rig.awaitTexts("Noted: Sowed 12 climbing beans");
        assertThat(theOnlyMessage())
                .isEqualTo(Message.text(
                        "4711/12",
                        "telegram:4711",
                        Instant.ofEpochSecond(1809172800),
                        ZoneOffset.UTC,
                        "Sowed 12 climbing beans"));
        JsonNode sent = rig.api.sent().get(0);
        assertThat(sent.path("chat_id").asText()).isEqualTo("4711");
        assertThat(sent.path("link_preview_options").path("is_disabled").asBoolean())
                .isTrue();
    }

    @Test
    void the_command_menu_is_offered_in_order() {
        rig.await("the menu", () -> rig.api.commands().size() == 2);

        assertThat(rig.api.commands().findValuesAsText("command")).containsExactlyInAnyOrder("week", "undo");
        rig.api.push(Said.text(12, "/start"));
        assertThat(theOnlyMessage().text()).isEqualTo("/start");
    }

    @Test
    void what_looks_like_markup_arrives_letter_by_letter() {
        String text = "Soil < 8 °C & rain; *bold* _under_ [link](x) <b>tag</b> \\ `code` “quotes” 🌱";
        rig.answer = message -> new Reply(message.text(), List.of());
        rig.api.push(Said.text(12, text));

        rig.awaitTexts(text);
        assertThat(rig.api.sent().get(0).has("parse_mode")).isFalse();
    }

    @Test
    void a_long_reply_goes_out_in_parts_cut_between_paragraphs_with_the_buttons_on_the_last() {
        String paragraph = "Harden off for a week. ".repeat(60).strip();
        String text = String.join("\n\n", List.of(paragraph, paragraph, paragraph, paragraph, paragraph));
        rig.answer = message -> new Reply(text, List.of("why?"));
        rig.api.push(Said.text(12, "/week"));

        rig.await("three parts", () -> rig.api.sent().size() == 3);
        assertThat(rig.api.texts()).allMatch(part -> part.length() <= Parts.LONGEST);
        assertThat(String.join("\n\n", rig.api.texts())).isEqualTo(text);
        assertThat(rig.api.sent()).extracting(sent -> sent.has("reply_markup")).containsExactly(false, false, true);
    }

    @Test
    void buttons_show_their_labels_and_a_tap_hands_over_its_label() {
        String longLabel = "the tomatoes on the windowsill behind the staff room door, sown 3 March";
        ask("Which tomatoes?", "all of them", longLabel);

        JsonNode rows = rig.api.sent().get(0).path("reply_markup").path("inline_keyboard");
        assertThat(rows.findValuesAsText("text")).containsExactly("all of them", longLabel);

        rig.api.push(Said.tap("cb1", rows.get(1).get(0).path("callback_data").asText()));
        rig.await("the tap", () -> rig.handled.size() == 2);
        assertThat(rig.handled.get(1).pressed()).isEqualTo(longLabel);
        assertThat(rig.handled.get(1).text()).isEmpty();
        rig.await("the answer to the tap", () -> rig.api.answeredTaps().size() == 1);
        assertThat(rig.api.answeredTaps().get(0).path("callback_query_id").asText())
                .isEqualTo("cb1");
        assertThat(rig.api.answeredTaps().get(0).path("text").asText()).isEmpty();
    }

    private void ask(String question, String... buttons) {
        int before = rig.api.sent().size();
        rig.answer = message -> new Reply(question, List.of(buttons));
        rig.api.push(Said.text(100 + before, "watered the tomatoes"));
        rig.await("the question", () -> rig.api.sent().size() == before + 1);
        rig.answer = message -> new Reply("Noted.", List.of());
    }

    private String data(int message, int button) {
        return rig.api
                .sent()
                .get(message)
                .path("reply_markup")
                .findValuesAsText("callback_data")
                .get(button);
    }

    @Test
    void a_button_tapped_twice_counts_once() {
        ask("Take back the last entry?", "undo");

        rig.api.push(Said.tap("cb1", data(0, 0)));
        rig.api.push(Said.tap("cb2", data(0, 0)));
        rig.api.push(Said.text(900, "and then"));

        rig.await("what came after", () -> rig.handled.size() >= 3);
        assertThat(rig.handled).extracting(Message::pressed).containsExactly(null, "undo", null);
        rig.await("both taps answered", () -> rig.api.answeredTaps().size() == 2);
    }

    @Test
    void a_button_of_an_older_question_does_nothing_and_says_so() {
        ask("Which beans?", "the early ones", "the late ones");
        ask("Seven or eight?", "7", "8");

        rig.api.push(Said.tap("cb1", data(0, 1)));
        rig.api.push(Said.text(900, "and then"));

        rig.await("what came after", () -> rig.handled.size() == 3);
        assertThat(rig.handled).extracting(Message::pressed).containsOnlyNulls();
        rig.await("the tap answered", () -> rig.api.answeredTaps().size() == 1);
        assertThat(rig.api.answeredTaps().get(0).path("text").asText()).isEqualTo(Rig.PAST);
        assertThat(rig.store.unhandled(TelegramChannel.NAME, 10)).isEmpty();
    }

    @Test
    void a_button_of_another_chat_or_with_strange_data_does_nothing() {
        ask("Which beans?", "the early ones");

        rig.api.push(Said.tap(815, "cb1", data(0, 0)));
        rig.api.push(Said.tap("cb2", "99999999999999999999.0"));
        rig.api.push(Said.tap("cb3", "'; drop table outbox; --"));
        rig.api.push(Said.tap("cb4", data(0, 0).replace(".0", ".7")));
        rig.api.push(Said.text(900, "and then"));

        rig.await("what came after", () -> rig.handled.size() == 2);
        assertThat(rig.handled).extracting(Message::pressed).containsOnlyNulls();
        rig.await("all taps answered", () -> rig.api.answeredTaps().size() == 4);
    }

    @Test
    void an_edited_message_names_the_one_that_it_corrects() {
        rig.api.push(Said.text(12, "Sowed 8 beans"));
        rig.api.push(Said.edited(12, "Sowed 6 beans"));

        rig.await("both", () -> rig.handled.size() == 2);
        Message correction = rig.handled.get(1);
        assertThat(correction.edits()).isEqualTo("4711/12");
        assertThat(correction.id()).isEqualTo("4711/12/edit-1002");
        assertThat(correction.text()).isEqualTo("Sowed 6 beans");
        assertThat(correction.at()).isEqualTo(Instant.ofEpochSecond(1809176400));
    }

    @Test
    void a_location_is_handed_over_in_degrees() {
        rig.api.push(Said.with(12, "\"location\":{\"latitude\":53.4084,\"longitude\":-2.9916}"));

        assertThat(theOnlyMessage().latitude()).isEqualTo(53.4084);
        assertThat(theOnlyMessage().longitude()).isEqualTo(-2.9916);
        assertThat(theOnlyMessage().text()).isEmpty();
    }

    @Test
    void a_photo_is_noted_with_its_caption_or_without() {
        String photo = "\"photo\":[{\"file_id\":\"a\",\"file_unique_id\":\"b\",\"width\":90,\"height\":60}]";
        rig.api.push(Said.with(12, photo));
        rig.api.push(Said.with(13, photo + ",\"caption\":\"yellow leaves\""));

        rig.await("both", () -> rig.handled.size() == 2);
        assertThat(rig.handled).extracting(Message::photo).containsExactly(true, true);
        assertThat(rig.handled).extracting(Message::text).containsExactly("", "yellow leaves");
    }

    @Test
    void an_album_counts_as_one_photo_and_a_sticker_as_an_empty_message() {
        String photo =
                "\"photo\":[{\"file_id\":\"a\",\"file_unique_id\":\"b\",\"width\":9,\"height\":6}],\"media_group_id\":\"55\"";
        rig.api.push(Said.with(12, photo + ",\"caption\":\"holes\""));
        rig.api.push(Said.with(13, photo));
        rig.api.push(Said.with(
                14,
                "\"sticker\":{\"file_id\":\"a\",\"file_unique_id\":\"b\",\"type\":\"regular\",\"width\":9,"
                        + "\"height\":6,\"is_animated\":false,\"is_video\":false}"));

        rig.await("two messages", () -> rig.handled.size() == 2);
        assertThat(rig.handled).extracting(Message::text).containsExactly("holes", "");
        assertThat(rig.handled).extracting(Message::photo).containsExactly(true, false);
    }

    @Test
    void in_a_group_only_what_is_meant_for_the_bot_is_taken_in() {
        rig.api.push(Said.inGroup(1, "\"text\":\"who has the key to the shed?\""));
        rig.api.push(Said.inGroup(2, "\"text\":\"/week@otherbot\""));
        rig.api.push(Said.inGroup(7, "\"text\":\"ask @bothybotany\""));
        rig.api.push(Said.inGroup(3, "\"new_chat_members\":[{\"id\":5,\"is_bot\":false,\"first_name\":\"Jo\"}]"));
        rig.api.push(Said.inGroup(4, "\"text\":\"/week@BothyBot\""));
        rig.api.push(Said.inGroup(5, "\"text\":\"@bothybot, we sowed 9 chard\""));
        rig.api.push(
                Said.inGroup(
                        6,
                        "\"text\":\"no, 8\",\"reply_to_message\":{\"message_id\":9,\"date\":1809172800,\"chat\":{\"id\":-100200300,"
                                + "\"type\":\"supergroup\"},\"from\":{\"id\":4242424242,\"is_bot\":true,\"first_name\":\"Bothy\"}}"));

        rig.await("three messages", () -> rig.handled.size() == 3);
        assertThat(rig.handled).extracting(Message::text).containsExactly("/week", "we sowed 9 chard", "no, 8");
        assertThat(rig.handled).extracting(Message::grower).containsOnly("telegram:-100200300");
    }

    /** Who writes in the name of a group is shown as a bot of the service's own. */
    @Test
    void a_group_may_speak_for_itself() {
        rig.api.push("{\"message\":{\"message_id\":1,\"date\":1809172800,\"chat\":{\"id\":-100200300,"
                + "\"type\":\"supergroup\",\"title\":\"School plot\"},\"sender_chat\":{\"id\":-100200300,"
                + "\"type\":\"supergroup\",\"title\":\"School plot\"},\"from\":{\"id\":1087968824,\"is_bot\":true,"
                + "\"first_name\":\"Group\"},\"text\":\"@bothybot sowed 9 chard\"}}");
        rig.api.push("{\"message\":{\"message_id\":2,\"date\":1809172800,\"chat\":{\"id\":-100200300,"
                + "\"type\":\"supergroup\",\"title\":\"School plot\"},\"from\":{\"id\":99,\"is_bot\":true,"
                + "\"first_name\":\"Another\"},\"text\":\"@bothybot sowed 8 chard\"}}");
        rig.api.push(Said.inGroup(3, "\"text\":\"@bothybot thanks\""));

        rig.await("two messages", () -> rig.handled.size() == 2);
        assertThat(rig.handled).extracting(Message::text).containsExactly("sowed 9 chard", "thanks");
    }

    @Test
    void a_tap_that_names_no_chat_stops_nobody() {
        rig.api.push("{\"callback_query\":{\"id\":\"1\",\"from\":{\"id\":1,\"is_bot\":false,\"first_name\":\"Ida\"},"
                + "\"chat_instance\":\"1\",\"data\":\"812.0\",\"message\":{\"message_id\":501,\"date\":1809172800}}}");
        rig.api.push(Said.text(1, "watered"));

        rig.awaitTexts("Noted: watered");
    }

    @Test
    void a_group_that_becomes_a_supergroup_keeps_its_plot() {
        rig.store.write(
                "telegram:-77",
                page -> page.append(
                        "-77/1", java.time.Instant.EPOCH, List.of(new bothy.garden.SettingChange("units", "us"))));

        rig.api.push("{\"message\":{\"message_id\":9,\"date\":1809172800,\"chat\":{\"id\":-77,\"type\":\"group\","
                + "\"title\":\"School plot\"},\"migrate_to_chat_id\":-100200300}}");
        rig.api.push("{\"message\":{\"message_id\":1,\"date\":1809172800,\"chat\":{\"id\":-100200300,"
                + "\"type\":\"supergroup\",\"title\":\"School plot\"},\"migrate_from_chat_id\":-77}}");
        rig.api.push(Said.inGroup(2, "\"text\":\"/plot\""));

        rig.awaitTexts("Noted: /plot");
        assertThat(rig.store.growers()).containsExactly("telegram:-100200300");
        assertThat(rig.store.lines("telegram:-100200300")).hasSize(1);
    }

    @Test
    void the_messages_of_a_chat_are_handled_and_answered_in_order() {
        for (int number = 1; number <= 60; number++) {
            rig.api.push(Said.text(number % 3, number, "line " + number));
        }

        rig.await("sixty replies", () -> rig.api.sent().size() == 60);
        for (int chat = 0; chat < 3; chat++) {
            String address = String.valueOf(chat);
            List<Integer> lines = rig.api.sent().stream()
                    .filter(sent -> sent.path("chat_id").asText().equals(address))
                    .map(sent -> Integer.parseInt(sent.path("text").asText().replaceAll("\\D", "")))
                    .toList();
            assertThat(lines).hasSize(20).isSorted();
        }
    }
}
