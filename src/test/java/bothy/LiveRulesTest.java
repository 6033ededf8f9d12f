package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.conversation.Conversation;
import bothy.conversation.Door;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rules folder changes while the service runs. */
class LiveRulesTest {
    private static final Path WRITTEN = Path.of("rules");

    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();

    @BeforeEach
    void copy() throws IOException {
        try (Stream<Path> files = Files.walk(WRITTEN)) {
            files.forEach(file -> {
                try {
                    Path to = folder.resolve("rules").resolve(WRITTEN.relativize(file));
                    Files.createDirectories(to.getParent());
                    if (Files.isRegularFile(file)) {
                        Files.copy(file, to);
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    private static Knowledge make(RulesFolder rules) {
        return Workshop.knowledge(rules, null, WeatherSource.none());
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = folder.resolve("rules").resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(from);
        Files.writeString(path, text.replace(from, to));
    }

    @Test
    void a_changed_folder_is_taken_up_and_a_broken_one_is_not_and_the_operator_is_told_once() throws IOException {
        Path rules = folder.resolve("rules");
        Knowledge first = make(RulesFolder.at(rules));
        String greeting = first.replier().talk("help");
        String line = greeting.lines().findFirst().orElseThrow();
        try (Store store = Shelf.open(folder.resolve("diary.db").toString());
                LiveRules live = new LiveRules(rules, first, LiveRulesTest::make, told::add)) {
            Conversation conversation = new Conversation(store, live, Door.open());
            live.look();
            assertThat(told).isEmpty();
            assertThat(help(conversation, 1)).startsWith(line);

            change("wording/en.yaml", line, "Greetings from the new set.");
            live.look();
            assertThat(live.get()).as("not before it is the same at two looks").isSameAs(first);
            live.look();
            assertThat(told).singleElement().asString().contains("are used from now on");
            assertThat(help(conversation, 2)).startsWith("Greetings from the new set.");

            Knowledge second = live.get();
            change("sowing.drl", "then", "than");
            for (int looks = 0; looks < 4; looks++) {
                live.look();
            }
            assertThat(told).hasSize(2);
            assertThat(told.get(1)).contains("goes on with those of before").containsPattern("sowing\\.drl:\\d+");
            assertThat(live.get()).isSameAs(second);
            assertThat(help(conversation, 3)).startsWith("Greetings from the new set.");

            change("sowing.drl", "than", "then");
            live.look();
            live.look();
            assertThat(told).hasSize(3);
            assertThat(told.get(2)).contains("are used from now on");
        }
    }

    private static String help(Conversation conversation, int number) {
        Message message = Message.text(
                "m" + number, "telegram:1", Instant.parse("2027-05-01T12:00:00Z"), ZoneOffset.UTC, "/help");
        return conversation.handle(message, null).orElseThrow().reply().text();
    }
}
