package bothy.reminding;

import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Address;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Goes round all gardens of one channel at an interval; whether a grower is spoken to is the conversation's decision. */
public final class Rounds implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Rounds.class);
    private final Conversation conversation;
    private final Supplier<List<String>> growers;
    private final InstantSource clock;
    private final ZoneId zone;
    private final Runnable spoken;
    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "rounds");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * @param growers keys of all growers ("telegram:4711"): the channel, a colon, the channel's address
     * @param zone time zone of a grower who has not told one
     * @param spoken called after something was put into the outbox
     */
    public Rounds(
            Conversation conversation,
            Supplier<List<String>> growers,
            InstantSource clock,
            ZoneId zone,
            Runnable spoken) {
        this.conversation = conversation;
        this.growers = growers;
        this.clock = clock;
        this.zone = zone;
        this.spoken = spoken;
    }

    /** Begins the rounds. */
    public void start(Duration every) {
        timer.scheduleWithFixedDelay(this::goRound, 0, every.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Looks at every garden once. A garden that fails does not keep the others waiting. */
    public void goRound() {
        try {
            growers.get().forEach(this::look);
        } catch (RuntimeException failure) {
            LOG.error("A round was cut short: {}", failure.getMessage(), failure);
        }
    }

    private void look(String grower) {
        int colon = grower.indexOf(':');
        if (colon <= 0) {
            return;
        }
        Address address = new Address(grower.substring(0, colon), grower.substring(colon + 1));
        try {
            conversation.speakUp(grower, clock.instant(), zone, address).ifPresent(said -> spoken.run());
        } catch (RuntimeException failure) {
            LOG.error("One garden could not be looked at: {}", failure.getMessage(), failure);
        }
    }

    @Override
    public void close() {
        timer.shutdownNow();
    }
}
