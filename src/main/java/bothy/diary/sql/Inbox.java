package bothy.diary.sql;

import bothy.garden.Incoming;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;

/** What the channels received, each once. */
final class Inbox {
    private static final String SELECT =
            "select i.channel, i.id, i.grower, i.chat, i.at_ms, i.body from inbox i where ";
    /** Several processes keep the order of a chat by taking up its first letter only. */
    private static final String FIRST_OF_CHAT = "i.channel = :channel and i.handled_ms is null and not exists "
            + "(select 1 from inbox e where e.channel = i.channel and e.chat = i.chat and e.handled_ms is null "
            + "and e.number < i.number)";

    private final Engine engine;
    private final Hold hold;

    Inbox(Engine engine, Hold hold) {
        this.engine = engine;
        this.hold = hold;
    }

    int receive(List<Incoming> incoming) {
        return incoming.isEmpty() ? 0 : engine.inTransaction(handle -> insert(handle, incoming));
    }

    private static int insert(Handle handle, List<Incoming> incoming) {
        PreparedBatch batch = handle.prepareBatch("insert into inbox (channel, id, grower, chat, at_ms, body) "
                + "values (:channel, :id, :grower, :chat, :at, :body) on conflict do nothing");
        for (Incoming one : incoming) {
            batch.bind("channel", one.channel())
                    .bind("id", one.id())
                    .bind("grower", one.grower())
                    .bind("chat", one.chat())
                    .bind("at", one.at().toEpochMilli())
                    .bind("body", one.body())
                    .add();
        }
        return Arrays.stream(batch.execute()).sum();
    }

    List<Incoming> unhandled(String channel, int atMost) {
        if (!engine.shared()) {
            String all = SELECT + "i.channel = :channel and i.handled_ms is null order by i.number limit :most";
            return engine.reading(handle -> letters(handle.createQuery(all), channel, atMost));
        }
        return engine.inTransaction(handle -> {
            List<String> chats =
                    firstLetters(handle, channel).stream().map(Incoming::chat).toList();
            List<Incoming> taken = chats.isEmpty() ? List.of() : ofChats(handle, channel, chats, atMost);
            hold.take(
                    handle,
                    "inbox",
                    "channel = :channel and id in (<ids>)",
                    "ids",
                    taken.stream().map(Incoming::id).toList(),
                    channel);
            return taken;
        });
    }

    private List<Incoming> firstLetters(Handle handle, String channel) {
        return letters(
                handle.createQuery(SELECT + FIRST_OF_CHAT + hold.free("i") + " order by i.number limit :most "
                                + Hold.lock("i"))
                        .bind("me", hold.me()),
                channel,
                Hold.AT_ONCE);
    }

    /** With the first letter of a chat the others are taken as well. */
    private static List<Incoming> ofChats(Handle handle, String channel, List<String> chats, int atMost) {
        return letters(
                handle.createQuery(SELECT + "i.channel = :channel and i.handled_ms is null and i.chat in (<chats>) "
                                + "order by i.number limit :most")
                        .bindList("chats", chats),
                channel,
                atMost);
    }

    private static List<Incoming> letters(Query query, String channel, int atMost) {
        return query.bind("channel", channel)
                .bind("most", atMost)
                .map((row, context) -> new Incoming(
                        row.getString("channel"),
                        row.getString("id"),
                        row.getString("grower"),
                        row.getString("chat"),
                        Instant.ofEpochMilli(row.getLong("at_ms")),
                        row.getString("body")))
                .list();
    }

    void clear(Instant before) {
        engine.inTransaction(handle -> handle.createUpdate("delete from inbox where handled_ms < :before")
                .bind("before", before.toEpochMilli())
                .execute());
    }

    void setAside(String channel, String id, Instant at) {
        engine.inTransaction(handle -> handle.createUpdate(
                        "update inbox set handled_ms = :at where channel = :channel and id = :id and handled_ms is null")
                .bind("at", at.toEpochMilli())
                .bind("channel", channel)
                .bind("id", id)
                .execute());
    }
}
