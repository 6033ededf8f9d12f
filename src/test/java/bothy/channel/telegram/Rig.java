package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.fail;

import bothy.channel.telegram.TelegramSettings.Rate;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.garden.Post;
import bothy.garden.Reply;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/** A channel between a Bot API server on loopback and a diary in a file, with a conversation of the test's own. */
final class Rig implements AutoCloseable {
    static final String PAST = "That question is past.";
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    final BotApiServer api = new BotApiServer();
    final Store store;
    final List<Message> handled = new CopyOnWriteArrayList<>();
    final List<Message> apologised = new CopyOnWriteArrayList<>();
    volatile Function<Message, Reply> answer = message -> new Reply("Noted: " + message.text(), List.of());
    TelegramChannel channel;

    Rig(Path folder) {
        this.store = Shelf.open(folder.resolve("diary.db").toString());
    }

    TelegramSettings settings() {
        return TelegramSettings.of(
                        BotApiServer.TOKEN,
                        Map.of("week", "What to do this week", "undo", "Take back the last entry"),
                        PAST)
                .withService(api.address())
                .withTimes(Duration.ofSeconds(3), Duration.ofSeconds(2))
                .withPace(new Rate(1000, 1000), new Rate(1000, 1000), new Rate(1000, 1000));
    }

    Rig start() {
        return start(settings(), store);
    }

    Rig start(TelegramSettings settings, Post post) {
        channel = new TelegramChannel(settings, post, handler(), Clock.systemUTC());
        channel.start();
        return this;
    }

    Rig start(TelegramSettings settings, Post post, TelegramSettings.Webhook webhook) {
        channel = new TelegramChannel(settings, post, handler(), Clock.systemUTC());
        channel.start(webhook);
        return this;
    }

    private Handler handler() {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                keep(message, channel, chat, answer);
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                apologised.add(message);
                keep(message, channel, chat, sorry -> new Reply("Sorry.", List.of()));
            }
        };
    }

    /** As the conversation does it: the reply and the mark in one transaction, a message that was handled before is let pass. */
    private void keep(Message message, String channel, String chat, Function<Message, Reply> reply) {
        boolean first = store.<Boolean>write(message.grower(), page -> {
            if (page.handled(message.id())) {
                return false;
            }
            page.send(channel, chat, reply.apply(message), message.at());
            page.markHandled(message.id(), message.at());
            return true;
        });
        if (first) {
            handled.add(message);
        }
    }

    void await(String what, BooleanSupplier done) {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (!done.getAsBoolean()) {
            if (System.nanoTime() > until) {
                fail("Waited in vain for: " + what + ". Sent so far: " + api.texts() + ", asked: " + api.asked());
            }
            sleep(10);
        }
    }

    void awaitTexts(String... texts) {
        await("replies " + List.of(texts), () -> api.texts().size() >= texts.length);
        org.assertj.core.api.Assertions.assertThat(api.texts()).containsExactly(texts);
    }

    static void sleep(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        if (channel != null) {
            channel.stop();
        }
        api.close();
        store.close();
    }
}
