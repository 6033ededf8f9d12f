package bothy.diary.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedCommitTest {
    @TempDir
    Path folder;

    private Connection connection;
    private SharedCommit commits;
    private final AtomicInteger begun = new AtomicInteger();
    private final List<CompletableFuture<Integer>> steps = new ArrayList<>();

    @BeforeEach
    void open() throws Exception {
        connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("kept.db"));
        Sql sql = new Sql(connection);
        sql.run("create table kept (number integer primary key)");
        commits = new SharedCommit(sql);
    }

    @AfterEach
    void close() throws Exception {
        commits.close();
        connection.close();
    }

    private void begin(Function<Sql, Integer> work) {
        begun.incrementAndGet();
        steps.add(CompletableFuture.supplyAsync(() -> commits.take(work), task -> new Thread(task).start()));
    }

    private static Function<Sql, Integer> keep(int number) {
        return sql -> sql.run("insert into kept (number) values (?)", number);
    }

    private static Function<Sql, Integer> keepAndThrow(int number) {
        return sql -> {
            keep(number).apply(sql);
            throw new IllegalStateException("no " + number);
        };
    }

    /** Whatever is begun meanwhile waits for the connection, so that it is taken together. */
    private void together(Runnable beginning) throws InterruptedException {
        commits.lock().lock();
        try {
            beginning.run();
            while (commits.waiting() < begun.get()) {
                Thread.sleep(1);
            }
        } finally {
            commits.lock().unlock();
        }
    }

    private List<Integer> kept() {
        return commits.take(sql -> sql.list("select number from kept order by number", row -> row.getInt(1)));
    }

    @Test
    void of_steps_taken_together_only_those_that_throw_are_left_out() throws Exception {
        together(() -> {
            begin(keep(1));
            begin(keepAndThrow(2));
            begin(keep(3));
            begin(keepAndThrow(4));
            begin(keep(5));
        });

        for (int whole : List.of(0, 2, 4)) {
            assertThat(steps.get(whole).get()).isEqualTo(1);
        }
        assertThatThrownBy(() -> steps.get(1).get())
                .isInstanceOf(ExecutionException.class)
                .hasRootCauseMessage("no 2");
        assertThatThrownBy(() -> steps.get(3).get()).hasRootCauseMessage("no 4");
        assertThat(kept()).containsExactly(1, 3, 5);
    }

    @Test
    void a_step_that_the_database_refuses_is_left_out_and_its_statement_works_again() throws Exception {
        together(() -> {
            begin(keep(1));
            begin(sql -> keep(7).apply(sql) + keep(7).apply(sql));
        });

        assertThat(steps.get(0).get()).isEqualTo(1);
        assertThatThrownBy(() -> steps.get(1).get()).hasCauseInstanceOf(Sql.Failed.class);
        assertThat(commits.take(keep(7))).isEqualTo(1);
        assertThat(kept()).containsExactly(1, 7);
    }

    @Test
    void one_that_throws_alone_leaves_nothing() {
        assertThatThrownBy(() -> commits.take(keepAndThrow(1))).hasMessage("no 1");
        assertThat(kept()).isEmpty();
    }

    @Test
    void nothing_is_taken_after_the_end() {
        commits.close();

        assertThatThrownBy(() -> commits.take(keep(1))).isInstanceOf(Sql.Failed.class);
    }
}
