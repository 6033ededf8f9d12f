package bothy;

import bothy.almanac.RulesFolder;
import bothy.channel.telegram.TelegramChannel;
import bothy.channel.telegram.TelegramSettings;
import bothy.channel.telegram.TelegramSettings.Webhook;
import bothy.conversation.Conversation;
import bothy.conversation.Door;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.reminding.Rounds;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Function;

/** The service as it runs: the channel, the rounds, the porch and the upkeep, begun together and ended together. */
final class Serving {
    private static final Duration ROUND = Duration.ofSeconds(20);
    private static final int LOOKERS = 2;
    /** A long poll may be held for fifty seconds; after this time without one something is wrong. */
    private static final Duration SILENCE = Duration.ofMinutes(3);

    static final long LAST_WORK_MILLIS = 30_000;

    private final Store store;
    private final Knowledge knowledge;
    private final Path rules;
    private final Function<RulesFolder, Knowledge> making;
    private final TelegramSettings settings;
    private final ServiceOptions options;
    private final InstantSource clock = InstantSource.system();

    /**
     * @param rules the folder that the knowledge was made of and that may change, {@code null} for none
     * @param making makes the knowledge of a changed folder
     */
    Serving(
            Store store,
            Knowledge knowledge,
            Path rules,
            Function<RulesFolder, Knowledge> making,
            TelegramSettings settings,
            ServiceOptions options) {
        this.store = store;
        this.knowledge = knowledge;
        this.rules = rules;
        this.making = making;
        this.settings = settings;
        this.options = options;
    }

    /** Returns the exit code: 0 when it was stopped, 1 when it could not go on. */
    int untilTheEnd() throws InterruptedException {
        Webhook webhook = options.webhook() == null ? null : new Webhook(options.webhook(), options.webhookSecret());
        Watch watch = new Watch(store, clock);
        Door door = options.door();
        Operators operators = new Operators(store, door.operators(), clock);
        try (LiveRules live = rules == null ? null : new LiveRules(rules, knowledge, making, operators::tell).start()) {
            Conversation conversation = new Conversation(store, live == null ? () -> knowledge : live, door);
            return serve(conversation, watch, operators, webhook);
        }
    }

    private int serve(Conversation conversation, Watch watch, Operators operators, Webhook webhook)
            throws InterruptedException {
        try (TelegramChannel channel =
                        new TelegramChannel(settings, store, watch.watched(ServeVerb.handler(conversation)), clock);
                Rounds rounds = new Rounds(conversation, clock, ZoneOffset.UTC, LOOKERS, () -> {
                    watch.spokenUnasked();
                    channel.ring();
                });
                Upkeep upkeep = new Upkeep(store, clock, Duration.ofDays(options.keepDays()));
                Porch porch = porch(watch, channel, upkeep, webhook)) {
            operators.ring(channel::ring);
            begin(channel, webhook);
            rounds.start(ROUND);
            upkeep.start();
            System.err.println("Bothy answers on Telegram."
                    + (porch == null ? "" : " Health and metrics: port " + porch.port() + ".")
                    + " Stop it with Ctrl-C.");
            return awaitEnd(channel);
        }
    }

    private static void begin(TelegramChannel channel, Webhook webhook) {
        if (webhook == null) {
            channel.start();
        } else {
            channel.start(webhook);
        }
    }

    private Porch porch(Watch watch, TelegramChannel channel, Upkeep upkeep, Webhook webhook) {
        if (options.http() == null) {
            return null;
        }
        Porch porch = Porch.at(options.http());
        if (webhook != null) {
            porch.receiveFor(channel);
        }
        return porch.open(() -> wrong(watch, channel, upkeep), watch::metrics);
    }

    private String wrong(Watch watch, TelegramChannel channel, Upkeep upkeep) {
        try {
            watch.waiting();
        } catch (RuntimeException unreachable) {
            return String.valueOf(unreachable.getMessage());
        }
        Instant silentSince = clock.instant().minus(SILENCE);
        boolean silent =
                channel.lastSign().filter(sign -> sign.isBefore(silentSince)).isPresent();
        return silent
                ? "Telegram has not been asked for messages for " + SILENCE.toMinutes() + " minutes."
                : upkeep.damage();
    }

    /** The signal to stop waits until what is at hand has come to its end and the store is closed. */
    private static int awaitEnd(TelegramChannel channel) throws InterruptedException {
        Thread main = Thread.currentThread();
        Thread stopping = new Thread(
                () -> {
                    channel.stop();
                    try {
                        main.join(LAST_WORK_MILLIS);
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                "stopping");
        Runtime.getRuntime().addShutdownHook(stopping);
        Optional<String> wrong = channel.awaitEnd();
        wrong.ifPresent(sentence -> {
            System.err.println(sentence);
            Runtime.getRuntime().removeShutdownHook(stopping);
        });
        return wrong.isPresent() ? 1 : 0;
    }
}
