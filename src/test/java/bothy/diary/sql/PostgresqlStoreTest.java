package bothy.diary.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.diary.StoreFailure;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The store's promises on a real PostgreSQL, and what its failures sound like. */
class PostgresqlStoreTest extends StoreSuite {
    private static EmbeddedPostgres server;
    private static int databases;

    @BeforeAll
    static void start() throws Exception {
        server = EmbeddedPostgres.builder().start();
    }

    @AfterAll
    static void stop() throws Exception {
        server.close();
    }

    @Override
    String freshAddress() {
        execute("create database diary" + ++databases);
        return sameAddress();
    }

    @Override
    String sameAddress() {
        return address("diary" + databases);
    }

    private static String address(String database) {
        return server.getJdbcUrl("postgres", database);
    }

    private static void execute(String statement) {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement sql = connection.createStatement()) {
            sql.execute(statement);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void a_missing_database_is_named() {
        assertThatThrownBy(() -> Shelf.open(address("allotment")))
                .isInstanceOf(StoreFailure.class)
                .hasMessage("The PostgreSQL server has no database of the name in postgresql://localhost:"
                        + server.getPort() + "/allotment. Make it with createdb, or correct the name in --db.");
    }

    @Test
    void a_silent_server_is_named_without_the_password() {
        assertThatThrownBy(() -> Shelf.open("jdbc:postgresql://localhost:1/diary?user=bothy&password=turnip"))
                .isInstanceOf(StoreFailure.class)
                .hasMessage(
                        "No PostgreSQL answers at postgresql://localhost:1/diary. Look whether the server runs, and whether host "
                                + "and port in --db are right.");
    }

    @Test
    void a_wrong_password_is_named_and_not_shown() throws Exception {
        execute("create user gardener password 'radish'");
        Path rules = Path.of(ask("show hba_file"));
        Files.writeString(rules, "host all gardener all scram-sha-256\n" + Files.readString(rules));
        execute("select pg_reload_conf()");
        String place = "postgresql://localhost:" + server.getPort() + "/diary" + databases;

        assertThatThrownBy(() -> Shelf.open("jdbc:" + place + "?user=gardener&password=turnip"))
                .isInstanceOf(StoreFailure.class)
                .hasMessage(
                        "PostgreSQL at " + place + " does not let this user in. Correct user and password in --db.");
    }

    @Test
    void a_user_who_may_not_write_is_told_so() {
        execute("create user visitor");

        assertThatThrownBy(() -> Shelf.open(server.getJdbcUrl("visitor", "diary" + databases)))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("does not let this user write");
    }

    private static String ask(String question) throws SQLException {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement sql = connection.createStatement();
                ResultSet answer = sql.executeQuery(question)) {
            answer.next();
            return answer.getString(1);
        }
    }

    @Test
    void a_connection_cut_in_the_middle_fails_with_a_sentence_and_the_next_write_works() {
        assertThatThrownBy(() -> store.write(SCHOOL, page -> {
                    page.append("m1", NOON, List.of(sown("bean", 1)));
                    execute("select pg_terminate_backend(pid) from pg_stat_activity where datname = 'diary" + databases
                            + "'");
                    return page.append("m1", NOON, List.of(sown("bean", 2)));
                }))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("No PostgreSQL answers at");

        store.write(SCHOOL, page -> page.append("m2", NOON, List.of(sown("bean", 3))));
        assertThat(lines(SCHOOL)).hasSize(1);
    }
}
