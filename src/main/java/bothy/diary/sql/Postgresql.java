package bothy.diary.sql;

import bothy.diary.StoreFailure;
import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.sql.DataSource;

/** PostgreSQL by its JDBC address: a pool of connections; writes of one grower wait for each other at the grower's row. */
final class Postgresql implements Engine {
    private static final int CONNECTIONS = 8;
    private static final long WAIT_MILLIS = 10_000;

    /** A server may be set to acknowledge a commit before it is on the disk; what is acknowledged to a channel must not be lost by it. */
    private static final String DURABLE =
            "select set_config('synchronous_commit', 'on', false) where current_setting('synchronous_commit') = 'off'";

    private final String place;
    private final HikariDataSource pool;

    private Postgresql(String place, HikariDataSource pool) {
        this.place = place;
        this.pool = pool;
    }

    /** Connects once to learn what is wrong, if anything is; then opens the pool. */
    static Postgresql at(String address) {
        String place =
                Sentences.withoutPassword(address.substring("jdbc:".length()).replaceAll("\\?.*", ""));
        try {
            DriverManager.getConnection(address).close();
        } catch (SQLException e) {
            throw failure(place, e);
        }
        return new Postgresql(place, new HikariDataSource(settings(address)));
    }

    private static HikariConfig settings(String address) {
        // The pool tries out a connection before lending it, but by default not when it was used in the last half
        // second; a server
        // that was started anew would then fail one write for each idle connection.
        System.setProperty("com.zaxxer.hikari.aliveBypassWindowMs", "0");
        HikariConfig settings = new HikariConfig();
        settings.setJdbcUrl(address);
        settings.setPoolName("diary");
        settings.setMaximumPoolSize(CONNECTIONS);
        settings.setMinimumIdle(1);
        settings.setConnectionInitSql(DURABLE);
        settings.setConnectionTimeout(WAIT_MILLIS);
        return settings;
    }

    @Override
    public <T> T inTransaction(Function<Sql, T> work) {
        try (Connection connection = pool.getConnection();
                Sql sql = new Sql(connection)) {
            connection.setAutoCommit(false);
            return committed(connection, sql, work);
        } catch (SQLException | Sql.Failed e) {
            throw failure(e);
        }
    }

    private static <T> T committed(Connection connection, Sql sql, Function<Sql, T> work) throws SQLException {
        try {
            T done = work.apply(sql);
            connection.commit();
            return done;
        } catch (SQLException | RuntimeException | Error e) {
            rollBack(connection, e);
            throw e;
        }
    }

    private static void rollBack(Connection connection, Throwable because) {
        try {
            connection.rollback();
        } catch (SQLException e) {
            because.addSuppressed(e);
        }
    }

    @Override
    public <T> T reading(Function<Sql, T> work) {
        return inTransaction(work);
    }

    @Override
    public <T> T ask(Asked<T> asked) {
        try (Connection connection = pool.getConnection()) {
            return asked.of(connection);
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    @Override
    public StoreFailure failure(Throwable thrown) {
        return failure(place, thrown);
    }

    private static StoreFailure failure(String place, Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException fromServer && fromServer.getSQLState() != null) {
                return failure(place, fromServer.getSQLState(), fromServer);
            }
        }
        return Sentences.other(place, thrown);
    }

    /** States by Appendix A of the PostgreSQL manual; the first two characters are the class. */
    private static StoreFailure failure(String place, String state, SQLException thrown) {
        return switch (state) {
            case "3D000" -> Sentences.noDatabase(place, thrown); // invalid_catalog_name
            case "42501", "25006" ->
                Sentences.notAllowed(place, thrown); // insufficient_privilege, read_only_sql_transaction
            case "53100" -> Sentences.full(place, thrown); // disk_full
            case "55P03" -> Sentences.locked(place, thrown); // lock_not_available
            default -> failureOfClass(place, state.substring(0, 2), thrown);
        };
    }

    private static StoreFailure failureOfClass(String place, String stateClass, SQLException thrown) {
        return switch (stateClass) {
            case "08", "57" -> Sentences.noServer(place, thrown); // connection exception, operator intervention
            case "28" -> Sentences.notLetIn(place, thrown); // invalid authorization
            case "XX" -> Sentences.damaged(place, "the server reports an internal error", thrown);
            default -> Sentences.other(place, thrown);
        };
    }

    @Override
    public String place() {
        return place;
    }

    /** The server keeps and checks its own files. */
    @Override
    public Optional<String> lookThrough() {
        return Optional.empty();
    }

    @Override
    public boolean shared() {
        return true;
    }

    @Override
    public String tableNamed() {
        return "select table_name from information_schema.tables "
                + "where table_schema = current_schema() and table_name = ?";
    }

    @Override
    public DataSource dataSource() {
        return pool;
    }

    @Override
    public Map<String, String> placeholders() {
        return Map.of("rising_number", "bigint generated always as identity primary key");
    }

    @Override
    public void close() {
        pool.close();
    }
}
