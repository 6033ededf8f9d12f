package bothy.garden;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a diary entry tells. The words are those of the exchange vocabulary ("planted-out", "colour-turned"). */
public enum What {
    SOWN,
    EMERGED,
    PRICKED_OUT,
    POTTED_ON,
    HARDENING_STARTED,
    PLANTED_OUT,
    THINNED,
    SUPPORTED,
    PROTECTED,
    WATERED,
    FED,
    FLOWERING,
    FRUIT_SET,
    COLOUR_TURNED,
    HARVESTED,
    CURED,
    STORED,
    DIED,
    MOVED,
    RAIN,
    FROST,
    TEMPERATURE,
    SOIL_CHECKED,
    NOTE;

    private static final Map<String, What> BY_WORD =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(What::word, what -> what));

    private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /** The word of the vocabulary, with hyphens. */
    public String word() {
        return word;
    }

    /** The kind of entry that a vocabulary word names, or empty when it names none. */
    public static Optional<What> of(String word) {
        return word == null ? Optional.empty() : Optional.ofNullable(BY_WORD.get(word));
    }

    /** Weather of the whole plot, not of one planting. */
    public boolean ofThePlot() {
        return this == RAIN || this == FROST;
    }
}
