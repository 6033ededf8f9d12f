package bothy.diary.sql;

import bothy.diary.Page;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Work on growers' pages. Where the database lets many write at the same time, the work is done inside its transaction. Where it has one
 * writer, the work is done on a draft beside it, so that growers do not wait for each other's reckoning, and only the result goes through
 * the writer; when the page has changed meanwhile (another process did it), the work is done once more, inside.
 */
final class Pages {
    private static final int LOCKS = 256;

    private final Engine engine;

    /** Growers of this process who share one wait for each other; it is all that keeps drafts from being done in vain. */
    private final ReentrantLock[] locks =
            Stream.generate(ReentrantLock::new).limit(LOCKS).toArray(ReentrantLock[]::new);

    Pages(Engine engine) {
        this.engine = engine;
    }

    <T> T write(String grower, Function<Page, T> work) {
        return engine.shared() ? inside(grower, work) : drafted(grower, work);
    }

    private <T> T inside(String grower, Function<Page, T> work) {
        return engine.inTransaction(sql -> {
            OpenPage page = OpenPage.of(grower, sql, engine);
            T done = work.apply(page);
            page.refuseIfFailed();
            return done;
        });
    }

    private record Drafted<T>(Draft draft, T done) {}

    private <T> T drafted(String grower, Function<Page, T> work) {
        ReentrantLock lock = locks[Math.floorMod(grower.hashCode(), LOCKS)];
        lock.lock();
        try {
            Drafted<T> drafted = engine.reading(sql -> {
                Draft draft = Draft.of(grower, sql, engine);
                T done = work.apply(draft);
                draft.refuseIfFailed();
                return new Drafted<>(draft, done);
            });
            boolean kept = drafted.draft().isEmpty()
                    || engine.<Boolean>inTransaction(sql -> drafted.draft().written(sql, engine));
            return kept ? drafted.done() : inside(grower, work);
        } finally {
            lock.unlock();
        }
    }
}
