package bothy.diary.sql;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tables' version. */
class SchemaTest {
    @TempDir
    Path folder;

    @Test
    void the_newest_version_known_is_that_of_the_newest_migration() throws IOException, URISyntaxException {
        Path migrations =
                Path.of(Schema.class.getResource("/" + Schema.MIGRATIONS).toURI());
        try (Stream<Path> files = Files.list(migrations)) {
            int newest = files.map(file -> file.getFileName().toString())
                    .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                    .max()
                    .orElseThrow();

            assertThat(Schema.NEWEST).isEqualTo(newest);
        }
    }

    @Test
    void a_diary_is_brought_up_to_date_once() throws Exception {
        Path file = folder.resolve("diary.db");
        Shelf.open(file.toString()).close();
        Shelf.open(file.toString()).close();

        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var rows = connection.createStatement().executeQuery("select count(*) from flyway_schema_history")) {
            assertThat(rows.getInt(1)).isEqualTo(Schema.NEWEST);
        }
    }

    @Test
    void programs_that_start_in_the_same_moment_all_get_the_new_diary_open() throws Exception {
        String address = folder.resolve("diary.db").toString();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        Callable<Boolean> start = () -> {
            Shelf.open(address).close();
            return true;
        };

        for (Future<Boolean> started : threads.invokeAll(List.of(start, start, start, start))) {
            assertThat(started.get()).isTrue();
        }
        threads.shutdown();
    }
}
