package bothy.diary.sql;

import bothy.garden.Outgoing;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The replies on their way out, in order for each chat. */
final class Outbox {
    private static final String COLUMNS = "o.number, o.chat, o.reply, o.at_ms, o.tries";
    private final Engine engine;

    Outbox(Engine engine) {
        this.engine = engine;
    }

    List<Outgoing> toSend(String channel, Instant now, int atMost) {
        return engine.inTransaction(handle -> handle.createQuery("select " + COLUMNS + " from outbox o "
                        + "where o.channel = :channel and o.outcome is null and o.not_before_ms <= :now "
                        + "and not exists (select 1 from outbox e where e.channel = o.channel and e.chat = o.chat "
                        + "and e.outcome is null and e.number < o.number) order by o.number limit :most")
                .bind("channel", channel)
                .bind("now", now.toEpochMilli())
                .bind("most", atMost)
                .map((row, context) -> outgoing(row))
                .list());
    }

    Optional<Outgoing> lastWithButtons(String channel, String chat) {
        return engine.inTransaction(handle -> handle.createQuery(
                        "select " + COLUMNS
                                + " from outbox o where o.channel = :channel and o.chat = :chat and o.buttons > 0 order by o.number desc limit 1")
                .bind("channel", channel)
                .bind("chat", chat)
                .map((row, context) -> outgoing(row))
                .findFirst());
    }

    private Outgoing outgoing(ResultSet row) throws SQLException {
        long number = row.getLong("number");
        try {
            return new Outgoing(
                    number,
                    row.getString("chat"),
                    Json.reply(row.getString("reply")),
                    Instant.ofEpochMilli(row.getLong("at_ms")),
                    row.getInt("tries"));
        } catch (JsonProcessingException e) {
            throw Sentences.unreadableLine(engine.place(), "Reply " + number + " of the outbox", e);
        }
    }

    void sent(long number, String channelMessage) {
        engine.inTransaction(handle -> handle.createUpdate(
                        "update outbox set outcome = 'sent', channel_message = :message where number = :number")
                .bind("message", channelMessage)
                .bind("number", number)
                .execute());
    }

    void putOff(long number, Instant until, String why) {
        engine.inTransaction(handle -> handle.createUpdate(
                        "update outbox set tries = tries + 1, not_before_ms = :until, why = :why where number = :number")
                .bind("until", until.toEpochMilli())
                .bind("why", why)
                .bind("number", number)
                .execute());
    }

    void giveUp(long number, String why) {
        engine.inTransaction(handle -> handle.createUpdate(
                        "update outbox set outcome = 'given-up', why = :why where number = :number")
                .bind("why", why)
                .bind("number", number)
                .execute());
    }
}
