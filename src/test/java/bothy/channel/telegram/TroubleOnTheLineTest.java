package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Incoming;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.garden.Sent;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The service, the store or the conversation fails; nothing is lost, nothing is recorded twice, order is kept. */
class TroubleOnTheLineTest {
    @TempDir
    Path folder;

    private Rig rig;

    @BeforeEach
    void prepare() {
        rig = new Rig(folder);
    }

    @AfterEach
    void stop() {
        rig.close();
    }

    // Receiving

    @Test
    void an_update_is_acknowledged_only_when_it_is_in_the_store() {
        AtomicInteger refusals = new AtomicInteger(2);
        CountDownLatch tried = new CountDownLatch(2);
        rig.start(rig.settings(), new Through(rig.store) {
            @Override
            public int receive(List<Incoming> incoming) {
                if (refusals.getAndDecrement() > 0) {
                    tried.countDown();
                    throw new IllegalStateException("The disk is full.");
                }
                assertThat(rig.api.waiting()).isEqualTo(1);
                return super.receive(incoming);
            }
        });

        rig.api.push(Said.text(12, "sowed beans"));

        rig.await("two tries in vain", () -> tried.getCount() == 0);
        assertThat(rig.api.waiting()).isEqualTo(1);
        rig.awaitTexts("Noted: sowed beans");
        rig.await("the acknowledgement", () -> rig.api.waiting() == 0);
    }

    @Test
    void a_program_that_ends_before_the_update_is_stored_gets_it_again() {
        CountDownLatch tried = new CountDownLatch(1);
        rig.start(rig.settings(), new Through(rig.store) {
            @Override
            public int receive(List<Incoming> incoming) {
                tried.countDown();
                throw new IllegalStateException("The disk is full.");
            }
        });
        rig.api.push(Said.text(12, "sowed beans"));
        rig.await("a try in vain", () -> tried.getCount() == 0);
        rig.channel.stop();

        assertThat(rig.api.waiting()).isEqualTo(1);
        rig.start();

        rig.awaitTexts("Noted: sowed beans");
    }

    @Test
    void an_update_delivered_again_is_recorded_once() {
        rig.start();
        rig.api.push(Said.text(12, "sowed beans"));
        rig.awaitTexts("Noted: sowed beans");

        rig.api.push(Said.text(12, "sowed beans"));
        rig.api.push(Said.text(13, "and peas"));

        rig.awaitTexts("Noted: sowed beans", "Noted: and peas");
    }

    @Test
    void polling_that_died_is_started_again() {
        AtomicInteger blows = new AtomicInteger(1);
        rig.start(rig.settings(), new Through(rig.store) {
            @Override
            public int receive(List<Incoming> incoming) {
                if (blows.getAndDecrement() > 0) {
                    throw new OutOfMemoryError("as if");
                }
                return super.receive(incoming);
            }
        });

        rig.api.push(Said.text(12, "sowed beans"));

        rig.awaitTexts("Noted: sowed beans");
    }

    @Test
    void refusals_broken_answers_and_silence_are_waited_out() {
        rig.api.fail("deleteWebhook", BotApiServer.badGateway());
        rig.api.fail("getMe", exchange -> exchange.sendResponseHeaders(200, -1));
        rig.api.fail(
                "getUpdates",
                BotApiServer.badGateway(),
                BotApiServer.dropped(),
                BotApiServer.brokenOff(),
                BotApiServer.silence(1_000));
        rig.start();

        rig.api.push(Said.text(12, "sowed beans"));

        rig.awaitTexts("Noted: sowed beans");
    }

    @Test
    void a_poll_that_came_too_fast_waits_as_long_as_it_is_told() {
        rig.start();
        rig.await("polling", () -> rig.api.asked().contains("getupdates"));
        rig.api.fail("getUpdates", BotApiServer.tooFast(2));
        rig.api.push(Said.text(12, "first"));
        rig.awaitTexts("Noted: first");
        long begin = System.nanoTime();

        rig.api.push(Said.text(13, "second"));

        // Left to itself polling would try again after a quarter of a second.
        rig.awaitTexts("Noted: first", "Noted: second");
        assertThat(System.nanoTime() - begin).isGreaterThan(1_200_000_000L);
    }

