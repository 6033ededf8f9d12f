package bothy.channel.telegram;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import okhttp3.Interceptor;
import okhttp3.OkHttpClient;
import okhttp3.Request;
import okhttp3.Response;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.telegram.telegrambots.meta.api.methods.updates.GetUpdates;
import org.telegram.telegrambots.meta.api.objects.Update;

/**
 * Stands between the library's polling and the wire, and lets only good answers through. By itself the library retries a refused token
 * and a second reader for ever, does not obey {@code retry_after}, fails on a whole batch for one update that it cannot read, and logs
 * a page for each of these. Here trouble is waited out (one line in the log when it begins, one when it is over) and answered with
 * "no updates"; what cannot be waited out ends the channel.
 */
final class PatientReading implements Interceptor {
    private static final Logger LOG = LoggerFactory.getLogger(PatientReading.class);
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String NO_UPDATES = "{\"ok\":true,\"result\":[]}";
    private static final BackOff BACK_OFF = new BackOff(Duration.ofMillis(250), Duration.ofSeconds(30));

    private final TelegramSettings settings;
    private final Ending ending;
    private final Runnable onContact;

    /** Makes the real requests: one that is cut short here is not cut short for the library, which would log a page about it. */
    private final OkHttpClient wire;

    private volatile boolean retired;

    /** The updates of the last answer; written and read by the library's one polling thread. */
    private List<Arrived> arrived = List.of();

    private final AtomicInteger failures = new AtomicInteger();

    /** @param onContact told of each answer of the service and each wait, as a sign of life */
    PatientReading(TelegramSettings settings, Ending ending, Runnable onContact) {
        this.settings = settings;
        this.ending = ending;
        this.onContact = onContact;
        this.wire = Http.forUpdates(settings);
    }

    /** This polling was given up for another; what the service says to its last request does not count. */
    void retire() {
        retired = true;
        Http.close(wire);
    }

    @Override
    public Response intercept(Chain chain) throws IOException {
        Request request = chain.request();
        arrived = List.of();
        try (Response response = wire.newCall(request).execute()) {
            String body = response.body() == null ? "" : response.body().string();
            Answer answer = Answer.of(body);
            if (!answer.ok()) {
                return refused(request, response.code(), tree(body));
            }
            contact();
            if (isUpdates(request)) {
                arrived = readable(answer);
            }
            return Http.withBody(response, body);
        } catch (IOException e) {
            return trouble(request, "no answer (" + e + ")", null);
        }
    }

    private static JsonNode tree(String body) {
        try {
            return MAPPER.readTree(body);
        } catch (JsonProcessingException e) {
            return MAPPER.createObjectNode();
        }
    }

    private static boolean isUpdates(Request request) {
        return request.url().encodedPath().toLowerCase(java.util.Locale.ROOT).endsWith("/getupdates");
    }

    private Response refused(Request request, int status, JsonNode answer) throws IOException {
        int code = answer.path("error_code").asInt(status);
        boolean json = answer.has("ok");
        if (json && !retired && code == 409) {
            ending.come(Ending.SECOND_READER);
        }
        if (json && !retired && (code == 401 || code == 404)) {
            ending.come(Ending.TOKEN_REFUSED);
        }
        JsonNode seconds = answer.path("parameters").path("retry_after");
        Duration asked = seconds.isNumber() ? Duration.ofSeconds(seconds.asLong()) : null;
        return trouble(request, code + " " + answer.path("description").asText("without a reason"), asked);
    }

    private Response trouble(Request request, String what, Duration asked) throws IOException {
        if (retired || ending.hasCome()) {
            return Http.made(request, NO_UPDATES);
        }
        int inARow = failures.incrementAndGet();
        if (inARow == 1) {
            LOG.warn("Telegram gives no updates: {}. Trying again until it does.", settings.withoutToken(what));
        }
        onContact.run();
        pause(asked != null ? asked : BACK_OFF.after(inARow));
        if (isUpdates(request)) {
            return Http.made(request, NO_UPDATES);
        }
        throw new IOException(settings.withoutToken(what));
    }

    private void pause(Duration wait) {
        try {
            ending.await(wait);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void contact() {
        onContact.run();
        if (failures.get() > 0) {
            LOG.info("Telegram gives updates again.");
            failures.set(0);
        }
    }

    /**
     * The question whose answer comes through here. The library would read the answer once more, and fail on all of it for one update that
     * it cannot read; it gets what was read already.
     */
    final class Question extends GetUpdates {
        private static final long serialVersionUID = 1;

        Question(int offset, int limit, Duration longPoll, List<String> wanted) {
            super(offset, limit, (int) longPoll.toSeconds(), wanted);
        }

        @Override
        public ArrayList<Update> deserializeResponse(String answer) {
            return new ArrayList<>(arrived);
        }
    }

    /** The updates of an answer; of one that cannot be read only the number is left. */
    private static List<Arrived> readable(Answer answer) {
        List<Arrived> readable = new ArrayList<>();
        for (String json : answer.results()) {
            read(json).ifPresent(readable::add);
        }
        return readable;
    }

    private static Optional<Arrived> read(String json) {
        try {
            Arrived update = Arrived.of(json);
            if (update != null && update.getUpdateId() != null) {
                return Optional.of(update);
            }
        } catch (JsonProcessingException | RuntimeException e) {
            LOG.debug("An update cannot be read", e);
        }
        JsonNode number = tree(json).path("update_id");
        if (!number.canConvertToInt()) {
            return Optional.empty();
        }
        LOG.error("Update {} cannot be read and is passed over.", number.asInt());
        return Optional.of(Arrived.numbered(number.asInt()));
    }
}
