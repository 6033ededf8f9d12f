package bothy.diary;

import bothy.garden.Post;
import java.util.List;
import java.util.function.Function;

/**
 * Where diaries and the channels' post are kept. What one call of {@link #write} does becomes durable as a whole or not at all.
 * Implementations are safe for use by several threads; writes of one grower happen one after the other. Instants are kept to the
 * millisecond.
 */
public interface Store extends Post, AutoCloseable {

    /**
     * Does some work on one grower's page in one transaction. When the work throws, nothing of it is kept and the exception comes
     * out as it was. The work must not call the store again, and it may be done on another thread, so it must not wait for a lock that
     * the caller holds.
     *
     * @param grower the channel's key of the grower
     * @return what the work returned, after it became durable
     * @throws StoreFailure when it could not be made durable; then nothing of it was
     */
    <T> T write(String grower, Function<Page, T> work);

    /** Keys of all growers with a diary, in order. */
    List<String> growers();

    @Override
    void close();
}
