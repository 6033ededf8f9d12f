package bothy.garden;

/** What sort of message it was, as a whole. */
public enum Kind {
    EVENT,
    CORRECTION,
    MEASUREMENT,
    QUESTION,
    TROUBLE,
    SETTING,
    CHAT,
    /** A greeting and no more; to others it counts as chat. */
    GREETING,
    /** Work about the plot that no diary of a crop needs, such as weeding; to others it counts as chat. */
    CHORE,
    OFF_TOPIC,
    /** A waiting question is let go ("never mind that"); to others it counts as chat. */
    LET_GO,
    /** An answer and no more ("not yet"); where no question waits, to others it counts as chat. */
    ANSWER,
    /** In a language that is not spoken yet; to others it counts as off-topic. */
    FOREIGN,
    MIXED;

    /** The word of the vocabulary, with hyphens. */
    public String word() {
        return switch (this) {
            case FOREIGN -> OFF_TOPIC.word();
            case LET_GO, GREETING, CHORE, ANSWER -> CHAT.word();
            default -> name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        };
    }
}
