package bothy.almanac;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Remembers that the sheets of a rules folder were read without a fault, so that the next start need not read them all. What is
 * remembered is the hash of the whole folder: any change is read afresh.
 */
final class InOrder {
    /** Hash of the shipped rules, written into the packed program when it is built. */
    static final String SHIPPED = "rules-in-order.sha256";

    private static final int KEPT = 8;
    private static final Logger LOG = LoggerFactory.getLogger(InOrder.class);
    private final String fingerprint;
    private final Path mark;

    InOrder(RulesFolder folder, Path cache) {
        this.fingerprint = folder.fingerprint();
        this.mark = cache == null ? null : cache.resolve("in-order-" + fingerprint);
    }

    boolean known() {
        return mark != null && (Files.exists(mark) || shipped());
    }

    private boolean shipped() {
        try (InputStream in = InOrder.class.getResourceAsStream(SHIPPED)) {
            return in != null && fingerprint.equals(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return false;
        }
    }

    void remember() {
        if (mark == null) {
            return;
        }
        try {
            new KeptFiles(mark.getParent(), "in-order-[0-9a-f]{64}", KEPT)
                    .write(mark.getFileName().toString(), new byte[0]);
        } catch (IOException unwritable) {
            LOG.warn("It cannot be remembered that the rules are in order: {}", unwritable.toString());
        }
    }
}
