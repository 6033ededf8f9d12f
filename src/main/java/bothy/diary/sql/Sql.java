package bothy.diary.sql;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * SQL over one connection, for one thread at a time. A statement is prepared when it is first used and kept until this is closed: SQLite
 * prepares one in more time than it takes to run it, and a layer that reads names of parameters took as much again.
 */
final class Sql implements AutoCloseable {
    private static final String CONNECTION_LOST = "08006";

    private final Connection connection;
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    Sql(Connection connection) {
        this.connection = connection;
    }

    /** What becomes of a row. */
    interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    /** The database failed; the cause says how. */
    static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1;

        Failed(SQLException cause) {
            super(cause.getMessage(), cause);
        }
    }

    private interface Step<T> {
        T of(PreparedStatement statement) throws SQLException;
    }

    /** Runs what gives no rows: a change, or a word to the transaction. Returns how many rows were changed. */
    int run(String statement, Object... values) {
        return with(statement, ready -> {
            bind(ready, values);
            return ready.executeUpdate();
        });
    }

    /** Runs a change once for each list of values. Returns how many rows were changed. */
    int runEach(String statement, List<Object[]> values) {
        return values.isEmpty()
                ? 0
                : with(statement, ready -> {
                    for (Object[] one : values) {
                        bind(ready, one);
                        ready.addBatch();
                    }
                    return executed(ready);
                });
    }

    private static int executed(PreparedStatement batch) throws SQLException {
        try {
            return Arrays.stream(batch.executeBatch()).sum();
        } catch (AssertionError e) {
            // So PostgreSQL's driver ends a batch whose connection is cut in the middle.
            throw new SQLException("The connection was lost.", CONNECTION_LOST, e);
        }
    }

    <T> List<T> list(String query, Row<T> row, Object... values) {
        return with(query, ready -> {
            bind(ready, values);
            List<T> found = new ArrayList<>();
            try (ResultSet rows = ready.executeQuery()) {
                while (rows.next()) {
                    found.add(row.of(rows));
                }
            }
            return found;
        });
    }

    /** What the first row gives; empty when there is none. */
    <T> Optional<T> first(String query, Row<T> row, Object... values) {
        return list(query, row, values).stream().findFirst();
    }

    /** Texts to look for with {@code = any (?)}, where the database has arrays. */
    Object texts(List<String> texts) {
        return array("text", texts);
    }

    /** Numbers to look for with {@code = any (?)}, where the database has arrays. */
    Object numbers(List<Long> numbers) {
        return array("bigint", numbers);
    }

    private Object array(String of, List<?> values) {
        try {
            return connection.createArrayOf(of, values.toArray());
        } catch (SQLException e) {
            throw new Failed(e);
        }
    }

    private static void bind(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
    }

    private <T> T with(String statement, Step<T> step) {
        try {
            return step.of(ready(statement));
        } catch (SQLException e) {
            forget(statement);
            throw new Failed(e);
        }
    }

    private PreparedStatement ready(String statement) throws SQLException {
        PreparedStatement kept = prepared.get(statement);
        if (kept != null) {
            return kept;
        }
        PreparedStatement made = connection.prepareStatement(statement);
        prepared.put(statement, made);
        return made;
    }

    /** One that failed may be of no more use, or keep something locked. */
    private void forget(String statement) {
        closeQuietly(prepared.remove(statement));
    }

    private static void closeQuietly(PreparedStatement statement) {
        try {
            if (statement != null) {
                statement.close();
            }
        } catch (SQLException e) {
            // Its failure was told when it ran.
        }
    }

    /** Gives back what was prepared; the connection is closed by who opened it. */
    @Override
    public void close() {
        prepared.values().forEach(Sql::closeQuietly);
        prepared.clear();
    }
}
