package bothy.channel.telegram;

import bothy.channel.telegram.TelegramSettings.Rate;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/** How fast messages may go: a bucket of tokens for all together and one for each chat. */
final class Pace {
    private static final int CHATS_REMEMBERED = 10_000;

    private final TelegramSettings settings;
    private final Bucket overall;
    private final Map<String, Bucket> chats = new HashMap<>();
    private final Map<String, Instant> scolded = new HashMap<>();
    private Instant heldUntil = Instant.MIN;

    Pace(TelegramSettings settings) {
        this.settings = settings;
        this.overall = new Bucket(settings.overall());
    }

    /**
     * Asks for leave to send one message.
     *
     * @return zero when it may go now (it is counted), else how long to wait before asking again
     */
    synchronized Duration ask(String chat, Instant now) {
        if (now.isBefore(heldUntil)) {
            return Duration.between(now, heldUntil);
        }
        Bucket own = chats.computeIfAbsent(
                chat, name -> new Bucket(isGroup(name) ? settings.eachGroup() : settings.eachChat()));
        Duration wait = longer(overall.wait(now), own.wait(now));
        if (wait.isZero()) {
            overall.take();
            own.take();
            forgetRested(now);
        }
        return wait;
    }

    /**
     * The service said that a message came too fast. One chat may have gone too fast by itself; when a second one hears the same in the
     * meantime, all of them do.
     */
    synchronized void tooFast(String chat, Instant now, Instant until) {
        scolded.values().removeIf(end -> !end.isAfter(now));
        scolded.put(chat, until);
        if (scolded.size() > 1) {
            heldUntil = until;
        }
    }

    private static boolean isGroup(String chat) {
        return chat.startsWith("-");
    }

    private static Duration longer(Duration one, Duration other) {
        return one.compareTo(other) > 0 ? one : other;
    }

    private void forgetRested(Instant now) {
        if (chats.size() > CHATS_REMEMBERED) {
            chats.values().removeIf(bucket -> bucket.isFull(now));
        }
    }

    private static final class Bucket {
        /** Sums of fractions miss a whole number by less than this. */
        private static final double ROUNDING_MILLIS = 1e-6;

        private final Rate rate;
        private double tokens;
        private Instant filled;

        Bucket(Rate rate) {
            this.rate = rate;
            this.tokens = rate.burst();
        }

        Duration wait(Instant now) {
            fill(now);
            double millis = (1 - tokens) / rate.perSecond() * 1000;
            return Duration.ofMillis(Math.max(0, (long) Math.ceil(millis - ROUNDING_MILLIS)));
        }

        /** A clock that was set back fills nothing; one that was set forward fills the burst at most. */
        private void fill(Instant now) {
            if (filled != null && now.isAfter(filled)) {
                double seconds = Duration.between(filled, now).toMillis() / 1000.0;
                tokens = Math.min(rate.burst(), tokens + seconds * rate.perSecond());
            }
            filled = now;
        }

        void take() {
            tokens--;
        }

        boolean isFull(Instant now) {
            fill(now);
            return tokens >= rate.burst();
        }
    }
}
