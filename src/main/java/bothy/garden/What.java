package bothy.garden;

import java.util.Arrays;
import java.util.Optional;

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

    /** The word of the vocabulary, with hyphens. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** The kind of entry that a vocabulary word names, or empty when it names none. */
    public static Optional<What> of(String word) {
        return Arrays.stream(values()).filter(what -> what.word().equals(word)).findFirst();
    }

    /** Weather of the whole plot, not of one planting. */
    public boolean ofThePlot() {
        return this == RAIN || this == FROST;
    }
}
