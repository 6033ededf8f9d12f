package bothy.reading.said;

/** A stretch of tokens: from the first to the one after the last. */
public interface Span {
    int start();

    int end();

    default boolean covers(int token) {
        return start() <= token && token < end();
    }

    default boolean overlaps(Span other) {
        return start() < other.end() && other.start() < end();
    }
}
