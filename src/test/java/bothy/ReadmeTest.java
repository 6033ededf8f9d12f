package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.conversation.Conversation;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README shows what the program says, not what it once said. */
class ReadmeTest {
    private static final Path CHAT = Path.of("conversation-tests/readme-first-evening.yaml");

    @TempDir
    Path folder;

    @Test
    void the_readme_shows_the_chat_as_it_goes_today() throws IOException {
        assertThat(Files.readString(Path.of("README.md"))).contains(chat());
    }

    /** The chat as the README prints it: each message after an angle, each reply as it is. */
    private String chat() throws IOException {
        ZoneId zone = ZoneId.of("Europe/London");
        StringBuilder chat = new StringBuilder();
        try (Store store = Shelf.open(folder.resolve("readme.db").toString())) {
            Conversation conversation = new Conversation(
                    store, Workshop.knowledge(RulesFolder.at(Path.of("rules")), null, WeatherSource.none()));
            int number = 0;
            for (ConversationFile.Turn turn : ConversationFile.read(CHAT).turns()) {
                String reply = conversation
                        .handle(
                                Message.text(
                                        "readme-" + number++,
                                        "terminal:me",
                                        turn.at().atZone(zone).toInstant(),
                                        zone,
                                        turn.grower()),
                                null)
                        .orElseThrow()
                        .reply()
                        .text();
                chat.append("> ")
                        .append(turn.grower())
                        .append("\n\n")
                        .append(reply)
                        .append("\n\n");
            }
        }
        return chat.toString().strip();
    }
}
