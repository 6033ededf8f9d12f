package bothy.diary;

import java.time.Instant;
import java.util.List;
import java.util.function.Function;

/**
 * Where diaries are kept. What one call of {@link #write} does becomes durable as a whole or not at all. Implementations are safe
 * for use by several threads; writes of one grower happen one after the other.
 */
public interface Store extends AutoCloseable {

    /**
     * Does some work on one grower's page in one transaction.
     *
     * @param grower the channel's key of the grower
     * @return what the work returned, after it became durable
     * @throws StoreFailure when it could not be made durable; then nothing of it was
     */
    <T> T write(String grower, Function<Page, T> work);

    /** Keys of all growers with a diary, in order. */
    List<String> growers();

    /**
     * Takes in what a channel received, before the channel is told that it arrived.
     *
     * @return false when it was there already
     */
    boolean receive(Incoming incoming);

    /** What was received and not yet handled, in the order of receipt. */
    List<Incoming> unhandled(String channel, int atMost);

    /** Replies to send now: in order for each chat, none whose chat has an earlier one waiting, none that is put off beyond {@code now}. */
    List<Outgoing> toSend(String channel, Instant now, int atMost);

    /** A reply was sent; the channel's id of it is kept so that buttons can be found again. */
    void sent(long number, String channelMessage);

    /** A reply could not be sent now. */
    void putOff(long number, Instant until, String why);

    /** A reply will never be sent (the chat is gone). */
    void giveUp(long number, String why);

    @Override
    void close();
}
