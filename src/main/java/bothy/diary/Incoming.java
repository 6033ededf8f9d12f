package bothy.diary;

import java.time.Instant;

/**
 * A message as a channel received it, not yet read.
 *
 * @param channel the channel ("telegram")
 * @param id the channel's id of the update; unique within the channel
 * @param chat the channel's address of the grower
 * @param at when it was received
 * @param body the update as the channel got it (JSON)
 */
public record Incoming(String channel, String id, String chat, Instant at, String body) {}
