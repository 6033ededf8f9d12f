package bothy.garden;

import java.time.Instant;

/**
 * A message as a channel received it, not yet read.
 *
 * @param channel the channel ("telegram")
 * @param id the id of the {@link Message} that will be made of it; unique within the channel
 * @param grower the channel's key of the grower ("telegram:4711")
 * @param chat the channel's address of the grower
 * @param at when it was received
 * @param body the update as the channel got it (JSON)
 */
public record Incoming(String channel, String id, String grower, String chat, Instant at, String body) {}
