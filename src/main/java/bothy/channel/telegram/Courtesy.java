package bothy.channel.telegram;

import bothy.garden.Post;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.telegram.telegrambots.meta.api.objects.CallbackQuery;

/**
 * Tells the service that a tap was seen, so that the button stops turning, and the grower when its question is past. Nothing depends on
 * it: what cannot be done is left undone.
 */
final class Courtesy {
    private static final Logger LOG = LoggerFactory.getLogger(Courtesy.class);
    private static final int WAITING = 1_000;

    private final Post post;
    private final Service service;
    private final String buttonPast;
    private final ThreadPoolExecutor thread = new ThreadPoolExecutor(
            1,
            1,
            0,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(WAITING),
            work -> new Thread(work, "telegram-courtesy"),
            new ThreadPoolExecutor.DiscardPolicy());

    Courtesy(Post post, Service service, String buttonPast) {
        this.post = post;
        this.service = service;
        this.buttonPast = buttonPast;
    }

    void answer(CallbackQuery tap) {
        thread.execute(() -> {
            try {
                service.answerTap(tap.getId(), isPast(tap) ? buttonPast : null);
            } catch (RuntimeException e) {
                LOG.info("A tap could not be answered: {}", e.getMessage());
            }
        });
    }

    private boolean isPast(CallbackQuery tap) {
        return tap.getMessage() == null
                || Keyboard.label(
                                tap.getData(),
                                post.lastWithButtons(
                                        TelegramChannel.NAME,
                                        String.valueOf(tap.getMessage().getChatId())))
                        .isEmpty();
    }

    void close() {
        thread.shutdownNow();
    }
}
