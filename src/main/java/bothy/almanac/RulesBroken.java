package bothy.almanac;

import java.util.List;
import java.util.stream.Collectors;

/** The rules folder cannot be used as it is. The message lists every problem on a line of its own. */
public final class RulesBroken extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient List<Problem> problems;

    public RulesBroken(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
