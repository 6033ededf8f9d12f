package bothy.garden;

import java.time.Instant;

/**
 * One line of the diary.
 *
 * @param number the line's number, rising within one grower's diary; the number never changes and is never used again
 * @param message id of the message that told it
 * @param at when the message came in
 * @param entry what it tells
 */
public record Logged(long number, String message, Instant at, Entry entry) {}
