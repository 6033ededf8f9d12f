package bothy.diary.sql;

import bothy.diary.StoreFailure;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/**
 * The tables' version. Tables that are up to date already are recognised by one query, without starting Flyway, which costs about a
 * fifth of a second.
 */
final class Schema {
    /** The newest migration; a test holds it against the files. */
    static final int NEWEST = 6;

    static final String MIGRATIONS = "bothy/diary/sql/migrations";
    private static final String HISTORY = "flyway_schema_history";
    private static final int ATTEMPTS = 5;
    private static final long PAUSE_MILLIS = 200;

    private final Engine engine;

    Schema(Engine engine) {
        this.engine = engine;
    }

    /** @throws StoreFailure also when the tables are newer than this program */
    void bringUpToDate() {
        for (int attempt = 1; !upToDate(); attempt++) {
            try {
                migrate();
            } catch (FlywayException e) {
                // Another process that started in the same moment may have made the tables meanwhile.
                if (attempt == ATTEMPTS || otherTables(e)) {
                    throw otherTables(e) ? Sentences.otherTables(engine.place(), e) : engine.failure(e);
                }
                pause();
            }
        }
    }

    private boolean upToDate() {
        List<Applied> applied = engine.ask(this::applied);
        for (Applied migration : applied) {
            if (!migration.success()) {
                throw Sentences.halfMigrated(engine.place(), migration.version());
            }
            if (number(migration.version()) > NEWEST) {
                throw Sentences.newer(engine.place(), migration.version(), String.valueOf(NEWEST));
            }
        }
        return applied.stream().anyMatch(migration -> number(migration.version()) == NEWEST);
    }

    private static int number(String version) {
        return Integer.parseInt(version.replaceAll("\\D.*", ""));
    }

    private record Applied(String version, boolean success) {}

    private List<Applied> applied(Connection connection) throws SQLException {
        List<Applied> applied = new ArrayList<>();
        if (hasHistory(connection)) {
            try (Statement statement = connection.createStatement();
                    ResultSet row = statement.executeQuery(
                            "select version, success from " + HISTORY + " where version is not null")) {
                while (row.next()) {
                    applied.add(new Applied(row.getString(1), row.getBoolean(2)));
                }
            }
        }
        return applied;
    }

    private boolean hasHistory(Connection connection) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(engine.tableNamed())) {
            statement.setString(1, HISTORY);
            try (ResultSet row = statement.executeQuery()) {
                return row.next();
            }
        }
    }

    private void migrate() {
        Flyway.configure(Schema.class.getClassLoader())
                .dataSource(engine.dataSource())
                .locations("classpath:" + MIGRATIONS)
                .placeholders(engine.placeholders())
                .loggers("slf4j")
                .load()
                .migrate();
    }

    private static boolean otherTables(FlywayException e) {
        return String.valueOf(e.getMessage()).contains("non-empty schema");
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
