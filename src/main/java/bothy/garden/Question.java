package bothy.garden;

import java.util.Arrays;
import java.util.Optional;

/** What a grower can ask. The words are those of the exchange vocabulary ("when-plant-out", "feed-dose"). */
public enum Question {
    TO_DO,
    WHEN_SOW,
    WHEN_PLANT_OUT,
    STILL_TIME,
    SPACING,
    HOW_MANY_FIT,
    HOW_MUCH_WATER,
    WHEN_WATER,
    WHEN_STOP_WATERING,
    FEED_WHEN,
    FEED_WHAT,
    FEED_DOSE,
    READY,
    HOW_HARVEST,
    HOW_STORE,
    WHY,
    NEXT,
    SAFE,
    HOW_TO,
    STATUS,
    WHAT_TO_GROW,
    COMPARE,
    OTHER;

    /** The word of the vocabulary, with hyphens. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** The question that a vocabulary word names, or empty when it names none. */
    public static Optional<Question> of(String word) {
        return Arrays.stream(values())
                .filter(question -> question.word().equals(word))
                .findFirst();
    }
}
