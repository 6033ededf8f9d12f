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
    MIXED;

    /** The word of the vocabulary, with hyphens. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
