package bothy.diary.sql;

import bothy.diary.StoreFailure;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;

/**
 * The tables' version. Tables that are up to date already are recognised by one query, without starting Flyway, which costs about a
 * fifth of a second.
 */
final class Schema {
    /** The newest migration; a test holds it against the files. */
    static final int NEWEST = 1;

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
        List<Applied> applied = engine.inTransaction(this::applied);
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

    private List<Applied> applied(Handle handle) {
        if (!hasHistory(handle)) {
            return List.of();
        }
        return handle.createQuery("select version, success from " + HISTORY + " where version is not null")
                .map((row, context) -> new Applied(row.getString(1), row.getBoolean(2)))
                .list();
    }

    private boolean hasHistory(Handle handle) {
        Optional<String> found = handle.createQuery(engine.tableNamed())
                .bind("name", HISTORY)
                .mapTo(String.class)
                .findFirst();
        return found.isPresent();
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
