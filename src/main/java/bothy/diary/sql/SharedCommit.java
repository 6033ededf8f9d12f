package bothy.diary.sql;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.function.Predicate;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Steps that wait for the one connection at the same time are taken together, on a thread of their own, and flushed to disk once: the
 * flush is most of what a commit costs. When one of them throws, all are undone and taken again, each at a savepoint, so that only those
 * that throw are left out; when the database itself fails, none of them is kept. A step returns when it is durable.
 *
 * <p>The transaction is begun and ended in plain SQL: the driver's own commit begins the next transaction at once, and when that finds
 * the file locked, a commit that did happen looks like one that failed.
 */
final class SharedCommit {
    private static final Logger LOG = LoggerFactory.getLogger(SharedCommit.class);
    private static final int AT_ONCE = 64;

    private final ReentrantLock oneAtATime = new ReentrantLock();
    private final Queue<Step<?>> waiting = new ConcurrentLinkedQueue<>();
    private final ExecutorService writer = Executors.newSingleThreadExecutor(SharedCommit::thread);
    private final Sql sql;

    SharedCommit(Sql sql) {
        this.sql = sql;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "diary-writer");
        thread.setDaemon(true);
        return thread;
    }

    /** What takes the connection for itself meanwhile takes this. */
    ReentrantLock lock() {
        return oneAtATime;
    }

    /**
     * Does some work in a transaction, maybe twice.
     *
     * @throws Sql.Failed when the database failed
     */
    <T> T take(Function<Sql, T> work) {
        Step<T> step = new Step<>(work);
        waiting.add(step);
        try {
            writer.execute(this::commitWaiting);
        } catch (RejectedExecutionException e) {
            throw new Sql.Failed(new SQLException("the diary is closed", e));
        }
        return step.outcome();
    }

    /** How many steps wait. */
    int waiting() {
        return waiting.size();
    }

    /** Takes no more steps; those that wait come to their end. */
    void close() {
        writer.shutdown();
    }

    /** Runs once for each step, and finds nothing when an earlier run took the step with others. */
    private void commitWaiting() {
        oneAtATime.lock();
        try {
            List<Step<?>> steps = nextFew();
            if (!steps.isEmpty()) {
                commitTogether(steps);
            }
        } finally {
            oneAtATime.unlock();
        }
    }

    private List<Step<?>> nextFew() {
        List<Step<?>> steps = new ArrayList<>();
        while (steps.size() < AT_ONCE && !waiting.isEmpty()) {
            steps.add(waiting.remove());
        }
        return steps;
    }

    private void commitTogether(List<Step<?>> steps) {
        try {
            if (!committed(steps, step -> step.taken(sql)) && steps.size() > 1) {
                committed(steps, step -> step.takenApart(sql));
            }
            steps.forEach(Step::end);
        } catch (RuntimeException | Error e) {
            steps.forEach(step -> step.fail(e));
        }
    }

    private boolean committed(List<Step<?>> steps, Predicate<Step<?>> taking) {
        sql.run("begin immediate");
        try {
            boolean whole = steps.stream().allMatch(taking);
            if (whole) {
                sql.run("commit");
            } else {
                rollBack();
            }
            return whole;
        } catch (RuntimeException | Error e) {
            rollBack();
            throw e;
        }
    }

    private void rollBack() {
        try {
            sql.run("rollback");
        } catch (Sql.Failed e) {
            // SQLite has rolled back by itself already after some errors, a full disk among them.
            LOG.debug("Nothing was left to undo", e);
        }
    }

    /** One caller's work. */
    private static final class Step<T> {
        private final Function<Sql, T> work;
        private final CompletableFuture<Void> ended = new CompletableFuture<>();
        private T done;
        private Throwable thrown;

        Step(Function<Sql, T> work) {
            this.work = work;
        }

        /** Returns whether it threw nothing. */
        boolean taken(Sql sql) {
            thrown = null;
            try {
                done = work.apply(sql);
            } catch (RuntimeException | Error e) {
                thrown = e;
            }
            return thrown == null;
        }

        /** Leaves nothing of it when it throws, and says that the others may go on. */
        boolean takenApart(Sql sql) {
            sql.run("savepoint step");
            if (!taken(sql)) {
                undo(sql);
            }
            sql.run("release step");
            return true;
        }

        private void undo(Sql sql) {
            try {
                sql.run("rollback to step");
            } catch (Sql.Failed e) {
                // The savepoint is gone with the transaction: what undid that is the failure to tell of.
                thrown.addSuppressed(e);
                throw failure();
            }
        }

        void end() {
            ended.complete(null);
        }

        void fail(Throwable why) {
            thrown = thrown == null ? why : thrown;
            end();
        }

        T outcome() {
            ended.join();
            if (thrown != null) {
                throw failure();
            }
            return done;
        }

        private RuntimeException failure() {
            if (thrown instanceof Error error) {
                throw error;
            }
            return (RuntimeException) thrown;
        }
    }
}
