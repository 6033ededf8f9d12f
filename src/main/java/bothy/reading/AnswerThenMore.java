package bothy.reading;

import bothy.garden.Heard;
import bothy.garden.Situation;
import java.util.List;

/** "The plum ones, and I fed them too": an answer first, then something new about the same plants. */
final class AnswerThenMore {
    private static final int LONGEST_ANSWER = 40;

    private AnswerThenMore() {}

    /** Both together, {@code null} when the message is not of that kind. */
    static Heard of(String text, Situation situation, Reading reading) {
        int comma = text.indexOf(',');
        if (comma <= 0 || comma > LONGEST_ANSWER || text.substring(comma + 1).isBlank()) {
            return null;
        }
        Heard answer = reading.answer(text.substring(0, comma), situation);
        if (answer == null || answer.statements().isEmpty()) {
            return null;
        }
        List<String> about = answer.statements().stream()
                .flatMap(statement -> statement.plantings().stream())
                .distinct()
                .toList();
        Situation after = new Situation(
                situation.today(),
                situation.grower(),
                situation.plantings(),
                null,
                List.of(),
                situation.earlier(),
                about.isEmpty() ? situation.mentioned() : about,
                situation.crops(),
                situation.happened(),
                situation.asked());
        Heard more = reading.understood(text.substring(comma + 1), after);
        boolean tellsMore = !more.statements().isEmpty()
                || !more.inquiries().isEmpty()
                || !more.signs().isEmpty();
        return tellsMore ? Joined.of(answer, more) : null;
    }
}
