package bothy.channel.telegram;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;

/** How the channel comes to its end: once, stopped from outside or for a reason that has to be told. */
final class Ending {
    static final String SECOND_READER =
            "Another program fetches messages with the same Telegram bot token, and only one may. Stop the "
                    + "other one, then start Bothy again.";
    static final String TOKEN_REFUSED =
            "Telegram does not accept the bot token. BOTHY_TELEGRAM_TOKEN must be the whole token as BotFather "
                    + "gave it (digits, a colon, letters) and not be revoked; ask BotFather for it with /token.";

    private final CountDownLatch ended = new CountDownLatch(1);
    private final AtomicReference<String> reason = new AtomicReference<>();

    /** @param sentence what was wrong and what to do; {@code null} when it was stopped from outside */
    void come(String sentence) {
        if (ended.getCount() > 0 && reason.compareAndSet(null, sentence == null ? "" : sentence)) {
            ended.countDown();
        }
    }

    boolean hasCome() {
        return ended.getCount() == 0;
    }

    /** Waits for the end, at most this long; says whether it has come. */
    boolean await(java.time.Duration atMost) throws InterruptedException {
        return ended.await(atMost.toMillis(), java.util.concurrent.TimeUnit.MILLISECONDS);
    }

    Optional<String> await() throws InterruptedException {
        ended.await();
        return Optional.of(reason.get()).filter(sentence -> !sentence.isEmpty());
    }
}
