package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.channel.terminal.TerminalChat;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.diary.StoreFailure;
import bothy.diary.sql.Shelf;
import bothy.garden.Event;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is sent: a clear sentence comes back, and nothing told before is lost. */
class BadInputTest {
    private static final Instant NOW = Instant.parse("2027-05-20T18:00:00Z");
    private static final String FULL = "The disk that holds the diary is full.";
    private static Knowledge knowledge;

    @TempDir
    Path folder;

    @BeforeAll
    static void make_ready() {
        knowledge = Workshop.knowledge(RulesFolder.at(Path.of("rules")), null, WeatherSource.none());
    }

    static List<String> nonsense() {
        byte[] bytes = new byte[4096];
        new Random(20270520).nextBytes(bytes);
        return List.of(
                "",
                " \t ",
                "😀🍅🥕",
                "<script>alert('peas')</script>",
                "<b>sowed</b> &amp; &lt;watered&gt;",
                "'; DROP TABLE entry; --",
                "\u0000\u0001\u0007\u001b[31m",
                "\u202egnp.saep",
                new String(bytes, StandardCharsets.ISO_8859_1),
                "peas ".repeat(20_000),
                "x".repeat(100_000),
                "/",
                "/nosuchcommand",
                "{crop} [part] {sheet}",
                "99999999999999999999999",
                "-1 -1 -1",
                "sowed 6 6 6 6 6 6 6 6 6 6 6",
                "%s %n %d",
                "¿Cuándo siembro los tomates?",
                "我昨天种了六个黄瓜");
    }

    @ParameterizedTest
    @MethodSource("nonsense")
    void a_sentence_comes_back_and_the_diary_stays(String text) {
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            Conversation conversation = new Conversation(store, knowledge);
            conversation.handle(Message.text("1", "g", NOW, ZoneOffset.UTC, "sowed 6 cucumbers in modules"), null);

            String reply = conversation
                    .handle(Message.text("2", "g", NOW, ZoneOffset.UTC, text), null)
                    .orElseThrow()
                    .reply()
                    .text();

            assertThat(reply)
                    .isNotBlank()
                    .doesNotContain("Exception")
                    .doesNotContain("\tat ")
                    .doesNotContain("null");
            assertThat(cucumbers(store)).isEqualTo(6);
        }
    }

    private static Integer cucumbers(Store store) {
        return store.write(
                "g", page -> Replay.garden(page.lines(), LocalDate.of(2027, 5, 20), ZoneOffset.UTC).events().stream()
                        .filter(event -> "cucumber".equals(event.crop()))
                        .map(Event::count)
                        .findFirst()
                        .orElseThrow());
    }

    static List<String> impossible() {
        return List.of(
                "sowed 6 peas on 31 April",
                "sowed 6 peas on 30 February",
                "sowed 6 peas on 2031-01-01",
                "sowed 5000000000 peas",
                "sowed -5 peas outdoors",
                "sowed 0 peas",
                "harvested 3 kg of peas tomorrow");
    }

    @ParameterizedTest
    @MethodSource("impossible")
    void what_cannot_be_is_asked_back_and_not_written(String text) {
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            var outcome = new Conversation(store, knowledge)
                    .handle(Message.text("1", "g", NOW, ZoneOffset.UTC, text), null)
                    .orElseThrow();

            assertThat(outcome.written()).isEmpty();
            assertThat(outcome.reply().text()).contains("?");
        }
    }

    @Test
    void lines_piped_in_are_answered_in_order_and_a_full_disk_is_a_sentence() throws IOException {
        Conversation failing = new Conversation(fullDisk(), knowledge);
        ByteArrayOutputStream out = new ByteArrayOutputStream();

        new TerminalChat(
                        failing,
                        () -> NOW,
                        ZoneOffset.UTC,
                        folder.resolve("history"),
                        new ByteArrayInputStream("sowed 6 peas\n".getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        Complaints::sentence)
                .run();

        assertThat(out.toString(StandardCharsets.UTF_8)).contains(FULL).doesNotContain("\tat ");
    }

    @Test
    void a_file_that_is_no_diary_is_left_as_it_is() throws IOException {
        Path file = folder.resolve("letter.db");
        Files.writeString(file, "Dear seedsman, ...");

        int exit = Bothy.run("--db", file.toString());

        assertThat(exit).isEqualTo(1);
        assertThat(Files.readString(file)).isEqualTo("Dear seedsman, ...");
    }

    /** A store whose disk is full: every call fails. */
    private static Store fullDisk() {
        return (Store) Proxy.newProxyInstance(
                BadInputTest.class.getClassLoader(), new Class<?>[] {Store.class}, (proxy, method, arguments) -> {
                    throw new StoreFailure(StoreFailure.Reason.FULL, FULL, null);
                });
    }
}
