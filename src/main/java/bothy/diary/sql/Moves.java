package bothy.diary.sql;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Moves all that is kept of a chat to another address of the same channel. */
final class Moves {
    private static final Logger LOG = LoggerFactory.getLogger(Moves.class);
    private static final List<String> OF_A_GROWER = List.of("diary_line", "handled", "weather_day", "normals");
    private static final List<String> BOXES = List.of("inbox", "outbox");

    private final Engine engine;

    Moves(Engine engine) {
        this.engine = engine;
    }

    void move(String channel, String from, String to) {
        String before = channel + ":" + from;
        String after = channel + ":" + to;
        engine.inTransaction(handle -> {
            if (count(handle, before) == 0) {
                return null; // moved already, or never there
            }
            OpenPage.of(after, handle, engine);
            if (lines(handle, after) > 0) {
                LOG.warn("Chat {} has a diary of its own already, so that of chat {} stays where it is.", to, from);
                return null;
            }
            movePage(handle, before, after);
            for (String box : BOXES) {
                update(
                        handle,
                        "update " + box + " set grower = :after, chat = :chat where grower = :before",
                        before,
                        after,
                        to);
            }
            return null;
        });
    }

    private static long count(Handle handle, String grower) {
        return handle.createQuery("select count(*) from grower where grower = :grower")
                .bind("grower", grower)
                .mapTo(Long.class)
                .one();
    }

    private static long lines(Handle handle, String grower) {
        return handle.createQuery("select last_line from grower where grower = :grower")
                .bind("grower", grower)
                .mapTo(Long.class)
                .one();
    }

    private void movePage(Handle handle, String before, String after) {
        OpenPage.of(before, handle, engine); // waits for who writes to it
        for (String table : OF_A_GROWER) {
            update(handle, "delete from " + table + " where grower = :after", before, after, null);
            update(handle, "update " + table + " set grower = :after where grower = :before", before, after, null);
        }
        for (String column : List.of("last_line", "state", "look_ms")) {
            update(
                    handle,
                    "update grower set " + column + " = (select old." + column
                            + " from grower old where old.grower = :before) where grower = :after",
                    before,
                    after,
                    null);
        }
        update(handle, "delete from grower where grower = :before", before, after, null);
    }

    private static void update(Handle handle, String statement, String before, String after, String chat) {
        var update = handle.createUpdate(statement);
        if (statement.contains(":before")) {
            update.bind("before", before);
        }
        if (statement.contains(":after")) {
            update.bind("after", after);
        }
        if (chat != null) {
            update.bind("chat", chat);
        }
        update.execute();
    }
}
