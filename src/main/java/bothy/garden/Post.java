package bothy.garden;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What a channel leaves for the grower's diary and fetches from it: the letters in and the letters out. What a call did is durable
 * when it returns; it throws when it could not be made durable, with a sentence that says why. Safe for use by several threads.
 */
public interface Post {

    /**
     * Takes in what a channel received, before the channel is told that it arrived; all or nothing.
     *
     * @return how many of them were not there already
     */
    int receive(List<Incoming> incoming);

    /** What was received and not yet handled, in the order of receipt. */
    List<Incoming> unhandled(String channel, int atMost);

    /** Something received needs no handling any more. */
    void setAside(String channel, String id, Instant at);

    /** Replies to send now: the first that waits in each chat, oldest first, none that is put off beyond {@code now}. */
    List<Outgoing> toSend(String channel, Instant now, int atMost);

    /** The newest reply with buttons written to a chat, sent or not; the only one whose buttons still count. */
    Optional<Outgoing> lastWithButtons(String channel, String chat);

    /** Replies were sent; the channel's ids of them are kept. */
    void sent(List<Sent> replies);

    /** A reply could not be sent now. It waits until the moment given, or less where the clock is set back in the meantime. */
    void putOff(long number, Instant now, Instant until, String why);

    /**
     * A chat has another address from now on: its diary and its post go with it. Nothing happens when there is none, or when the new
     * address has a diary of its own already.
     */
    void moved(String channel, String from, String to);

    /** A reply will never be sent (the chat is gone). */
    void giveUp(long number, String why);
}
