package bothy.diary.sql;

import static bothy.diary.sql.StoreSuite.NOON;
import static bothy.diary.sql.StoreSuite.SCHOOL;
import static bothy.diary.sql.StoreSuite.sown;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bothy.diary.Page;
import bothy.diary.Store;
import bothy.diary.StoreFailure;
import bothy.diary.StoreFailure.Reason;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Logged;
import bothy.garden.What;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be wrong with a diary file, and what the grower is told. */
class SqliteTroubleTest {
    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("diary.db");
    }

    private static StoreFailure failureOf(Path file) {
        return failureOf(file.toString());
    }

    private static StoreFailure failureOf(String address) {
        return catchThrowableOfType(
                StoreFailure.class, () -> Shelf.open(address).close());
    }

    private static List<Logged> tell(Store store, String message, Entry entry) {
        return store.write(SCHOOL, page -> page.append(message, NOON, List.of(entry)));
    }

    private static List<Logged> lines(Store store) {
        return store.write(SCHOOL, Page::lines);
    }

    private void writeDiary(int lines) {
        try (Store store = Shelf.open(file().toString())) {
            store.write(SCHOOL, page -> {
                for (int line = 0; line < lines; line++) {
                    page.append("m" + line, NOON, List.of(sown("bean", line)));
                }
                return null;
            });
        }
    }

    private void execute(String statement) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file())) {
            connection.createStatement().execute(statement);
        }
    }

    @Test
    void a_missing_folder_is_named() {
        StoreFailure failure = failureOf(folder.resolve("allotment/diary.db"));

        assertThat(failure.reason()).isEqualTo(Reason.NOT_THERE);
        assertThat(failure)
                .hasMessage("The folder " + folder + "/allotment for the diary " + folder
                        + "/allotment/diary.db is not there. Make it, or name another file with --db.");
    }

    @Test
    void a_folder_given_as_the_file_is_refused() {
        assertThat(failureOf(folder))
                .hasMessage(folder + " is a folder. Name a file in it with --db, such as " + folder + "/diary.db.");
    }

    @Test
    void an_address_of_another_database_is_refused_without_its_password() {
        assertThat(failureOf("jdbc:mysql://host/diary?user=bothy&password=turnip"))
                .hasMessage("\"jdbc:mysql://host/diary?user=bothy&password=…\" is no place for a diary: give a file, "
                        + "jdbc:sqlite:FILE or jdbc:postgresql://HOST/DATABASE.");
    }

    @Test
    void a_file_that_is_no_database_is_left_as_it_is() throws IOException {
        String letter = "Dear diary, today we sowed the climbing beans.\n".repeat(50);
        Files.writeString(file(), letter);

        StoreFailure failure = failureOf(file());

        assertThat(failure.reason()).isEqualTo(Reason.CORRUPT);
        assertThat(failure)
                .hasMessage(file()
                        + " is not a database, so it cannot be a diary. It was left as it is. Name another file with "
                        + "--db, or put a backup in its place.");
        assertThat(file()).hasContent(letter);
    }

    @Test
    void a_database_of_another_program_is_left_as_it_is() throws SQLException {
        execute("create table recipes (name text)");

        assertThat(failureOf(file()))
                .hasMessage(file()
                        + " holds tables of another program. They were left as they are. Name another file or an empty "
                        + "database with --db.");
    }

    @Test
    void a_garbled_file_is_noticed_at_the_start() throws IOException {
        writeDiary(2_000);
        try (RandomAccessFile bytes = new RandomAccessFile(file().toFile(), "rw")) {
            bytes.seek(bytes.length() / 2);
            bytes.write("slugs ate this page ".repeat(500).getBytes(StandardCharsets.UTF_8));
        }

        StoreFailure failure = failureOf(file());

        assertThat(failure.reason()).isEqualTo(Reason.CORRUPT);
        assertThat(failure).hasMessageStartingWith("The diary " + file() + " is damaged (");
    }

    @Test
    void a_file_cut_short_is_noticed_at_the_start() throws IOException {
        writeDiary(2_000);
        try (RandomAccessFile bytes = new RandomAccessFile(file().toFile(), "rw")) {
            bytes.setLength(bytes.length() / 2 / 4096 * 4096);
        }

        assertThat(failureOf(file()).reason()).isEqualTo(Reason.CORRUPT);
    }

    @Test
    void a_diary_of_a_newer_version_is_left_as_it_is() throws SQLException {
        writeDiary(1);
        execute(
                "insert into flyway_schema_history select 900, '900', 'moon phases', type, script, checksum, installed_by, "
                        + "installed_on, execution_time, success from flyway_schema_history where version = '1'");

        StoreFailure failure = failureOf(file());

        assertThat(failure.reason()).isEqualTo(Reason.NEWER);
        assertThat(failure)
                .hasMessage("The diary " + file()
                        + " was written by a newer version of Bothy (its tables are version 900, this one "
                        + "knows up to " + Schema.NEWEST
                        + "). It was left as it is. Start the newer version, or name another file "
                        + "with --db.");
    }

    @Test
    void a_line_of_a_sort_not_known_here_names_the_line() throws SQLException {
        writeDiary(2);
        execute("update diary_line set entry = '{\"kind\":\"moon-phase\"}' where number = 2");

        try (Store store = Shelf.open(file().toString())) {
            assertThatThrownBy(() -> lines(store))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageStartingWith("Line 2 of " + SCHOOL + " in " + file() + " cannot be read");
        }
    }

    @Test
    void a_field_not_known_here_is_passed_over() throws SQLException {
        writeDiary(1);
        execute("update diary_line set entry = '{\"kind\":\"event\",\"what\":\"planted-out\",\"crop\":\"bean\","
                + "\"on\":\"2027-05-20\",\"moon\":\"waxing\",\"helpers\":[{\"name\":\"Ida\"}]}'");

        try (Store store = Shelf.open(file().toString())) {
            assertThat(lines(store))
                    .extracting(Logged::entry)
                    .containsExactly(Event.of(What.PLANTED_OUT, null, "bean", java.time.LocalDate.of(2027, 5, 20)));
        }
    }

    @Test
    void a_diary_locked_by_another_program_says_so_and_works_when_it_is_free() throws SQLException {
        try (Store store = Shelf.open(file().toString());
                Connection other = DriverManager.getConnection("jdbc:sqlite:" + file())) {
            other.createStatement().execute("begin immediate");

            StoreFailure failure = catchThrowableOfType(StoreFailure.class, () -> tell(store, "m1", sown("bean", 1)));
            assertThat(failure.reason()).isEqualTo(Reason.LOCKED);
            assertThat(failure)
                    .hasMessage("The diary " + file()
                            + " is locked by another program. Close what else has it open (a second "
                            + "Bothy, a database browser, a backup) and try again.");

            other.createStatement().execute("rollback");
            tell(store, "m1", sown("bean", 1));
            assertThat(lines(store)).hasSize(1);
        }
    }

    @Test
    void two_programs_may_write_to_one_diary() {
        try (Store one = Shelf.open(file().toString());
                Store other = Shelf.open(file().toString())) {
            tell(one, "m1", sown("bean", 1));
            tell(other, "m2", sown("bean", 2));
            tell(one, "m3", sown("bean", 3));

            assertThat(lines(other)).extracting(Logged::number).containsExactly(1L, 2L, 3L);
        }
    }

    @Test
    void a_read_only_disk_is_named() throws IOException {
        Path mounted = Files.createDirectory(folder.resolve("card"));
        try (SmallDisk disk = SmallDisk.at(mounted)) {
            Path diary = mounted.resolve("diary.db");
            Shelf.open(diary.toString()).close();
            disk.makeReadOnly();

            StoreFailure failure = failureOf(diary);

            assertThat(failure.reason()).isEqualTo(Reason.READ_ONLY);
            assertThat(failure)
                    .hasMessage("The diary " + diary
                            + " cannot be written: the file or its folder is read-only. Give the program's "
                            + "user leave to write the file and its folder, or name another file with --db.");
        }
    }

    @Test
    @SuppressWarnings("try") // the disk is only there to be filled
    void a_full_disk_keeps_what_was_told_before_and_goes_on_when_there_is_room() throws IOException {
        Path mounted = Files.createDirectory(folder.resolve("card"));
        try (SmallDisk disk = SmallDisk.at(mounted)) {
            Path ballast = Files.write(mounted.resolve("photos"), new byte[512 * 1024]);
            Entry longNote = Event.of(What.NOTE, null, null, null).withDetail("mulch ".repeat(2_000));
            try (Store store = Shelf.open(mounted.resolve("diary.db").toString())) {
                int told = 0;
                StoreFailure failure = null;
                while (failure == null && told < 1_000) {
                    try {
                        tell(store, "m" + told, longNote);
                        told++;
                    } catch (StoreFailure e) {
                        failure = e;
                    }
                }

                assertThat(failure.reason()).isEqualTo(Reason.FULL);
                assertThat(failure)
                        .hasMessageContaining("is full. What was told before is safe, the last was not written.");
                assertThat(lines(store)).hasSize(told);
                Files.delete(ballast);
                tell(store, "m-last", longNote);
                assertThat(lines(store)).hasSize(told + 1);
            }
            assertThat(failureOf(mounted.resolve("diary.db"))).isNull();
        }
    }

    @Test
    @SuppressWarnings("try") // the disk is only there to be filled
    void a_full_disk_at_the_first_start_is_named() throws IOException {
        Path mounted = Files.createDirectory(folder.resolve("card"));
        try (SmallDisk disk = SmallDisk.at(mounted)) {
            byte[] photo = new byte[4096];
            assertThatThrownBy(() -> {
                        for (int number = 0; number < 1_000; number++) {
                            Files.write(mounted.resolve("photo" + number), photo);
                        }
                    })
                    .isInstanceOf(IOException.class);

            assertThat(failureOf(mounted.resolve("diary.db")).reason()).isEqualTo(Reason.FULL);
        }
    }
}
