package bothy.channel.telegram;

import bothy.garden.Document;
import java.io.ByteArrayInputStream;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;
import okhttp3.OkHttpClient;
import org.telegram.telegrambots.client.okhttp.OkHttpTelegramClient;
import org.telegram.telegrambots.meta.TelegramUrl;
import org.telegram.telegrambots.meta.api.methods.AnswerCallbackQuery;
import org.telegram.telegrambots.meta.api.methods.GetMe;
import org.telegram.telegrambots.meta.api.methods.botapimethods.BotApiMethod;
import org.telegram.telegrambots.meta.api.methods.commands.SetMyCommands;
import org.telegram.telegrambots.meta.api.methods.send.SendDocument;
import org.telegram.telegrambots.meta.api.methods.send.SendMessage;
import org.telegram.telegrambots.meta.api.methods.updates.SetWebhook;
import org.telegram.telegrambots.meta.api.objects.InputFile;
import org.telegram.telegrambots.meta.api.objects.LinkPreviewOptions;
import org.telegram.telegrambots.meta.api.objects.User;
import org.telegram.telegrambots.meta.api.objects.commands.BotCommand;
import org.telegram.telegrambots.meta.exceptions.TelegramApiException;
import org.telegram.telegrambots.meta.exceptions.TelegramApiRequestException;

/** The requests that the bot makes, other than for updates. Each fails with {@link Refused}. */
final class Service {
    private final TelegramSettings settings;
    private final OkHttpClient http;
    private final OkHttpTelegramClient client;

    Service(TelegramSettings settings) {
        UpdatesAsJson.inTheLibrary();
        this.settings = settings;
        this.http = Http.forRequests(settings);
        this.client = new OkHttpTelegramClient(http, settings.token(), url(settings));
    }

    static TelegramUrl url(TelegramSettings settings) {
        String scheme = settings.service().getScheme();
        int port = settings.service().getPort();
        return TelegramUrl.builder()
                .schema(scheme)
                .host(settings.service().getHost())
                .port(port > 0 ? port : scheme.equals("http") ? 80 : 443)
                .build();
    }

    Me me() {
        User user = ask(new GetMe());
        return new Me(user.getId(), String.valueOf(user.getUserName()));
    }

    /** Asks the service to send updates, and to keep those that wait already. */
    void sendTo(TelegramSettings.Webhook webhook, List<String> wanted) {
        SetWebhook hook = SetWebhook.builder()
                .url(webhook.address().toString())
                .secretToken(webhook.secret())
                .allowedUpdates(wanted)
                .build();
        done(client.executeAsync(hook));
    }

    void offerCommands() {
        List<BotCommand> menu = settings.commands().entrySet().stream()
                .map(command -> new BotCommand(command.getKey(), command.getValue()))
                .toList();
        if (!menu.isEmpty()) {
            ask(new SetMyCommands(menu));
        }
    }

    /**
     * Sends plain text: without a parse mode nothing in it needs escaping and nothing in it can be taken for markup.
     *
     * @param labels buttons under it, may be empty
     * @param number the number of the reply, for its buttons
     * @return the service's id of the message
     */
    String send(String chat, String text, List<String> labels, long number) {
        var message = SendMessage.builder()
                .chatId(chat)
                .text(text)
                .linkPreviewOptions(
                        LinkPreviewOptions.builder().isDisabled(true).build());
        if (!labels.isEmpty()) {
            message.replyMarkup(Keyboard.of(number, labels));
        }
        return String.valueOf(ask(message.build()).getMessageId());
    }

    /** Sends a file. */
    String send(String chat, Document document) {
        var content = new ByteArrayInputStream(document.content().getBytes(StandardCharsets.UTF_8));
        var message = SendDocument.builder()
                .chatId(chat)
                .document(new InputFile(content, document.name()))
                .build();
        return String.valueOf(done(client.executeAsync(message)).getMessageId());
    }

    /** @param text shown over the chat for a moment, {@code null} for nothing */
    void answerTap(String tap, String text) {
        ask(AnswerCallbackQuery.builder().callbackQueryId(tap).text(text).build());
    }

    private <T extends Serializable, M extends BotApiMethod<T>> T ask(M method) {
        try {
            return done(client.executeAsync(method));
        } catch (TelegramApiException e) {
            throw refused(e);
        }
    }

    /** The library never ends a request whose answer breaks off in the middle, so the time is limited here as well. */
    private <T> T done(CompletableFuture<T> answer) {
        Duration patience = settings.patience().plusSeconds(5);
        try {
            return answer.orTimeout(patience.toMillis(), TimeUnit.MILLISECONDS).join();
        } catch (CompletionException e) {
            throw refused(e.getCause());
        }
    }

    private Refused refused(Throwable thrown) {
        if (thrown instanceof TelegramApiRequestException answer && answer.getErrorCode() != null) {
            Integer seconds = answer.getParameters() == null
                    ? null
                    : answer.getParameters().getRetryAfter();
            return new Refused(
                    answer.getErrorCode(),
                    settings.withoutToken(answer.getErrorCode() + " " + answer.getApiResponse()),
                    seconds == null ? null : Duration.ofSeconds(seconds));
        }
        String why = settings.withoutToken("no answer: " + thrown);
        return new Refused(Refused.NO_ANSWER, why, null);
    }

    void close() {
        Http.close(http);
    }
}
