package bothy.channel.telegram;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.LongSupplier;

/**
 * A clock that is never set back: what is to wait a second must not wait an hour because the machine's clock was put right meanwhile.
 * One that is set forward it follows, as a machine without a battery starts in the past until it hears the time.
 */
final class Onward implements InstantSource {
    private final InstantSource clock;
    private final LongSupplier nanos;
    private Instant told;
    private long at;

    /** @param nanos nanoseconds since some moment, whatever the clock does */
    Onward(InstantSource clock, LongSupplier nanos) {
        this.clock = clock;
        this.nanos = nanos;
        this.told = clock.instant();
        this.at = nanos.getAsLong();
    }

    @Override
    public synchronized Instant instant() {
        long now = nanos.getAsLong();
        Instant onward = told.plus(Duration.ofNanos(now - at));
        Instant shown = clock.instant();
        told = shown.isAfter(onward) ? shown : onward;
        at = now;
        return told;
    }
}
