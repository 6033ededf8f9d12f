package bothy.garden;

import java.time.Instant;

/**
 * A reply that waits to be sent.
 *
 * @param number its number in the outbox, rising; never used again
 * @param chat the channel's address of the grower
 * @param reply what to send
 * @param at when it was written
 * @param tries how often sending it was tried in vain
 */
public record Outgoing(long number, String chat, Reply reply, Instant at, int tries) {}