    @Test
    void an_update_that_cannot_be_read_does_not_keep_the_others_back() {
        rig.start();
        rig.api.push(Said.text(12, "first"));
        rig.api.push("{\"message\":{\"message_id\":\"twelve\",\"date\":{},\"chat\":[]}}");
        rig.api.push("{\"message\":{\"message_id\":14,\"date\":1809172800,\"text\":\"from nowhere\"}}");
        rig.api.push("{\"poll\":{\"id\":\"1\"},\"some_new_kind\":{}}");
        rig.api.push(Said.text(15, "last"));

        rig.awaitTexts("Noted: first", "Noted: last");
        rig.await("all acknowledged", () -> rig.api.waiting() == 0);
    }

    @Test
    void a_second_reader_ends_the_channel_with_a_sentence() throws InterruptedException {
        rig.api.fail("getUpdates", BotApiServer.refuse(409, "Conflict: terminated by other getUpdates request", ""));
        rig.start();

        assertThat(rig.channel.awaitEnd())
                .contains(
                        "Another program fetches messages with the same Telegram bot token, and only one may. Stop the other one, "
                                + "then start Bothy again.");
    }

    @Test
    void a_refused_token_ends_the_channel_with_a_sentence() throws InterruptedException {
        TelegramSettings mistyped =
                TelegramSettings.of("12345:wrong", java.util.Map.of(), "").withService(rig.api.address());
        rig.start(mistyped, rig.store);

        assertThat(rig.channel.awaitEnd())
                .contains(
                        "Telegram does not accept the bot token. BOTHY_TELEGRAM_TOKEN must be the whole token as BotFather gave it "
                                + "(digits, a colon, letters) and not be revoked; ask BotFather for it with /token.");
    }

    @Test
    void a_token_revoked_while_polling_ends_the_channel() throws InterruptedException {
        rig.start();
        rig.await("polling", () -> rig.api.asked().contains("getupdates"));
        rig.api.fail("getUpdates", BotApiServer.refuse(401, "Unauthorized", ""));
        rig.api.push(Said.text(12, "first"));

        assertThat(rig.channel.awaitEnd()).contains(Ending.TOKEN_REFUSED);
    }

    @Test
    void a_stopped_channel_ends_without_a_sentence_and_leaves_no_thread() throws InterruptedException {
        rig.start();
        rig.api.push(Said.text(12, "sowed beans"));
        rig.awaitTexts("Noted: sowed beans");

        rig.channel.stop();

        assertThat(rig.channel.awaitEnd()).isEmpty();
        rig.await("no thread of the channel", () -> Thread.getAllStackTraces().keySet().stream()
                .noneMatch(thread -> thread.getName().startsWith("telegram-")));
    }

    // Handling

    @Test
    void a_message_that_fails_is_tried_again_and_its_chat_waits_while_others_go_on() {
        AtomicInteger failures = new AtomicInteger(2);
        rig.answer = message -> {
            if (message.text().equals("first") && failures.getAndDecrement() > 0) {
                throw new IllegalStateException("A rule broke.");
            }
            return new Reply("Noted: " + message.text(), List.of());
        };
        rig.start();

        rig.api.push(Said.text(1, 12, "first"));
        rig.api.push(Said.text(1, 13, "second"));
        rig.api.push(Said.text(2, 12, "elsewhere"));

        rig.awaitTexts("Noted: elsewhere", "Noted: first", "Noted: second");
        assertThat(rig.apologised).isEmpty();
    }

