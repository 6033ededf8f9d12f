package bothy.diary.sql;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.function.Function;
import javax.sql.DataSource;

/**
 * Connections that read an SQLite file beside its one writer: with a write-ahead log neither keeps the other waiting. They are opened
 * when they are first needed and kept.
 */
final class Readers implements AutoCloseable {
    private final DataSource source;
    private final Deque<Reader> free = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;

    private record Reader(Connection connection, Sql sql) {}

    Readers(DataSource source) {
        this.source = source;
    }

    /**
     * Reads at one moment: what others write meanwhile is not seen.
     *
     * @throws Sql.Failed when the database failed
     */
    <T> T read(Function<Sql, T> work) throws SQLException {
        Reader reader = take();
        try {
            reader.sql().run("begin");
            try {
                return work.apply(reader.sql());
            } finally {
                reader.sql().run("rollback");
            }
        } finally {
            giveBack(reader);
        }
    }

    private Reader take() throws SQLException {
        Reader kept = free.poll();
        if (kept != null) {
            return kept;
        }
        Connection opened = source.getConnection();
        return new Reader(opened, new Sql(opened));
    }

    private void giveBack(Reader reader) {
        free.push(reader);
        if (closed) {
            close();
        }
    }

    @Override
    public void close() {
        closed = true;
        for (Reader reader = free.poll(); reader != null; reader = free.poll()) {
            try {
                reader.connection().close();
            } catch (SQLException e) {
                // It only read.
            }
        }
    }
}
