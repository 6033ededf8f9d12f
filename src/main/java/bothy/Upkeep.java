package bothy;

import bothy.diary.Store;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What is done in the background: the store is read through once after the start, and old post is removed every hour. */
final class Upkeep implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Upkeep.class);

    private final Store store;
    private final InstantSource clock;
    private final Duration keep;
    private volatile String damage = "";
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread background = new Thread(work, "upkeep");
        background.setDaemon(true);
        return background;
    });

    Upkeep(Store store, InstantSource clock, Duration keep) {
        this.store = store;
        this.clock = clock;
        this.keep = keep;
    }

    Upkeep start() {
        thread.execute(this::lookThrough);
        thread.scheduleWithFixedDelay(this::clear, 1, 60, TimeUnit.MINUTES);
        return this;
    }

    /** What was found wrong inside the store, as a sentence; empty text for nothing. */
    String damage() {
        return damage;
    }

    private void lookThrough() {
        try {
            Optional<String> found = store.lookThrough();
            damage = found.map(what -> "The diary is damaged (" + what
                            + "). Stop, keep a copy of it, and put a backup in " + "its place.")
                    .orElse("");
            found.ifPresent(what -> LOG.error(damage));
        } catch (RuntimeException e) {
            LOG.error("The store could not be read through: {}", e.getMessage());
        }
    }

    void clear() {
        try {
            store.clearPost(clock.instant().minus(keep));
        } catch (RuntimeException e) {
            LOG.error("Old post could not be removed, trying again in an hour: {}", e.getMessage());
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
