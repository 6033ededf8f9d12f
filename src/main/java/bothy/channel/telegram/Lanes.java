package bothy.channel.telegram;

import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A few threads that do one thing at a time for each chat, and a bell for whoever hands out the work. */
final class Lanes {
    private static final Logger LOG = LoggerFactory.getLogger(Lanes.class);
    private static final long LAST_WORK_SECONDS = 10;

    private final int count;
    private final ExecutorService threads;
    private final Set<String> busy = new HashSet<>();
    private boolean rung;
    private boolean closed;

    Lanes(int count, String name) {
        this.count = count;
        this.threads = Executors.newFixedThreadPool(count, work -> new Thread(work, name));
    }

    /**
     * The chats that something is being done for. Take this before looking for work: what was looked up before a lane fell free may be
     * done already.
     */
    synchronized Set<String> busy() {
        return Set.copyOf(busy);
    }

    /** Does some work for a chat, unless something is being done for it. */
    synchronized boolean begin(String chat, Runnable work) {
        if (closed || !busy.add(chat)) {
            return false;
        }
        threads.execute(() -> {
            try {
                work.run();
            } catch (RuntimeException | Error e) {
                LOG.error("Work for a chat broke off", e);
            } finally {
                end(chat);
            }
        });
        return true;
    }

    private synchronized void end(String chat) {
        busy.remove(chat);
        ring();
    }

    /** There may be new work. */
    synchronized void ring() {
        rung = true;
        if (heard()) {
            notifyAll();
        }
    }

    /**
     * Waits for the bell, at most this long. While every lane has work the bell is not heard: looking for more would cost a query for
     * each piece of work done.
     */
    synchronized void await(Duration atMost) throws InterruptedException {
        if (!heard()) {
            wait(Math.max(1, atMost.toMillis()));
        }
        rung = false;
    }

    private boolean heard() {
        return closed || rung && busy.size() < count;
    }

    /** Lets what was begun come to its end. */
    void close() {
        synchronized (this) {
            closed = true;
            ring();
        }
        threads.shutdown();
        try {
            if (!threads.awaitTermination(LAST_WORK_SECONDS, TimeUnit.SECONDS)) {
                threads.shutdownNow();
            }
        } catch (InterruptedException e) {
            threads.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
