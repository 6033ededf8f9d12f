package bothy.diary.sql;

import bothy.diary.Store;
import bothy.diary.StoreFailure;
import java.nio.file.Path;

/** Where the diaries stand: takes one down by its address. */
public final class Shelf {
    private static final int ATTEMPTS = 20;
    private static final long PAUSE_MILLIS = 100;
    private static final String SQLITE = "jdbc:sqlite:";
    private static final String POSTGRESQL = "jdbc:postgresql:";

    private Shelf() {}

    /**
     * Opens the diaries at an address, makes the tables when there are none and brings older ones up to date.
     *
     * @param address a file, {@code jdbc:sqlite:FILE} or {@code jdbc:postgresql://HOST/DATABASE?user=…}
     * @throws StoreFailure when they cannot be opened; its message says what is wrong, where and what to do
     */
    public static Store open(String address) {
        if (address.startsWith(POSTGRESQL)) {
            return upToDate(Postgresql.at(address));
        }
        String file = address.startsWith(SQLITE) ? address.substring(SQLITE.length()) : address;
        if (file.isBlank() || file.startsWith("jdbc:")) {
            throw new StoreFailure(
                    StoreFailure.Reason.NOT_THERE,
                    "\"" + Sentences.withoutPassword(address)
                            + "\" is no place for a diary: give a file, jdbc:sqlite:FILE or "
                            + "jdbc:postgresql://HOST/DATABASE.",
                    null);
        }
        return sqlite(Path.of(file));
    }

    /**
     * Copies an SQLite diary into a new file, also while a program writes to it.
     *
     * @throws StoreFailure when no whole copy could be made; then there is none
     */
    public static void backUp(String address, Path copy) {
        if (address.startsWith(POSTGRESQL)) {
            throw new StoreFailure(
                    StoreFailure.Reason.OTHER,
                    "A PostgreSQL diary is copied with the server's own means: pg_dump, or continuous archiving.",
                    null);
        }
        new Backup(Path.of(address.startsWith(SQLITE) ? address.substring(SQLITE.length()) : address)).to(copy);
    }

    /**
     * SQLite waits for a lock, but not for those of a log that another program is just making, recovering or clearing away
     * (sqlite.org/wal.html, "sometimes queries return SQLITE_BUSY in WAL mode"): what fails at once is tried again.
     */
    private static Store sqlite(Path file) {
        for (int attempt = 1; ; attempt++) {
            long begun = System.nanoTime();
            try {
                return upToDate(Sqlite.in(file));
            } catch (StoreFailure e) {
                boolean waited = System.nanoTime() - begun >= Sqlite.BUSY_MILLIS * 1_000_000L;
                if (e.reason() != StoreFailure.Reason.LOCKED || waited || attempt == ATTEMPTS) {
                    throw e;
                }
                pause();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static Store upToDate(Engine engine) {
        try {
            new Schema(engine).bringUpToDate();
            return new Diaries(engine);
        } catch (RuntimeException e) {
            engine.close();
            throw e;
        }
    }
}
