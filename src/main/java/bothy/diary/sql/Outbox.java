package bothy.diary.sql;

import bothy.garden.Outgoing;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.statement.Query;

/** The replies on their way out, in order for each chat. */
final class Outbox {
    /** Clocks of workers differ by less than this; one that was set back by more is another clock. */
    private static final Duration SET_BACK = Duration.ofMinutes(1);

    private static final String COLUMNS = "o.number, o.chat, o.reply, o.at_ms, o.tries";
    private static final String FIRST_OF_CHAT = "select " + COLUMNS + " from outbox o "
            + "where o.channel = :channel and o.outcome is null "
            + "and (o.not_before_ms <= :now or o.put_off_ms > :setBack) "
            + "and not exists (select 1 from outbox e where e.channel = o.channel and e.chat = o.chat "
            + "and e.outcome is null and e.number < o.number)";

    private final Engine engine;
    private final Hold hold;

    Outbox(Engine engine, Hold hold) {
        this.engine = engine;
        this.hold = hold;
    }

    List<Outgoing> toSend(String channel, Instant now, int atMost) {
        if (!engine.shared()) {
            return engine.reading(handle -> outgoing(
                    handle.createQuery(FIRST_OF_CHAT + " order by o.number limit :most"), channel, now, atMost));
        }
        return engine.inTransaction(handle -> {
            List<Outgoing> taken = outgoing(
                    handle.createQuery(
                                    FIRST_OF_CHAT + hold.free("o") + " order by o.number limit :most " + Hold.lock("o"))
                            .bind("me", hold.me()),
                    channel,
                    now,
                    Math.min(atMost, Hold.AT_ONCE));
            hold.take(
                    handle,
                    "outbox",
                    "channel = :channel and number in (<numbers>)",
                    "numbers",
                    taken.stream().map(Outgoing::number).toList(),
                    channel);
            return taken;
        });
    }

    private List<Outgoing> outgoing(Query query, String channel, Instant now, int atMost) {
        return query.bind("channel", channel)
                .bind("now", now.toEpochMilli())
                .bind("setBack", now.plus(SET_BACK).toEpochMilli())
                .bind("most", atMost)
                .map((row, context) -> outgoing(row))
                .list();
    }

    void clear(Instant before) {
        engine.inTransaction(
                handle -> handle.createUpdate("delete from outbox where outcome is not null and at_ms < :before")
                        .bind("before", before.toEpochMilli())
                        .execute());
    }

    Optional<Outgoing> lastWithButtons(String channel, String chat) {
        return engine.reading(handle -> handle.createQuery(
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

    void putOff(long number, Instant now, Instant until, String why) {
        engine.inTransaction(handle -> handle.createUpdate(
                        "update outbox set tries = tries + 1, put_off_ms = :now, not_before_ms = :until, why = :why "
                                + "where number = :number")
                .bind("now", now.toEpochMilli())
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
