package bothy.diary;

import bothy.garden.Logged;
import bothy.garden.Post;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where diaries and the channels' post are kept. What one call of {@link #write} does becomes durable as a whole or not at all.
 * Implementations are safe for use by several threads; writes of one grower happen one after the other. Instants are kept to the
 * millisecond.
 */
public interface Store extends Post, AutoCloseable {

    /**
     * Does some work on one grower's page in one transaction. When the work throws, nothing of it is kept and the exception comes
     * out as it was. The work must not call the store again. It may be done on another thread, so it must not wait for a lock that the
     * caller holds; and it may be done twice, when another process wrote to the page meanwhile, so it must change nothing but the page.
     *
     * @param grower the channel's key of the grower
     * @return what the work returned, after it became durable
     * @throws StoreFailure when it could not be made durable; then nothing of it was
     */
    <T> T write(String grower, Function<Page, T> work);

    /** The lines of one grower's diary, in order of number, as they are now; keeps nobody waiting. */
    List<Logged> lines(String grower);

    /**
     * Takes up growers whose garden is to be looked at, longest due first. Each is set to be looked at again at {@code again}, so that
     * one whose look is broken off is not forgotten, and of several processes one takes it up.
     */
    List<String> takeDue(Instant now, Instant again, int atMost);

    /** Takes every look that is set for later at this moment: the clock that they were set by was wrong. */
    void bringForward(Instant now);

    /** When to look at a garden next; empty for not at all. */
    Optional<Instant> nextLook(String grower);

    /**
     * Removes letters that were handled, replies that were sent or given up, and marks of messages, all from before a moment. Diaries are
     * never removed by age.
     */
    void clearPost(Instant before);

    /** How much waits. */
    Waiting waiting(Instant now);

    /** What is wrong inside the store, read through from end to end; empty when nothing is. May take minutes; writers go on meanwhile. */
    Optional<String> lookThrough();

    /**
     * How much waits.
     *
     * @param letters received and not handled
     * @param replies to be sent
     * @param looks gardens whose look is due
     * @param growers all growers known
     */
    record Waiting(long letters, long replies, long looks, long growers) {}

    /** Keys of all growers with a diary, in order. */
    List<String> growers();

    @Override
    void close();
}
