package bothy.diary.sql;

import bothy.garden.Incoming;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;

/** What the channels received, each once. */
final class Inbox {
    private static final String SELECT =
            "select i.channel, i.id, i.grower, i.chat, i.at_ms, i.body from inbox i where ";
    /** Several processes keep the order of a chat by taking up its first letter only. */
    private static final String FIRST_OF_CHAT = "i.channel = ? and i.handled_ms is null and not exists "
            + "(select 1 from inbox e where e.channel = i.channel and e.chat = i.chat and e.handled_ms is null "
            + "and e.number < i.number)";

    private final Engine engine;
    private final Hold hold;

    Inbox(Engine engine, Hold hold) {
        this.engine = engine;
        this.hold = hold;
    }

    int receive(List<Incoming> incoming) {
        return incoming.isEmpty() ? 0 : engine.inTransaction(sql -> insert(sql, incoming));
    }

    private static int insert(Sql sql, List<Incoming> incoming) {
        return sql.runEach(
                "insert into inbox (channel, id, grower, chat, at_ms, body) values (?, ?, ?, ?, ?, ?) "
                        + "on conflict do nothing",
                incoming.stream()
                        .map(one -> new Object[] {
                            one.channel(),
                            one.id(),
                            one.grower(),
                            one.chat(),
                            one.at().toEpochMilli(),
                            one.body()
                        })
                        .toList());
    }

    List<Incoming> unhandled(String channel, int atMost) {
        if (!engine.shared()) {
            return engine.reading(sql -> sql.list(
                    SELECT + "i.channel = ? and i.handled_ms is null order by i.number limit ?",
                    Inbox::letter,
                    channel,
                    atMost));
        }
        return engine.inTransaction(sql -> {
            List<String> chats =
                    firstLetters(sql, channel).stream().map(Incoming::chat).toList();
            if (chats.isEmpty()) {
                return List.of();
            }
            List<Incoming> taken = ofChats(sql, channel, chats, atMost);
            List<String> ids = taken.stream().map(Incoming::id).toList();
            hold.take(sql, "inbox", "id", sql.texts(ids), channel);
            return taken;
        });
    }

    private List<Incoming> firstLetters(Sql sql, String channel) {
        return sql.list(
                SELECT + FIRST_OF_CHAT + hold.free("i") + " order by i.number limit ? " + Hold.lock("i"),
                Inbox::letter,
                channel,
                hold.me(),
                Hold.AT_ONCE);
    }

    /** With the first letter of a chat the others are taken as well. */
    private static List<Incoming> ofChats(Sql sql, String channel, List<String> chats, int atMost) {
        return sql.list(
                SELECT + "i.channel = ? and i.handled_ms is null and i.chat = any (?) order by i.number limit ?",
                Inbox::letter,
                channel,
                sql.texts(chats),
                atMost);
    }

    private static Incoming letter(ResultSet row) throws SQLException {
        return new Incoming(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                Instant.ofEpochMilli(row.getLong(5)),
                row.getString(6));
    }

    void clear(Instant before) {
        engine.inTransaction(sql -> sql.run("delete from inbox where handled_ms < ?", before.toEpochMilli()));
    }

    void setAside(String channel, String id, Instant at) {
        engine.inTransaction(sql -> sql.run(
                "update inbox set handled_ms = ? where channel = ? and id = ? and handled_ms is null",
                at.toEpochMilli(),
                channel,
                id));
    }
}
