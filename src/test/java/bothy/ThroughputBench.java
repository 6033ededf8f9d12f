package bothy;

import bothy.channel.telegram.BotApiServer;
import bothy.channel.telegram.EchoBot;
import bothy.channel.telegram.Handler;
import bothy.channel.telegram.TelegramChannel;
import bothy.channel.telegram.TelegramSettings;
import bothy.channel.telegram.TelegramSettings.Rate;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Event;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.garden.What;
import bothy.weather.WeatherSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Messages from end to end, from the Bot API server on loopback and back to it: the whole service with its durable commits, against a
 * bare echo bot on the same library. Both are measured in turns in one process, so that the ratio does not hang on how busy the machine is.
 */
final class ThroughputBench {
    private static final int CHATS = 400;
    private static final int WARM_UP = 6_000;
    private static final int COUNTED = 4_000;
    private static final int ROUNDS = 3;
    private static final Rate UNBOUNDED = new Rate(1e6, 1_000_000);
    private static final List<String> SAID = List.of(
            "sowed 6 tomatoes in the greenhouse today",
            "watered the tomatoes",
            "when do I feed the tomatoes?",
            "sowed 12 runner beans in bed 2",
            "the beans are up",
            "what do I do this week?",
            "picked 2 kg of tomatoes",
            "thanks");

    private ThroughputBench() {}

    interface Bot {
        AutoCloseable at(BotApiServer api) throws Exception;
    }

    /**
     * @param knowledge what the whole service answers with; {@code null} to measure the durable way of a message alone, with an answer
     *     that says the text again, as the bare bot's does
     */
    static void ratio(Path folder, Knowledge knowledge) throws Exception {
        double[] ratios = new double[ROUNDS];
        double[] durable = new double[ROUNDS];
        double[] echo = new double[ROUNDS];
        String what = knowledge == null ? "noted and said again" : "answered by the rules";
        for (int round = 0; round < ROUNDS; round++) {
            echo[round] = perSecond(EchoBot::new);
            Path diary = folder.resolve("throughput-" + what.length() + "-" + round + ".db");
            try (Store store = Shelf.open(diary.toString())) {
                Handler handler =
                        knowledge == null ? sayingAgain(store) : ServeVerb.handler(new Conversation(store, knowledge));
                durable[round] = perSecond(api -> channel(api, store, handler));
            }
            ratios[round] = durable[round] / echo[round];
        }
        System.out.printf(
                Locale.ROOT,
                "messages end to end over loopback, %s, with durable commits: %.0f a second; a bare echo bot: %.0f a second; %.0f %% (median of %d rounds)%n",
                what,
                median(durable),
                median(echo),
                100 * median(ratios),
                ROUNDS);
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static Handler sayingAgain(Store store) {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                store.write(message.grower(), page -> {
                    if (!page.handled(message.id())) {
                        Event note =
                                Event.of(What.NOTE, null, null, LocalDate.EPOCH).withDetail(message.text());
                        page.append(message.id(), message.at(), List.of(note));
                        page.markHandled(message.id(), message.at());
                        page.send(channel, chat, new Reply(message.text(), List.of()), message.at());
                    }
                    return null;
                });
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                throw new IllegalStateException(why);
            }
        };
    }

    private static TelegramChannel channel(BotApiServer api, Store store, Handler handler) {
        TelegramSettings settings = TelegramSettings.of(BotApiServer.TOKEN, Map.of(), "Past.")
                .withService(api.address())
                .withTimes(Duration.ofSeconds(20), Duration.ofSeconds(10))
                .withPace(UNBOUNDED, UNBOUNDED, UNBOUNDED);
        TelegramChannel channel = new TelegramChannel(settings, store, handler, Clock.systemUTC());
        channel.start();
        return channel;
    }

    /** Messages answered in a second, after as many as make the machine code ready. */
    private static double perSecond(Bot bot) throws Exception {
        try (BotApiServer api = new BotApiServer();
                AutoCloseable running = bot.at(api)) {
            exchange(api, 0, WARM_UP);
            long begun = System.nanoTime();
            exchange(api, WARM_UP, COUNTED);
            return COUNTED / ((System.nanoTime() - begun) / 1e9);
        }
    }

    private static void exchange(BotApiServer api, int from, int count) throws InterruptedException {
        for (int i = from; i < from + count; i++) {
            api.push(update(i));
        }
        while (api.received() < from + count) {
            Thread.sleep(1);
        }
    }

    private static String update(int number) {
        int chat = 1 + number % CHATS;
        String text = SAID.get(number / CHATS % SAID.size());
        return "{\"message\":{\"message_id\":" + number + ",\"date\":" + (1809172800L + number) + ",\"chat\":{\"id\":"
                + chat
                + ",\"type\":\"private\",\"first_name\":\"Ida\"},\"from\":{\"id\":" + chat
                + ",\"is_bot\":false,\"first_name\":\"Ida\"},\"text\":\"" + text + "\"}}";
    }

    /** Prints this figure alone. */
    public static void main(String[] arguments) throws Exception {
        Path folder = arguments.length > 0 ? Path.of(arguments[0]) : Files.createTempDirectory("bothy-throughput");
        ratio(folder, null);
        if (arguments.length > 1) {
            System.exit(0);
        }
        ratio(folder, Workshop.knowledge(Workshop.folder(null), null, WeatherSource.none()));
        System.exit(0); // the library leaves threads behind
    }
}
