package bothy.diary;

/** The store cannot do what it was asked. The message is a sentence for a person: what is wrong, where, what to do. */
public final class StoreFailure extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final Reason reason;

    /** Why. */
    public enum Reason {
        READ_ONLY,
        CORRUPT,
        FULL,
        LOCKED,
        NOT_THERE,
        NEWER,
        OTHER
    }

    public StoreFailure(Reason reason, String message, Throwable cause) {
        super(message, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
