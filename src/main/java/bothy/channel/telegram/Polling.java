package bothy.channel.telegram;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import okhttp3.OkHttpClient;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.telegram.telegrambots.longpolling.BotSession;
import org.telegram.telegrambots.longpolling.util.ExponentialBackOff;
import org.telegram.telegrambots.meta.api.methods.updates.GetUpdates;
import org.telegram.telegrambots.meta.exceptions.TelegramApiException;

/** Keeps the library's polling going: starts it, looks whether it is alive, and starts it anew when it is not. */
final class Polling {
    private static final Logger LOG = LoggerFactory.getLogger(Polling.class);
    static final List<String> WANTED = List.of("message", "edited_message", "callback_query");
    private static final int AT_ONCE = 100;
    private static final Duration LOOK = Duration.ofMillis(500);
    private static final Duration SLACK = Duration.ofSeconds(60);

    private final TelegramSettings settings;
    private final Receiver receiver;
    private final InstantSource clock;
    private final Ending ending;
    private volatile Instant lastSign;

    Polling(TelegramSettings settings, Receiver receiver, InstantSource clock, Ending ending) {
        this.settings = settings;
        this.receiver = receiver;
        this.clock = clock;
        this.ending = ending;
        this.lastSign = clock.instant();
    }

    /** Polls until the end comes or the thread is interrupted. */
    void work() throws InterruptedException {
        BackOff backOff = new BackOff(Duration.ofMillis(250), Duration.ofSeconds(30));
        for (int deaths = 1; !ending.hasCome(); deaths++) {
            pollUntilDead();
            if (!ending.await(backOff.after(deaths))) {
                LOG.warn("Polling Telegram had stopped by itself and is started again.");
            }
        }
    }

    private void pollUntilDead() throws InterruptedException {
        signOfLife();
        PatientReading patient = new PatientReading(settings, ending, this::signOfLife);
        OkHttpClient client = Http.answeredBy(patient);
        ScheduledExecutorService thread =
                Executors.newSingleThreadScheduledExecutor(work -> new Thread(work, "telegram-polling"));
        BotSession session = session(client, thread, patient);
        try {
            session.start();
            while (!ending.await(LOOK) && isAlive(session)) {
                // looking again
            }
        } catch (TelegramApiException e) {
            LOG.warn("Polling Telegram could not be started: {}", settings.withoutToken(e.getMessage()));
        } finally {
            session.stop();
            patient.retire();
            thread.shutdownNow();
        }
    }

    private BotSession session(OkHttpClient client, ScheduledExecutorService thread, PatientReading patient) {
        return new BotSession(
                new ObjectMapper(),
                client,
                thread,
                settings.token(),
                () -> Service.url(settings),
                lastReceived -> question(patient, lastReceived),
                ExponentialBackOff::new,
                receiver);
    }

    private GetUpdates question(PatientReading patient, int lastReceived) {
        signOfLife();
        return patient.new Question(lastReceived + 1, AT_ONCE, settings.longPoll(), WANTED);
    }

    Instant lastSign() {
        return lastSign;
    }

    private void signOfLife() {
        lastSign = clock.instant();
    }

    private boolean isAlive(BotSession session) {
        boolean threw = session.getRunningPolling() == null
                || session.getRunningPolling().isDone();
        Instant latest = lastSign.plus(settings.longPoll()).plus(SLACK);
        return !threw && (receiver.isStoring() || clock.instant().isBefore(latest));
    }
}
