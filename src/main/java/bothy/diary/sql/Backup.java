package bothy.diary.sql;

import bothy.diary.StoreFailure;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * A copy of an SQLite diary as it stands at one moment, taken beside a running program: SQLite writes the copy itself, in one read
 * transaction, so writers go on meanwhile. The copy is read through before it takes its name, so a file of that name is a whole one.
 */
final class Backup {
    private static final int BUSY_MILLIS = 30_000;

    private final Path diary;

    Backup(Path diary) {
        this.diary = diary;
    }

    void to(Path copy) {
        if (!Files.isRegularFile(diary)) {
            throw new StoreFailure(
                    StoreFailure.Reason.NOT_THERE, "There is no diary " + diary + ". Name its file with --db.", null);
        }
        if (Files.exists(copy)) {
            throw new StoreFailure(
                    StoreFailure.Reason.OTHER,
                    copy + " is there already and was left as it is. Name a new file for the backup.",
                    null);
        }
        Path unfinished = copy.resolveSibling(copy.getFileName() + ".unfinished");
        try {
            Files.deleteIfExists(unfinished);
            copyInto(unfinished);
            check(unfinished);
            flush(unfinished);
            Files.move(unfinished, copy, StandardCopyOption.ATOMIC_MOVE);
        } catch (SQLException | IOException e) {
            throw new StoreFailure(
                    StoreFailure.Reason.OTHER,
                    "No backup of " + diary + " was made: " + e.getMessage()
                            + ". The diary itself was left as it is; look whether there is room for " + copy + ".",
                    e);
        }
    }

    private void copyInto(Path file) throws SQLException {
        try (Connection connection = open(diary);
                PreparedStatement copying = connection.prepareStatement("vacuum into ?")) {
            copying.setString(1, file.toString());
            copying.execute();
        }
    }

    private static void check(Path file) throws SQLException {
        try (Connection connection = open(file);
                Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery("pragma integrity_check(1)")) {
            if (!found.getString(1).equals("ok")) {
                throw new SQLException("the copy is damaged (" + found.getString(1) + ")");
            }
        }
    }

    private static Connection open(Path file) throws SQLException {
        SQLiteConfig settings = new SQLiteConfig();
        settings.setBusyTimeout(BUSY_MILLIS);
        SQLiteDataSource source = new SQLiteDataSource(settings);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        return source.getConnection();
    }

    private static void flush(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }
}
