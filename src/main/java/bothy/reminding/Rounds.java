package bothy.reminding;

import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Address;
import bothy.conversation.Discretion;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Looks at the gardens whose time has come, a few at once; what is said is the conversation's decision. A look that is broken off, by a
 * failure or by the end of the process, is taken again after a while, by this process or by another on the same store.
 */
public final class Rounds implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Rounds.class);
    private static final int TAKEN_AT_ONCE = 100;
    private static final Duration TAKE_AGAIN = Duration.ofMinutes(5);
    /** Less than this is a clock being kept right. */
    private static final Duration SET_BACK = Duration.ofMinutes(2);

    private static final long LAST_WORK_SECONDS = 10;

    private final Conversation conversation;
    private final InstantSource clock;
    private final ZoneId zone;
    private final Runnable spoken;
    private final ExecutorService lookers;
    private final ScheduledExecutorService timer =
            Executors.newSingleThreadScheduledExecutor(work -> thread(work, "rounds"));
    private volatile boolean ending;
    private Instant latest = Instant.MIN;

    /**
     * @param zone time zone of a grower who has not told one
     * @param lookers how many gardens are looked at side by side
     * @param spoken called after something was put into the outbox
     */
    public Rounds(Conversation conversation, InstantSource clock, ZoneId zone, int lookers, Runnable spoken) {
        this.conversation = conversation;
        this.clock = clock;
        this.zone = zone;
        this.spoken = spoken;
        this.lookers = Executors.newFixedThreadPool(lookers, work -> thread(work, "looking"));
    }

    private static Thread thread(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }

    /** Begins the rounds. */
    public void start(Duration every) {
        timer.scheduleWithFixedDelay(this::goRound, 0, every.toMillis(), TimeUnit.MILLISECONDS);
    }

    /**
     * Looks at all gardens that are due.
     *
     * @return how many there were
     */
    public int goRound() {
        int looked = 0;
        try {
            mindTheClock();
            List<String> due = take();
            while (!due.isEmpty() && !ending) {
                lookAt(due);
                looked += due.size();
                due = take();
            }
        } catch (RuntimeException failure) {
            LOG.error("A round was cut short: {}", Discretion.of(failure), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return looked;
    }

    /** Looks set while the clock was ahead would come too late, so they are all taken when it is found to be set back. */
    private void mindTheClock() {
        Instant now = clock.instant();
        if (latest.isAfter(now.plus(SET_BACK))) {
            LOG.warn("The clock was set back by {}; all gardens are looked at anew.", Duration.between(now, latest));
            conversation.clockWasAhead(now);
            latest = now;
        }
        latest = now.isAfter(latest) ? now : latest;
    }

    private List<String> take() {
        Instant now = clock.instant();
        return conversation.takeDue(now, now.plus(TAKE_AGAIN), TAKEN_AT_ONCE);
    }

    private void lookAt(List<String> growers) throws InterruptedException {
        List<Future<?>> looks = growers.stream()
                .<Future<?>>map(grower -> lookers.submit(() -> look(grower)))
                .toList();
        for (Future<?> look : looks) {
            try {
                look.get();
            } catch (java.util.concurrent.ExecutionException failure) {
                LOG.error("A garden could not be looked at: {}", Discretion.of(failure.getCause()), failure.getCause());
            }
        }
    }

    /** @param grower key of a grower ("telegram:4711"): the channel, a colon, the channel's address */
    private void look(String grower) {
        int colon = grower.indexOf(':');
        if (colon <= 0 || ending) {
            return;
        }
        Address address = new Address(grower.substring(0, colon), grower.substring(colon + 1));
        conversation.speakUp(grower, clock.instant(), zone, address).ifPresent(said -> spoken.run());
    }

    /** Ends the rounds; looks that were begun come to their end. */
    @Override
    public void close() {
        ending = true;
        timer.shutdownNow();
        lookers.shutdown();
        try {
            lookers.awaitTermination(LAST_WORK_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
