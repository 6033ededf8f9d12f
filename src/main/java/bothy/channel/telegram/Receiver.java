package bothy.channel.telegram;

import bothy.garden.Incoming;
import bothy.garden.Post;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.telegram.telegrambots.longpolling.interfaces.LongPollingUpdateConsumer;
import org.telegram.telegrambots.meta.api.objects.CallbackQuery;
import org.telegram.telegrambots.meta.api.objects.Update;
import org.telegram.telegrambots.meta.api.objects.message.Message;

/**
 * Puts updates into the inbox. The next poll tells the service that they arrived, so this returns only when they are durable, and while
 * the store fails it tries again. An exception out of here ends the library's polling for good and without a word, so the only one is
 * meant to: at the end of the channel, when the updates are not stored and must not be acknowledged.
 */
final class Receiver implements LongPollingUpdateConsumer {
    private static final Logger LOG = LoggerFactory.getLogger(Receiver.class);
    private static final BackOff BACK_OFF = new BackOff(Duration.ofMillis(500), Duration.ofSeconds(30));

    private final Post post;
    private final Me me;
    private final InstantSource clock;
    private final Ending ending;
    private final Consumer<CallbackQuery> onTap;
    private final Runnable onReceived;
    private volatile boolean storing;

    Receiver(Post post, Me me, InstantSource clock, Ending ending, Consumer<CallbackQuery> onTap, Runnable onReceived) {
        this.post = post;
        this.me = me;
        this.clock = clock;
        this.ending = ending;
        this.onTap = onTap;
        this.onReceived = onReceived;
    }

    /** Whether it is busy with a store that takes its time; polling then rests and is not dead. */
    boolean isStoring() {
        return storing;
    }

    @Override
    public void consume(List<Update> updates) {
        storing = true;
        try {
            keep(() -> {
                moveChats(updates);
                post.receive(letters(updates));
            });
            updates.stream()
                    .map(Update::getCallbackQuery)
                    .filter(tap -> tap != null && tap.getData() != null)
                    .forEach(onTap);
            onReceived.run();
        } finally {
            storing = false;
        }
    }

    /**
     * Puts one update into the inbox, without trying again: who sent it will.
     *
     * @throws RuntimeException when it could not be made durable
     */
    void take(Arrived update) {
        moveChats(List.of(update));
        post.receive(letters(List.of(update)));
        if (update.getCallbackQuery() != null && update.getCallbackQuery().getData() != null) {
            onTap.accept(update.getCallbackQuery());
        }
        onReceived.run();
    }

    private List<Incoming> letters(List<Update> updates) {
        Instant now = clock.instant();
        return updates.stream()
                .map(update -> letter((Arrived) update, now)) // all come from PatientReading or Delivery
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Incoming> letter(Arrived update, Instant now) {
        try {
            return Letter.incoming(update, me, now);
        } catch (RuntimeException e) {
            LOG.error("Update {} is of no known form and is passed over.", update.getUpdateId(), e);
            return Optional.empty();
        }
    }

    /** A group that becomes a supergroup gets another number; its plot goes with it, before anything from there is taken in. */
    private void moveChats(List<Update> updates) {
        for (Update update : updates) {
            Message told = update.getMessage();
            if (told != null && told.getChat() != null && told.getMigrateToChatId() != null) {
                moved(told.getChatId(), told.getMigrateToChatId());
            } else if (told != null && told.getChat() != null && told.getMigrateFromChatId() != null) {
                moved(told.getMigrateFromChatId(), told.getChatId());
            }
        }
    }

    private void moved(long from, long to) {
        LOG.info("Group {} has become supergroup {}. Where it is named in an option, name the new number.", from, to);
        post.moved(TelegramChannel.NAME, String.valueOf(from), String.valueOf(to));
    }

    private void keep(Runnable keeping) {
        for (int failures = 0; ; ) {
            try {
                keeping.run();
                return;
            } catch (RuntimeException e) {
                failures++;
                LOG.error("Messages cannot be taken in, trying again: {}", e.getMessage());
                waitOrLeave(failures, e);
            }
        }
    }

    private void waitOrLeave(int failures, RuntimeException failure) {
        try {
            if (ending.await(BACK_OFF.after(failures))) {
                throw failure; // the service still holds them; the next start fetches them again
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw failure;
        }
    }

    @Override
    public void close() {
        // The store is closed by who opened it.
    }
}
