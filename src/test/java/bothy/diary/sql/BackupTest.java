package bothy.diary.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.diary.Store;
import bothy.diary.StoreFailure;
import bothy.garden.Event;
import bothy.garden.What;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A diary is copied while it is written to, and the copy is put in its place. */
class BackupTest {
    private static final Instant NOON = Instant.parse("2027-05-01T12:00:00Z");

    @TempDir
    Path folder;

    private static void write(Store store, int number) {
        Event event = Event.of(What.WATERED, "bean-1", "bean", LocalDate.of(2027, 5, 1));
        store.write("telegram:4711", page -> page.append("m" + number, NOON, List.of(event)));
    }

    @Test
    void a_copy_taken_under_writing_holds_the_first_lines_without_a_gap_and_can_be_restored() throws Exception {
        Path diary = folder.resolve("diary.db");
        Path copy = folder.resolve("copy.db");
        AtomicBoolean goOn = new AtomicBoolean(true);
        AtomicInteger written = new AtomicInteger();
        int before;
        try (Store store = Shelf.open(diary.toString())) {
            Thread writer = new Thread(() -> {
                while (goOn.get()) {
                    write(store, written.incrementAndGet());
                }
            });
            writer.start();
            while (written.get() < 200) {
                Thread.sleep(5);
            }
            before = written.get() - 1;
            Shelf.backUp(diary.toString(), copy);
            int during = written.get();
            goOn.set(false);
            writer.join();
            assertThat(store.lines("telegram:4711")).as("writing went on").hasSizeGreaterThanOrEqualTo(during);
        }

        for (String ending : List.of("", "-wal", "-shm")) {
            Files.deleteIfExists(folder.resolve("diary.db" + ending));
        }
        Files.copy(copy, diary);
        try (Store restored = Shelf.open(diary.toString())) {
            var lines = restored.lines("telegram:4711");
            assertThat(lines).hasSizeGreaterThanOrEqualTo(before);
            assertThat(lines.get(lines.size() - 1).number()).isEqualTo(lines.size());
            write(restored, 1_000_000);
            assertThat(restored.lines("telegram:4711")).hasSize(lines.size() + 1);
        }
    }

    @Test
    void a_file_that_is_there_is_not_overwritten() throws Exception {
        Path diary = folder.resolve("diary.db");
        Shelf.open(diary.toString()).close();
        Path taken = Files.writeString(folder.resolve("copy.db"), "last week's");

        assertThatThrownBy(() -> Shelf.backUp(diary.toString(), taken))
                .isInstanceOf(StoreFailure.class)
                .hasMessage(taken + " is there already and was left as it is. Name a new file for the backup.");
        assertThat(taken).hasContent("last week's");
    }

    @Test
    void a_diary_that_is_not_there_is_named() {
        Path diary = folder.resolve("none.db");

        assertThatThrownBy(() -> Shelf.backUp(diary.toString(), folder.resolve("copy.db")))
                .isInstanceOf(StoreFailure.class)
                .hasMessage("There is no diary " + diary + ". Name its file with --db.");
        assertThat(diary).doesNotExist();
    }
}
