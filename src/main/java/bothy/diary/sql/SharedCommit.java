package bothy.diary.sql;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * Steps that wait for the one connection at the same time are taken together and flushed to disk once: the flush is most of what a
 * commit costs. Each step stands at a savepoint of its own, so one that throws is undone alone; when the database itself fails, none
 * of them is kept. A step returns when it is durable.
 *
 * <p>The transaction is begun and ended in plain SQL: the driver's own commit begins the next transaction at once, and when that finds
 * the file locked, a commit that did happen looks like one that failed.
 */
final class SharedCommit {
    private static final int AT_ONCE = 64;

    private final ReentrantLock oneAtATime = new ReentrantLock(true);
    private final Queue<Step<?>> waiting = new ConcurrentLinkedQueue<>();

    /** What takes the connection for itself meanwhile takes this. */
    ReentrantLock lock() {
        return oneAtATime;
    }

    /**
     * Does some work in a transaction, maybe on another thread that was before this one.
     *
     * @throws JdbiException when the database failed
     */
    <T> T take(Jdbi jdbi, Function<Handle, T> work) {
        Step<T> step = new Step<>(work);
        waiting.add(step);
        oneAtATime.lock();
        try {
            while (!step.ended) {
                commitTogether(jdbi, nextFew());
            }
        } finally {
            oneAtATime.unlock();
        }
        return step.outcome();
    }

    private List<Step<?>> nextFew() {
        List<Step<?>> steps = new ArrayList<>();
        while (steps.size() < AT_ONCE && !waiting.isEmpty()) {
            steps.add(waiting.remove());
        }
        return steps;
    }

    private static void commitTogether(Jdbi jdbi, List<Step<?>> steps) {
        try (Handle handle = jdbi.open()) {
            handle.execute("begin immediate");
            commitOrRollBack(handle, steps);
            steps.forEach(Step::end);
        } catch (RuntimeException | Error e) {
            steps.forEach(step -> step.fail(e));
        }
    }

    private static void commitOrRollBack(Handle handle, List<Step<?>> steps) {
        try {
            steps.forEach(step -> step.take(handle));
            handle.execute("commit");
        } catch (RuntimeException | Error e) {
            rollBack(handle, e);
            throw e;
        }
    }

    private static void rollBack(Handle handle, Throwable because) {
        try {
            handle.execute("rollback");
        } catch (JdbiException e) {
            // SQLite has rolled back by itself already after some errors, a full disk among them.
            because.addSuppressed(e);
        }
    }

    /** One caller's work. Its fields are written and read under the lock only, the outcome after it. */
    private static final class Step<T> {
        private final Function<Handle, T> work;
        private T done;
        private Throwable thrown;
        private boolean ended;

        Step(Function<Handle, T> work) {
            this.work = work;
        }

        void take(Handle handle) {
            handle.execute("savepoint step");
            try {
                done = work.apply(handle);
            } catch (RuntimeException | Error e) {
                thrown = e;
                handle.execute("rollback to step");
            }
            handle.execute("release step");
        }

        void end() {
            ended = true;
        }

        void fail(Throwable why) {
            thrown = thrown == null ? why : thrown;
            ended = true;
        }

        T outcome() {
            if (thrown instanceof Error error) {
                throw error;
            }
            if (thrown != null) {
                throw (RuntimeException) thrown;
            }
            return done;
        }
    }
}