    @Test
    void a_message_that_always_fails_is_answered_with_an_apology_and_makes_way() {
        rig.answer = message -> {
            if (message.text().equals("first")) {
                throw new StackOverflowError("rules without end");
            }
            return new Reply("Noted: " + message.text(), List.of());
        };
        rig.start();

        rig.api.push(Said.text(1, 12, "first"));
        rig.api.push(Said.text(1, 13, "second"));

        rig.awaitTexts("Sorry.", "Noted: second");
        assertThat(rig.apologised).extracting(Message::text).containsExactly("first");
    }

    @Test
    void what_was_received_but_not_handled_before_the_end_is_handled_after_the_start() throws Exception {
        Arrived update = Arrived.of(Said.text(12, "sowed beans"));
        rig.store.receive(List.of(
                Letter.incoming(update, new Me(1, "bothybot"), Instant.EPOCH).orElseThrow()));

        rig.start();

        rig.awaitTexts("Noted: sowed beans");
    }

    // Sending

    private void replies(String... texts) {
        rig.store.write("telegram:4711", page -> {
            for (String text : texts) {
                page.send("telegram", "4711", new Reply(text, List.of()), Instant.EPOCH);
            }
            return null;
        });
    }

    @Test
    void a_reply_that_came_too_fast_goes_out_when_it_may_and_before_the_next() {
        replies("first", "second");
        rig.api.fail("sendMessage", BotApiServer.tooFast(1));
        long begin = System.nanoTime();
        rig.start();

        rig.awaitTexts("first", "second");
        assertThat(System.nanoTime() - begin).isGreaterThan(1_000_000_000L);
    }

    @Test
    void a_reply_to_a_grower_who_left_is_given_up() {
        replies("first");
        rig.api.fail("sendMessage", BotApiServer.refuse(403, "Forbidden: bot was blocked by the user", ""));
        rig.start();
        rig.await("the try", () -> rig.api.asked().contains("sendmessage"));
        rig.await("nothing waits", () -> rig.store
                .toSend("telegram", Instant.parse("2999-01-01T00:00:00Z"), 1)
                .isEmpty());

        rig.api.push(Said.text(12, "back again"));

        rig.awaitTexts("Noted: back again");
    }

    @Test
    void a_reply_that_the_service_finds_wrong_is_given_up_and_the_next_goes_out() {
        replies("first", "second");
        rig.api.fail("sendMessage", BotApiServer.refuse(400, "Bad Request: chat not found", ""));
        rig.start();

        rig.awaitTexts("second");
    }

    @Test
    void a_reply_is_sent_again_after_a_bad_gateway_a_dropped_or_broken_off_answer_or_silence() {
        replies("first", "second", "third", "fourth", "fifth");
        rig.api.fail("sendMessage", BotApiServer.badGateway(), BotApiServer.dropped());
        rig.start();
        rig.await("the first", () -> rig.api.texts().contains("first"));
        rig.api.fail("sendMessage", BotApiServer.brokenOff(), BotApiServer.silence(3_000));

        rig.awaitTexts("first", "second", "third", "fourth", "fifth");
    }

    @Test
    void a_long_reply_that_is_cut_in_the_middle_goes_on_with_the_part_that_failed() {
        String first = "a".repeat(3_900);
        String second = "b".repeat(3_900);
        String third = "c".repeat(100);
        replies(String.join("\n\n", first, second, third));
        rig.api.fail("sendMessage", BotApiServer.served(), BotApiServer.badGateway());
        rig.start();

        rig.awaitTexts(first, second, third);
    }

    @Test
    void a_reply_that_was_sent_but_could_not_be_noted_is_not_sent_again() {
        AtomicInteger refusals = new AtomicInteger(2);
        replies("first", "second");
        rig.start(rig.settings(), new Through(rig.store) {
            @Override
            public void sent(List<Sent> noted) {
                if (refusals.getAndDecrement() > 0) {
                    throw new IllegalStateException("The disk is full.");
                }
                super.sent(noted);
            }
        });

        rig.awaitTexts("first", "second");
    }
}
