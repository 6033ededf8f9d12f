package bothy.diary.sql;

import java.util.List;
import java.util.UUID;

/**
 * How one of several processes on a database takes up work: it locks the rows, passing over those that another is locking, and writes
 * into them who has them and until when. Whoever dies holding some leaves them to the others after that time. Times are the database's,
 * so that the clocks of the processes need not agree.
 */
final class Hold {
    /** A held row is renewed at every look, about each second; a minute outlasts a slow answer of the channel's service. */
    private static final long MILLIS = 60_000;

    /** How much one process takes up at once, so that the others find something too. */
    static final int AT_ONCE = 64;

    private static final String NOW = "(extract(epoch from clock_timestamp()) * 1000)::bigint";

    private final String me = UUID.randomUUID().toString();

    /** What a select ends with so that it locks the rows that it finds and passes over those locked by others. */
    static String lock(String alias) {
        return "for update of " + alias + " skip locked";
    }

    String me() {
        return me;
    }

    /** A condition, beginning with "and": nobody but {@link #me}, the value to give for its "?", has the row. */
    String free(String alias) {
        return " and (" + alias + ".held_by is null or " + alias + ".held_by = ? or " + alias + ".held_until_ms <= "
                + NOW + ")";
    }

    /** Lets go of everything, at the end of a process. */
    void release(Sql sql) {
        for (String table : List.of("inbox", "outbox")) {
            sql.run(
                    "update " + table + " set held_by = null, held_until_ms = 0 where held_by = ? and " + waits(table),
                    me);
        }
    }

    private static String waits(String table) {
        return table.equals("inbox") ? "handled_ms is null" : "outcome is null";
    }

    /** Writes who has the rows, where that is not written yet or soon over. */
    void take(Sql sql, String table, String which, Object keys, String channel) {
        sql.run(
                "update " + table + " set held_by = ?, held_until_ms = " + NOW + " + " + MILLIS
                        + " where channel = ? and " + which
                        + " = any (?) and (held_by is distinct from ? or held_until_ms < "
                        + NOW + " + " + MILLIS / 2 + ")",
                me,
                channel,
                keys,
                me);
    }
}
