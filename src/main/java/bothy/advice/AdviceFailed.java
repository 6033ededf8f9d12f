package bothy.advice;

/** A rule failed while the rules ran. What the grower told is not touched by it. */
public final class AdviceFailed extends RuntimeException {
    private static final long serialVersionUID = 1;

    public AdviceFailed(String message, Throwable cause) {
        super(message, cause);
    }
}
