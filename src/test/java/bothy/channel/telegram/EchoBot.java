package bothy.channel.telegram;

import java.util.List;
import org.telegram.telegrambots.client.okhttp.OkHttpTelegramClient;
import org.telegram.telegrambots.longpolling.TelegramBotsLongPollingApplication;
import org.telegram.telegrambots.longpolling.util.DefaultGetUpdatesGenerator;
import org.telegram.telegrambots.longpolling.util.LongPollingSingleThreadUpdateConsumer;
import org.telegram.telegrambots.meta.TelegramUrl;
import org.telegram.telegrambots.meta.api.methods.send.SendMessage;
import org.telegram.telegrambots.meta.api.objects.Update;
import org.telegram.telegrambots.meta.exceptions.TelegramApiException;

/**
 * The smallest bot that the library allows, as its own documentation shows it: every text goes back as it came, one after the other. It
 * keeps nothing; what it had taken in when it is killed is lost.
 */
public final class EchoBot implements AutoCloseable {
    private final TelegramBotsLongPollingApplication application = new TelegramBotsLongPollingApplication();

    public EchoBot(BotApiServer api) throws TelegramApiException {
        TelegramUrl url = TelegramUrl.builder()
                .schema("http")
                .host("localhost")
                .port(api.address().getPort())
                .build();
        OkHttpTelegramClient client = new OkHttpTelegramClient(BotApiServer.TOKEN, url);
        application.registerBot(
                BotApiServer.TOKEN, () -> url, new DefaultGetUpdatesGenerator(List.of("message")), new Echo(client));
    }

    private record Echo(OkHttpTelegramClient client) implements LongPollingSingleThreadUpdateConsumer {
        @Override
        public void consume(Update update) {
            try {
                client.execute(new SendMessage(
                        update.getMessage().getChatId().toString(),
                        update.getMessage().getText()));
            } catch (TelegramApiException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    @Override
    public void close() throws Exception {
        application.close();
    }
}
