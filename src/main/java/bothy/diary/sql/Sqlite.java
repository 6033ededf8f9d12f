package bothy.diary.sql;

import bothy.diary.StoreFailure;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.sql.DataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteException;

/**
 * SQLite in a file: write-ahead log, every commit flushed to disk, one connection for writing kept open and used by one thread at
 * a time, a few more for reading. Opening a connection for each write was measured at a quarter of the rate.
 */
final class Sqlite implements Engine {
    /** A file up to this size is looked through at each start; SQLite reads roughly half a gigabyte in a second. */
    private static final long LOOKED_THROUGH_BYTES = 32L << 20;

    static final int BUSY_MILLIS = 5_000;

    private final SharedCommit commits;
    private final String place;
    private final DataSource dataSource;
    private final Connection connection;
    private final Readers readers;

    private Sqlite(String place, DataSource dataSource, Connection connection) {
        this.place = place;
        this.dataSource = dataSource;
        this.connection = connection;
        this.readers = new Readers(dataSource);
        this.commits = new SharedCommit(new Sql(connection));
    }

    /** Opens or makes the file. */
    static Sqlite in(Path file) {
        String place = file.toString();
        refuseImpossible(file, place);
        SQLiteDataSource dataSource = new SQLiteDataSource(settings());
        dataSource.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        Connection connection = null;
        try {
            connection = dataSource.getConnection();
            Sqlite opened = new Sqlite(place, dataSource, connection);
            opened.lookThrough(file);
            return opened;
        } catch (SQLException | RuntimeException e) {
            closeQuietly(connection);
            throw e instanceof StoreFailure failure ? failure : failure(place, e);
        }
    }

    private static void refuseImpossible(Path file, String place) {
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file)) {
            throw Sentences.folderInstead(place);
        }
        if (folder != null && !Files.isDirectory(folder)) {
            throw Sentences.folderMissing(place, folder.toString());
        }
        // The write-ahead log is a second file beside the first, so the folder must be writable too.
        if (Files.exists(file) && !Files.isWritable(file) || folder != null && !Files.isWritable(folder)) {
            throw Sentences.readOnly(place, null);
        }
    }

    private static SQLiteConfig settings() {
        SQLiteConfig settings = new SQLiteConfig();
        settings.setBusyTimeout(BUSY_MILLIS);
        settings.setJournalMode(SQLiteConfig.JournalMode.WAL);
        settings.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        settings.enforceForeignKeys(true);
        settings.setGetGeneratedKeys(false); // else each insert is followed by a query for its key
        return settings;
    }

    private void lookThrough(Path file) {
        if (file.toFile().length() <= LOOKED_THROUGH_BYTES) {
            String found = ask(connection -> oneText(connection, "pragma quick_check(1)"));
            if (!found.equals("ok")) {
                throw Sentences.damaged(
                        place, found.lines().reduce((first, last) -> last).orElse(found), null);
            }
        }
    }

    private static String oneText(Connection connection, String question) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet answer = statement.executeQuery(question)) {
            return answer.getString(1);
        }
    }

    @Override
    public <T> T ask(Asked<T> asked) {
        commits.lock().lock();
        try {
            return asked.of(connection);
        } catch (SQLException e) {
            throw failure(e);
        } finally {
            commits.lock().unlock();
        }
    }

    @Override
    public <T> T inTransaction(Function<Sql, T> work) {
        try {
            return commits.take(work);
        } catch (Sql.Failed e) {
            throw failure(e);
        }
    }

    @Override
    public <T> T reading(Function<Sql, T> work) {
        try {
            return readers.read(work);
        } catch (SQLException | Sql.Failed e) {
            throw failure(e);
        }
    }

    @Override
    public StoreFailure failure(Throwable thrown) {
        return failure(place, thrown);
    }

    private static StoreFailure failure(String place, Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException fromSqlite) {
                return failure(place, fromSqlite.getResultCode().code, fromSqlite);
            }
        }
        return Sentences.other(place, thrown);
    }

    /** The lowest byte of a result code is its family (sqlite.org/rescode.html). */
    private static StoreFailure failure(String place, int code, SQLiteException thrown) {
        int fullSharedMemory = 4874; // SQLITE_IOERR_SHMSIZE: the log's index could not be made longer
        int noWrite = 778; // SQLITE_IOERR_WRITE
        if (code == fullSharedMemory || code == noWrite) {
            return Sentences.full(place, thrown);
        }
        return switch (code & 0xff) {
            case 8 -> Sentences.readOnly(place, thrown); // SQLITE_READONLY
            case 5, 6 -> Sentences.locked(place, thrown); // SQLITE_BUSY, SQLITE_LOCKED
            case 11 -> Sentences.damaged(place, "the file breaks off or is garbled inside", thrown); // SQLITE_CORRUPT
            case 13 -> Sentences.full(place, thrown); // SQLITE_FULL
            case 14 -> Sentences.cannotOpen(place, thrown); // SQLITE_CANTOPEN
            case 26 -> Sentences.notADiary(place, thrown); // SQLITE_NOTADB
            default -> Sentences.other(place, thrown);
        };
    }

    @Override
    public String place() {
        return place;
    }

    /** On a connection of its own, which reads beside the writer. */
    @Override
    public Optional<String> lookThrough() {
        try (Connection reader = dataSource.getConnection()) {
            String found = oneText(reader, "pragma integrity_check(1)");
            return found.equals("ok")
                    ? Optional.empty()
                    : Optional.of(found.lines().reduce((first, last) -> last).orElse(found));
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    /** One process has the file to itself: what two would take up twice is not held apart. */
    @Override
    public boolean shared() {
        return false;
    }

    @Override
    public String tableNamed() {
        return "select name from sqlite_master where name = ?";
    }

    @Override
    public DataSource dataSource() {
        return dataSource;
    }

    @Override
    public Map<String, String> placeholders() {
        return Map.of("rising_number", "integer primary key autoincrement");
    }

    @Override
    public void close() {
        commits.close();
        commits.lock().lock();
        try {
            readers.close();
            closeQuietly(connection);
        } finally {
            commits.lock().unlock();
        }
    }

    private static void closeQuietly(Connection connection) {
        try {
            if (connection != null) {
                connection.close();
            }
        } catch (SQLException e) {
            // All that was acknowledged is in the log already; the next start takes it in.
        }
    }
}
