package bothy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bothy.almanac.RulesFolder;
import bothy.channel.telegram.BotApiServer;
import bothy.channel.telegram.TelegramChannel;
import bothy.channel.telegram.TelegramSettings;
import bothy.channel.telegram.TelegramSettings.Rate;
import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole season told over Telegram, through the real library, gets the same answers as told in the terminal. */
class SeasonOverTelegramTest {
    private static final Path SEASON = Path.of("conversation-tests/squash-from-packet-to-store.yaml");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    @Test
    void a_season_over_telegram_is_answered_as_in_the_terminal() throws IOException, InterruptedException {
        Knowledge knowledge = Workshop.knowledge(RulesFolder.at(Path.of("rules")), null, WeatherSource.none());
        List<Message> said = said(ConversationFile.read(SEASON));

        List<String> inTheTerminal = inTheTerminal(said, knowledge);
        List<String> overTelegram = overTelegram(said, knowledge);

        assertThat(said).hasSizeGreaterThan(10);
        assertThat(overTelegram).isEqualTo(inTheTerminal);
    }

    private static List<Message> said(ConversationFile file) {
        List<Message> said = new ArrayList<>();
        for (ConversationFile.Turn turn : file.turns()) {
            if (turn.grower() != null) {
                Instant at = turn.at().atZone(ZoneOffset.UTC).toInstant();
                said.add(Message.text("m" + said.size(), "terminal:me", at, ZoneOffset.UTC, turn.grower()));
            }
        }
        return said;
    }

    private List<String> inTheTerminal(List<Message> said, Knowledge knowledge) {
        try (Store store = Shelf.open(folder.resolve("terminal.db").toString())) {
            Conversation conversation = new Conversation(store, knowledge);
            return said.stream()
                    .map(message -> conversation.handle(message, null).orElseThrow())
                    .map(Outcome::reply)
                    .map(reply -> reply.text())
                    .toList();
        }
    }

    private List<String> overTelegram(List<Message> said, Knowledge knowledge)
            throws IOException, InterruptedException {
        try (BotApiServer api = new BotApiServer();
                Store store = Shelf.open(folder.resolve("telegram.db").toString());
                TelegramChannel channel = channel(api, store, new Conversation(store, knowledge))) {
            channel.start();
            for (int i = 0; i < said.size(); i++) {
                api.push(update(i, said.get(i)));
                await(api, i + 1);
            }
            return api.texts();
        }
    }

    private static TelegramChannel channel(BotApiServer api, Store store, Conversation conversation) {
        TelegramSettings settings = TelegramSettings.of(BotApiServer.TOKEN, Map.of("week", "What to do"), "Past.")
                .withService(api.address())
                .withTimes(Duration.ofSeconds(3), Duration.ofSeconds(2))
                .withPace(new Rate(1000, 1000), new Rate(1000, 1000), new Rate(1000, 1000));
        return new TelegramChannel(settings, store, ServeVerb.handler(conversation), Clock.systemUTC());
    }

    private static String update(int number, Message message) throws IOException {
        return JSON.writeValueAsString(Map.of(
                "message",
                Map.of(
                        "message_id", 100 + number,
                        "date", message.at().getEpochSecond(),
                        "chat", Map.of("id", 4711, "type", "private", "first_name", "Ida"),
                        "from", Map.of("id", 4711, "is_bot", false, "first_name", "Ida"),
                        "text", message.text())));
    }

    private static void await(BotApiServer api, int replies) throws InterruptedException {
        for (int tries = 0; tries < 600; tries++) {
            if (api.texts().size() >= replies) {
                return;
            }
            Thread.sleep(50);
        }
        fail("no reply number " + replies + " came; so far: " + api.texts());
    }
}
