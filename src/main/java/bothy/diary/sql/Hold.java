package bothy.diary.sql;

import java.util.List;
import java.util.UUID;
import org.jdbi.v3.core.Handle;

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

    /** A condition, beginning with "and": nobody else has the row. */
    String free(String alias) {
        return " and (" + alias + ".held_by is null or " + alias + ".held_by = :me or " + alias + ".held_until_ms <= "
                + NOW + ")";
    }

    /** Lets go of everything, at the end of a process. */
    void release(Handle handle) {
        for (String table : List.of("inbox", "outbox")) {
            handle.createUpdate("update " + table + " set held_by = null, held_until_ms = 0 where held_by = :me and "
                            + waits(table))
                    .bind("me", me)
                    .execute();
        }
    }

    private static String waits(String table) {
        return table.equals("inbox") ? "handled_ms is null" : "outcome is null";
    }

    /** Writes who has the rows, where that is not written yet or soon over. */
    void take(Handle handle, String table, String which, String list, List<?> keys, String channel) {
        if (keys.isEmpty()) {
            return;
        }
        handle.createUpdate("update " + table + " set held_by = :me, held_until_ms = " + NOW + " + " + MILLIS
                        + " where " + which + " and (held_by is distinct from :me or held_until_ms < " + NOW + " + "
                        + MILLIS / 2 + ")")
                .bind("me", me)
                .bind("channel", channel)
                .bindList(list, keys)
                .execute();
    }
}
