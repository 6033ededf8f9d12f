package bothy.diary.sql;

import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.io.TempDir;

/** The store's promises on SQLite. */
class SqliteStoreTest extends StoreSuite {
    @TempDir
    Path folder;

    private Path file;

    @Override
    String freshAddress() {
        file = folder.resolve(UUID.randomUUID() + ".db");
        return file.toString();
    }

    @Override
    String sameAddress() {
        return "jdbc:sqlite:" + file;
    }
}
