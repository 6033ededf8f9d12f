package bothy.channel.telegram;

import bothy.channel.telegram.TelegramSettings.Webhook;
import bothy.garden.Post;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The Telegram channel. Started once, it works in threads of its own until {@link #stop} or until something ends it that waiting cannot
 * mend; {@link #awaitEnd} says what.
 */
public final class TelegramChannel implements AutoCloseable {
    /** The channel's name in the store and in the growers' keys ("telegram:4711"). */
    public static final String NAME = "telegram";

    private static final Logger LOG = LoggerFactory.getLogger(TelegramChannel.class);
    private static final BackOff BACK_OFF = new BackOff(Duration.ofMillis(500), Duration.ofSeconds(60));
    private static final long LAST_STEP_MILLIS = 12_000;

    private final TelegramSettings settings;
    private final Post post;
    private final Handler handler;
    private final InstantSource clock;
    private final Service service;
    private final Courtesy courtesy;
    private final Sender sender;
    private final Ending ending = new Ending();
    private final List<Thread> threads = new ArrayList<>();
    private Desk desk;
    private volatile Polling polling;
    private volatile Delivery delivery;
    private volatile Webhook webhook;

    public TelegramChannel(TelegramSettings settings, Post post, Handler handler, InstantSource clock) {
        this.settings = settings;
        this.post = post;
        this.handler = handler;
        this.clock = new Onward(clock, System::nanoTime);
        this.service = new Service(settings);
        this.courtesy = new Courtesy(post, service, settings.buttonPast());
        this.sender = new Sender(post, service, new Pace(settings), this.clock, ending, settings.workers());
    }

    /** Begins to work and returns at once. While the service cannot be reached it keeps trying. */
    public void start() {
        begin("telegram-sending", sender::work);
        begin(
                "telegram-receiving",
                () -> receive(receiver -> {
                    Polling begun = new Polling(settings, receiver, clock, ending);
                    polling = begun;
                    begun.work();
                }));
    }

    /** The same, but the service sends the messages; they come in by {@link #delivered}. */
    public void start(Webhook to) {
        webhook = to;
        begin("telegram-sending", sender::work);
        begin(
                "telegram-receiving",
                () -> receive(receiver -> {
                    delivery = new Delivery(receiver);
                    announce(to);
                }));
    }

    private interface Receiving {
        void from(Receiver receiver) throws InterruptedException;
    }

    private void receive(Receiving receiving) throws InterruptedException {
        Optional<Me> found = introduce();
        if (found.isPresent()) {
            Me me = found.get();
            offerCommands();
            openDesk(me);
            LOG.info("Telegram: listening as @{}", me.name());
            receiving.from(new Receiver(post, me, clock, ending, courtesy::answer, this::ringDesk));
        }
    }

    private void announce(Webhook to) throws InterruptedException {
        for (int failures = 1; !ending.hasCome(); failures++) {
            try {
                service.sendTo(to, Polling.WANTED);
                return;
            } catch (Refused e) {
                LOG.warn("The webhook cannot be set, trying again: {}", e.getMessage());
                ending.await(e.retryAfter().orElse(BACK_OFF.after(failures)));
            }
        }
    }

    /**
     * Takes in one update that the service sent.
     *
     * @param secret what the caller gives as the secret, {@code null} for nothing
     * @return the HTTP status to answer: 200 when it is durable, 401 when the secret is wrong, 400 when it cannot be read, 503 when it is
     *     to be sent again
     */
    public int delivered(String update, String secret) {
        if (webhook == null || !Delivery.same(webhook.secret(), secret)) {
            return 401;
        }
        Delivery ready = delivery;
        return ready == null || ending.hasCome() ? 503 : ready.taken(update);
    }

    /** When there was the last sign that messages are being asked for; empty with a webhook, and before the first. */
    public Optional<Instant> lastSign() {
        Polling running = polling;
        return running == null ? Optional.empty() : Optional.of(running.lastSign());
    }

    /** Asks who the bot is until there is an answer; empty when the end came first. */
    private Optional<Me> introduce() throws InterruptedException {
        for (int failures = 1; !ending.hasCome(); failures++) {
            try {
                return Optional.of(service.me());
            } catch (Refused e) {
                if (e.tokenRefused()) {
                    ending.come(Ending.TOKEN_REFUSED);
                }
                LOG.warn("Telegram cannot be reached, trying again: {}", e.getMessage());
                ending.await(e.retryAfter().orElse(BACK_OFF.after(failures)));
            }
        }
        return Optional.empty();
    }

    private void offerCommands() {
        try {
            service.offerCommands();
        } catch (RuntimeException e) {
            LOG.warn("The command menu could not be set: {}", settings.withoutToken(e.getMessage()));
        }
    }

    private synchronized void openDesk(Me me) {
        desk = new Desk(post, handler, me, clock, ending, settings.workers(), sender::ring);
        begin("telegram-handling", desk::work);
    }

    private synchronized void ringDesk() {
        desk.ring();
    }

    /** Waits until it ends; a sentence says what was wrong and what to do, empty when it was stopped. */
    public Optional<String> awaitEnd() throws InterruptedException {
        return ending.await();
    }

    /** Whether {@link #awaitEnd} would return at once. */
    public boolean hasEnded() {
        return ending.hasCome();
    }

    /** Looks at the outbox now: something was put into it from elsewhere. */
    public void ring() {
        sender.ring();
    }

    /** Stops: lets the message and the replies at hand come to their end, a few seconds at most; the rest waits in the store. */
    public void stop() {
        ending.come(null);
        List<Thread> running;
        synchronized (this) {
            running = List.copyOf(threads);
        }
        running.forEach(Thread::interrupt);
        running.forEach(TelegramChannel::awaitLastStep);
        synchronized (this) {
            if (desk != null) {
                desk.close();
            }
        }
        sender.close();
        courtesy.close();
        service.close();
    }

    private static void awaitLastStep(Thread thread) {
        try {
            thread.join(LAST_STEP_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        stop();
    }

    private interface Work {
        void begin() throws InterruptedException;
    }

    private synchronized void begin(String name, Work work) {
        if (ending.hasCome()) {
            return;
        }
        Thread thread = new Thread(
                () -> {
                    try {
                        work.begin();
                    } catch (InterruptedException e) {
                        LOG.debug("{} stops", name);
                    }
                },
                name);
        threads.add(thread);
        thread.start();
    }
}
