package bothy.conversation;

import bothy.diary.StoreFailure;

/** What may be logged of a failure. The messages of most exceptions repeat what they failed on, and that may be a grower's words. */
public final class Discretion {
    private Discretion() {}

    /** The sentence of a store that fails, which names no grower's words; of any other failure its kind alone. */
    public static String of(Throwable failure) {
        return failure instanceof StoreFailure
                ? failure.getMessage()
                : failure.getClass().getName();
    }
}
