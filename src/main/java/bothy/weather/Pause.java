package bothy.weather;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How long nothing is asked of a service after it failed or refused. It holds for all places at once: a refusal means the caller, and a
 * service that is down is down for everyone, so that only one message waits for it. Safe for use by several threads.
 */
final class Pause {
    private static final Duration AFTER_FAILURE = Duration.ofMinutes(2);
    private static final Duration AFTER_REFUSAL = Duration.ofMinutes(30);
    private static final Duration LONGEST = Duration.ofHours(12);

    private Instant until = Instant.MIN;
    private Duration length = Duration.ZERO;
    private String trouble;

    synchronized boolean over(Instant now) {
        return !now.isBefore(until);
    }

    synchronized Optional<String> trouble() {
        return Optional.ofNullable(trouble);
    }

    synchronized void well() {
        length = Duration.ZERO;
        until = Instant.MIN;
        trouble = null;
    }

    /** Out of order: two minutes, then four, eight … up to half a day. */
    void failed(Instant now, String trouble) {
        rest(now, AFTER_FAILURE, trouble);
    }

    /** Refused: half an hour, then an hour … up to half a day. */
    void refused(Instant now, String trouble) {
        rest(now, AFTER_REFUSAL, trouble);
    }

    private synchronized void rest(Instant now, Duration least, String what) {
        Duration doubled = length.multipliedBy(2);
        Duration next = doubled.compareTo(least) < 0 ? least : doubled;
        length = next.compareTo(LONGEST) > 0 ? LONGEST : next;
        until = now.plus(length);
        trouble = what;
    }
}
