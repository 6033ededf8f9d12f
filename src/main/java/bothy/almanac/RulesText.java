package bothy.almanac;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.function.Supplier;

/** The text of one rules file, read when it is first wanted, and its hash, which may be known without the text. */
final class RulesText {
    private final Supplier<String> reading;
    private volatile String text;
    private volatile String hash;

    private RulesText(Supplier<String> reading, String text, String hash) {
        this.reading = reading;
        this.text = text;
        this.hash = hash;
    }

    /** A text that is at hand. */
    static RulesText of(String text) {
        return new RulesText(() -> text, text, null);
    }

    /**
     * A text that is read later.
     *
     * @param hash its {@link #hash()}, known beforehand
     */
    static RulesText later(String hash, Supplier<String> reading) {
        return new RulesText(reading, null, hash);
    }

    String text() {
        String read = text;
        if (read == null) {
            read = reading.get();
            text = read;
        }
        return read;
    }

    /** SHA-256 of the text, in hexadecimal. */
    String hash() {
        String made = hash;
        if (made == null) {
            made = sha256(text());
            hash = made;
        }
        return made;
    }

    static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
