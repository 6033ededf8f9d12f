package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Kind;
import bothy.garden.Plan;
import bothy.garden.Question;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import bothy.reading.text.Token;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What sort of message it was, as a whole. */
final class KindOf {
    private static final Set<What> MEASURED = EnumSet.of(What.TEMPERATURE, What.SOIL_CHECKED);
    /** Whoever says more has more to say. */
    private static final int WORDS_BESIDE_A_GREETING = 2;

    private static final Set<String> BESIDE_NO_GREETING =
            Set.of("it", "they", "is", "are", "was", "only", "watering", "sun");

    private final PhraseBook<String> chat;
    private final PhraseBook<String> greetings;
    private final PhraseBook<String> topics;

    KindOf(Words words) {
        PhraseFile file = new PhraseFile(words, "language", Map.of());
        chat = file.book("/chat", "chat");
        greetings = file.book("/greetings", "greeting");
        topics = file.book("/topics", "topic");
    }

    Set<String> vocabulary() {
        Set<String> all = new java.util.HashSet<>(chat.vocabulary());
        all.addAll(greetings.vocabulary());
        all.addAll(topics.vocabulary());
        return all;
    }

    /** @param chores whether work is told that no diary of a crop needs */
    Kind of(
            Passage passage,
            List<Statement> lines,
            List<Inquiry> asked,
            List<SignSeen> signs,
            List<SettingChange> settings,
            List<Plan> plans,
            boolean chores) {
        boolean strangeQuestion = asked.stream()
                        .allMatch(inquiry -> inquiry.question() == Question.OTHER
                                && (inquiry.topic() == null || inquiry.topic().equals(OffTopic.TOPIC)))
                && !onTopic(passage);
        boolean questions = !asked.isEmpty() && !(strangeQuestion && lines.isEmpty() && signs.isEmpty());
        boolean events =
                lines.stream().anyMatch(line -> !MEASURED.contains(line.event().what()));
        boolean measured = !events && !lines.isEmpty();
        boolean askedBesideSigns = asked.stream()
                .anyMatch(inquiry -> inquiry.question() != Question.WHY && inquiry.question() != Question.OTHER);
        int sorts = (events ? 1 : 0)
                + (measured ? 1 : 0)
                + (settings.isEmpty() ? 0 : 1)
                + (signs.isEmpty() ? 0 : 1)
                + (questions && (signs.isEmpty() || askedBesideSigns) ? 1 : 0);
        if (sorts > 1) {
            return Kind.MIXED;
        }
        if (sorts == 1) {
            return events
                    ? Kind.EVENT
                    : measured
                            ? Kind.MEASUREMENT
                            : !settings.isEmpty() ? Kind.SETTING : !signs.isEmpty() ? Kind.TROUBLE : Kind.QUESTION;
        }
        if (plans.isEmpty() && greets(passage)) {
            return Kind.GREETING;
        }
        if (chores && plans.isEmpty()) {
            return Kind.CHORE;
        }
        return !plans.isEmpty()
                        || friendly(passage)
                        || onTopic(passage)
                        || pointsToWhatGrows(passage)
                        || passage.size() == 0
                ? Kind.CHAT
                : Kind.OFF_TOPIC;
    }

    /** "Lowered the light and put a fan on them", while plants are spoken of. */
    private static boolean pointsToWhatGrows(Passage passage) {
        return !passage.situation().mentioned().isEmpty()
                && passage.words().stream().anyMatch(Set.of("them", "they", "em", "these", "those")::contains);
    }

    /** Whether it is a greeting, thanks or the like. */
    boolean friendly(Passage passage) {
        return greets(passage) || stands(chat, passage);
    }

    /** Counted crops are news, however kindly they are told. */
    boolean onlyFriendly(Passage passage) {
        boolean counted =
                !passage.crops().isEmpty() && !passage.counts(0, passage.size()).isEmpty();
        return friendly(passage) && !counted;
    }

    private static boolean stands(PhraseBook<String> book, Passage passage) {
        return !book.all(passage.tokens(), 0, passage.size(), passage).isEmpty();
    }

    /** "Hello there": a greeting with hardly another word, since "evening it becomes ok" tells of the plants. */
    private boolean greets(Passage passage) {
        return greetings.all(passage.tokens(), 0, passage.size(), passage).stream()
                .anyMatch(found -> found.start() == 0
                        && passage.words().size() - found.place().words().cardinality() <= WORDS_BESIDE_A_GREETING
                        && passage.tokens().stream()
                                .filter(Token::aWord)
                                .noneMatch(token -> BESIDE_NO_GREETING.contains(token.word())));
    }

    /** Whether a part of a message names anything of the garden. */
    boolean onTopic(Passage passage, int from, int to) {
        return !Passage.within(passage.actions(), from, to).isEmpty()
                || !topics.all(passage.tokens(), from, to, passage).isEmpty();
    }

    /** Whether anything of the garden is named. */
    boolean onTopic(Passage passage) {
        return !passage.crops().isEmpty() || !passage.actions().isEmpty() || stands(topics, passage);
    }
}
