package bothy.garden;

import java.time.Instant;
import java.time.ZoneId;

/**
 * What a channel hands over: one message of one grower.
 *
 * @param id the channel's id of the message; the same id handed over again is not recorded again
 * @param grower the channel's key of the grower ("telegram:4711")
 * @param at when it was sent
 * @param zone the grower's time zone as the channel knows it; a zone told to the diary outranks it
 * @param text what was written; never {@code null}, empty for a bare photo or location
 * @param latitude degrees of a shared location, {@code null} when none was shared
 * @param longitude degrees of a shared location, {@code null} when none was shared
 * @param photo whether a photo came along
 * @param pressed label of the tapped button, {@code null} when the grower wrote
 * @param edits id of the earlier message that this one is the edited form of, {@code null} for a new message
 */
public record Message(
        String id,
        String grower,
        Instant at,
        ZoneId zone,
        String text,
        Double latitude,
        Double longitude,
        boolean photo,
        String pressed,
        String edits) {

    /** A plain text message. */
    public static Message text(String id, String grower, Instant at, ZoneId zone, String text) {
        return new Message(id, grower, at, zone, text, null, null, false, null, null);
    }
}
