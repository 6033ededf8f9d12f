package bothy.diary.sql;

import bothy.garden.Incoming;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** What the channels received, each once. */
final class Inbox {
    private final Engine engine;

    Inbox(Engine engine) {
        this.engine = engine;
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
        return engine.inTransaction(
                handle -> handle.createQuery("select channel, id, grower, chat, at_ms, body from inbox "
                                + "where channel = :channel and handled_ms is null order by number limit :most")
                        .bind("channel", channel)
                        .bind("most", atMost)
                        .map((row, context) -> new Incoming(
                                row.getString("channel"),
                                row.getString("id"),
                                row.getString("grower"),
                                row.getString("chat"),
                                Instant.ofEpochMilli(row.getLong("at_ms")),
                                row.getString("body")))
                        .list());
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
