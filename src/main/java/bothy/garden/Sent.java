package bothy.garden;

/**
 * A reply that was sent.
 *
 * @param number its number in the outbox
 * @param channelMessage the channel's id of it
 */
public record Sent(long number, String channelMessage) {}
