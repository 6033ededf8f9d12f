package bothy.diary.sql;

import bothy.diary.StoreFailure;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.sql.DataSource;

/** What differs between the two databases. */
sealed interface Engine extends AutoCloseable permits Sqlite, Postgresql {

    /**
     * Does some work in one transaction that is durable when this returns. What the work throws undoes it and comes out as it was;
     * what the database throws comes out as {@link StoreFailure}.
     */
    <T> T inTransaction(Function<Sql, T> work);

    /** Reads in a transaction that keeps no writer waiting, and sees only what is durable. */
    <T> T reading(Function<Sql, T> work);

    /** Asks something of a bare connection, outside any transaction. */
    <T> T ask(Asked<T> asked);

    /** A question to a bare connection. */
    interface Asked<T> {
        T of(Connection connection) throws SQLException;
    }

    /** Says in a sentence what a failure of the database means. */
    StoreFailure failure(Throwable thrown);

    /** Where the diaries are, for sentences; without any password. */
    String place();

    /** Whether several processes work on the same diaries, all writing at the same time, so that each must hold what it takes up. */
    boolean shared();

    /** What is wrong inside, read through from end to end; empty when nothing is. */
    Optional<String> lookThrough();

    /** A query that finds the table called {@code ?}, or no row. */
    String tableNamed();

    /** Connections for the migrations. */
    DataSource dataSource();

    /** What the migrations' placeholders stand for. */
    Map<String, String> placeholders();

    @Override
    void close();
}
