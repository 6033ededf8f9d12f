package bothy.diary.sql;

import java.util.List;
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
        engine.inTransaction(sql -> {
            if (count(sql, before) == 0) {
                return null; // moved already, or never there
            }
            OpenPage.of(after, sql, engine);
            if (lines(sql, after) > 0) {
                LOG.warn("Chat {} has a diary of its own already, so that of chat {} stays where it is.", to, from);
                return null;
            }
            movePage(sql, before, after);
            for (String box : BOXES) {
                sql.run("update " + box + " set grower = ?, chat = ? where grower = ?", after, to, before);
            }
            return null;
        });
    }

    private static long count(Sql sql, String grower) {
        return number(sql, "select count(*) from grower where grower = ?", grower);
    }

    private static long lines(Sql sql, String grower) {
        return number(sql, "select last_line from grower where grower = ?", grower);
    }

    private static long number(Sql sql, String query, String grower) {
        return sql.first(query, row -> row.getLong(1), grower).orElseThrow();
    }

    private void movePage(Sql sql, String before, String after) {
        OpenPage.of(before, sql, engine); // waits for who writes to it
        for (String table : OF_A_GROWER) {
            sql.run("delete from " + table + " where grower = ?", after);
            sql.run("update " + table + " set grower = ? where grower = ?", after, before);
        }
        for (String column : List.of("last_line", "state", "look_ms")) {
            sql.run(
                    "update grower set " + column + " = (select old." + column
                            + " from grower old where old.grower = ?) where grower = ?",
                    before,
                    after);
        }
        sql.run("delete from grower where grower = ?", before);
    }
}
