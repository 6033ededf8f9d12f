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
    OFF_TOPIC,
    /** In a language that is not spoken yet; to others it counts as off-topic. */
    FOREIGN,
    MIXED;

    /** The word of the vocabulary, with hyphens. */
    public String word() {
        return this == FOREIGN
                ? OFF_TOPIC.word()
                : name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
