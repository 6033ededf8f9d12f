package bothy.weather;

import java.util.List;
import java.util.stream.Collectors;

/** A station's record cannot be used as it is. The message has a line for each mistake, the first twenty of them. */
public final class RecordRefused extends RuntimeException {
    private static final long serialVersionUID = 1;
    private static final int MOST = 20;

    private final transient List<Mistake> mistakes;

    /**
     * @param line line of the file, counted from 1; 0 when the whole file is meant
     * @param text what was found, what is allowed and what to do
     */
    public record Mistake(long line, String text) {}

    RecordRefused(String file, List<Mistake> mistakes) {
        super(worded(file, mistakes));
        this.mistakes = List.copyOf(mistakes);
    }

    public List<Mistake> mistakes() {
        return mistakes;
    }

    private static String worded(String file, List<Mistake> mistakes) {
        String lines = mistakes.stream()
                .limit(MOST)
                .map(mistake -> file + (mistake.line() > 0 ? ":" + mistake.line() : "") + ": " + mistake.text())
                .collect(Collectors.joining("\n"));
        int more = mistakes.size() - MOST;
        return more > 0 ? lines + "\n… and " + more + " more." : lines;
    }
}
