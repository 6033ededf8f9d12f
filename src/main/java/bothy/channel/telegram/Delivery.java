package bothy.channel.telegram;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Updates that the service sends by itself, each by one request that knows the secret. */
final class Delivery {
    private static final Logger LOG = LoggerFactory.getLogger(Delivery.class);
    private final Receiver receiver;

    Delivery(Receiver receiver) {
        this.receiver = receiver;
    }

    /** Compares in a time that does not tell how much of a guess was right. */
    static boolean same(String secret, String told) {
        return told != null
                && MessageDigest.isEqual(
                        secret.getBytes(StandardCharsets.UTF_8), told.getBytes(StandardCharsets.UTF_8));
    }

    /** The update that a request's body holds; empty when it holds none. */
    static Optional<Arrived> update(String json) {
        try {
            return Optional.ofNullable(Arrived.of(json)).filter(one -> one.getUpdateId() != null);
        } catch (JsonProcessingException unreadable) {
            return Optional.empty();
        }
    }

    int taken(String json) {
        Optional<Arrived> update = update(json);
        if (update.isEmpty()) {
            LOG.warn("An update that came by the webhook cannot be read and is passed over.");
            return 400;
        }
        try {
            receiver.take(update.get());
            return 200;
        } catch (RuntimeException e) {
            LOG.error("A message cannot be taken in; the service will send it again: {}", e.getMessage());
            return 503;
        }
    }
}
