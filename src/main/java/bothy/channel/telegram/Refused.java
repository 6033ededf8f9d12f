package bothy.channel.telegram;

import java.time.Duration;
import java.util.Optional;

/** The service did not do what it was asked, or it is not known whether it did. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** No answer, or none that can be read. */
    static final int NO_ANSWER = 0;

    private final int code;
    private final transient Duration retryAfter;

    /**
     * @param code the service's error code, that of HTTP; {@link #NO_ANSWER} when there is none
     * @param why in words, without the token
     * @param retryAfter how long the service asks to be left alone, {@code null} when it does not say
     */
    Refused(int code, String why, Duration retryAfter) {
        super(why);
        this.code = code;
        this.retryAfter = retryAfter;
    }

    boolean tokenRefused() {
        return code == 401 || code == 404;
    }

    boolean chatGone() {
        return code == 403;
    }

    /** Asking the same again would be refused again. */
    boolean forGood() {
        return code == 400;
    }

    boolean tooFast() {
        return code == 429;
    }

    Optional<Duration> retryAfter() {
        return Optional.ofNullable(retryAfter);
    }
}
