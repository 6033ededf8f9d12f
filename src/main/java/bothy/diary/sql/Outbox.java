package bothy.diary.sql;

import bothy.garden.Outgoing;
import bothy.garden.Sent;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The replies on their way out, in order for each chat. */
final class Outbox {
    /** Clocks of workers differ by less than this; one that was set back by more is another clock. */
    private static final Duration SET_BACK = Duration.ofMinutes(1);

    private static final String COLUMNS = "o.number, o.chat, o.reply, o.at_ms, o.tries";
    private static final String FIRST_OF_CHAT = "select " + COLUMNS + " from outbox o "
            + "where o.channel = ? and o.outcome is null "
            + "and (o.not_before_ms <= ? or o.put_off_ms > ?) "
            + "and not exists (select 1 from outbox e where e.channel = o.channel and e.chat = o.chat "
            + "and e.outcome is null and e.number < o.number)";

    private final Engine engine;
    private final Hold hold;

    Outbox(Engine engine, Hold hold) {
        this.engine = engine;
        this.hold = hold;
    }

    List<Outgoing> toSend(String channel, Instant now, int atMost) {
        long millis = now.toEpochMilli();
        long setBack = now.plus(SET_BACK).toEpochMilli();
        if (!engine.shared()) {
            return engine.reading(sql -> sql.list(
                    FIRST_OF_CHAT + " order by o.number limit ?", this::outgoing, channel, millis, setBack, atMost));
        }
        return engine.inTransaction(sql -> {
            List<Outgoing> taken = sql.list(
                    FIRST_OF_CHAT + hold.free("o") + " order by o.number limit ? " + Hold.lock("o"),
                    this::outgoing,
                    channel,
                    millis,
                    setBack,
                    hold.me(),
                    Math.min(atMost, Hold.AT_ONCE));
            if (!taken.isEmpty()) {
                List<Long> numbers = taken.stream().map(Outgoing::number).toList();
                hold.take(sql, "outbox", "number", sql.numbers(numbers), channel);
            }
            return taken;
        });
    }

    void clear(Instant before) {
        engine.inTransaction(
                sql -> sql.run("delete from outbox where outcome is not null and at_ms < ?", before.toEpochMilli()));
    }

    Optional<Outgoing> lastWithButtons(String channel, String chat) {
        return engine.reading(sql -> sql.first(
                "select " + COLUMNS
                        + " from outbox o where o.channel = ? and o.chat = ? and o.buttons > 0 order by o.number desc limit 1",
                this::outgoing,
                channel,
                chat));
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

    void sent(List<Sent> replies) {
        engine.inTransaction(sql -> sql.runEach(
                "update outbox set outcome = 'sent', channel_message = ? where number = ?",
                replies.stream()
                        .map(reply -> new Object[] {reply.channelMessage(), reply.number()})
                        .toList()));
    }

    void putOff(long number, Instant now, Instant until, String why) {
        engine.inTransaction(sql -> sql.run(
                "update outbox set tries = tries + 1, put_off_ms = ?, not_before_ms = ?, why = ? where number = ?",
                now.toEpochMilli(),
                until.toEpochMilli(),
                why,
                number));
    }

    void giveUp(long number, String why) {
        engine.inTransaction(
                sql -> sql.run("update outbox set outcome = 'given-up', why = ? where number = ?", why, number));
    }
}
