package bothy;

import bothy.almanac.RulesFolder;
import bothy.channel.telegram.Handler;
import bothy.channel.telegram.TelegramSettings;
import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Address;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.StoreFailure;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.net.URI;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Runs the Telegram channel and the reminders until it is stopped. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description =
                "Answers on Telegram until it is stopped. The bot's token is taken from BOTHY_TELEGRAM_TOKEN. Options may "
                        + "also stand in a file, one a line: serve @FILE. A secret may stand in a file that the environment names: "
                        + "BOTHY_TELEGRAM_TOKEN_FILE, BOTHY_INVITE_CODES_FILE, BOTHY_WEBHOOK_SECRET_FILE.")
final class ServeVerb implements Callable<Integer> {
    private static final String NO_TOKEN =
            """
            There is no Telegram token. To get one, write to @BotFather in Telegram, send /newbot and follow it;
            then run again with the token in the environment: BOTHY_TELEGRAM_TOKEN=… (never on the command line).
            Without Telegram you can chat right here: leave "serve" out.""";

    @Mixin
    private RulesOption rules;

    @Mixin
    private ServiceOptions options = new ServiceOptions();

    @Mixin
    private WeatherOption weather;

    @Option(
            names = "--db",
            paramLabel = "FILE",
            defaultValue = "${env:BOTHY_DB:-bothy.db}",
            description = "Diary: an SQLite file, or a jdbc:postgresql: address (default: ${DEFAULT-VALUE} here).")
    private String diary;

    @Option(
            names = "--telegram-service",
            paramLabel = "ADDRESS",
            description = "Base address of the Bot API, for a server of your own (default: the public one).")
    private URI service;

    @Option(
            names = "--log",
            paramLabel = "FORM",
            defaultValue = "${env:BOTHY_LOG:-json}",
            description = "How the log is written: json (a line for each record, without growers' words) or plain. "
                    + "Default: ${DEFAULT-VALUE}.")
    private Logs.Form log;

    @Override
    public Integer call() throws InterruptedException {
        Logs.forAService(log);
        Optional<String> token = new Secrets(System::getenv).of("BOTHY_TELEGRAM_TOKEN");
        if (token.isEmpty()) {
            System.err.println(NO_TOKEN);
            return 2;
        }
        RulesFolder folder = Workshop.folder(rules.folder);
        WeatherSource sky = weather.source(InstantSource.system());
        Function<RulesFolder, Knowledge> making = written -> Workshop.knowledge(written, Workshop.cacheFolder(), sky);
        Knowledge knowledge = making.apply(folder);
        try (Store store = Shelf.open(diary)) {
            return new Serving(store, knowledge, rules.folder, making, settings(token.get(), knowledge), options)
                    .untilTheEnd();
        }
    }

    private TelegramSettings settings(String token, Knowledge knowledge) {
        Map<String, String> menu = new LinkedHashMap<>();
        for (String command : new String[] {"week", "plot", "why", "undo", "settings", "mydata", "delete", "help"}) {
            menu.put(command, knowledge.replier().talk("menu-" + command));
        }
        TelegramSettings settings =
                TelegramSettings.of(token, menu, knowledge.replier().talk("button-past"));
        settings = settings.withPace(options.sending(), settings.eachChat(), settings.eachGroup());
        return service == null ? settings : settings.withService(service);
    }

    static Handler handler(Conversation conversation) {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                conversation.handle(message, new Address(channel, chat));
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                if (why instanceof StoreFailure failure && failure.reason() != StoreFailure.Reason.CORRUPT) {
                    throw failure; // it is not the message's fault and will pass, so the message is not given up
                }
                conversation.apologise(message, new Address(channel, chat));
            }
        };
    }
}
