package bothy.conversation;

import bothy.advice.clinic.Clinic;
import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.SignSeen;
import bothy.reading.PlainNo;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The answer that a message gives to the question about a trouble that waits: a choice named, or what it tells of the same. */
final class CaseAnswer {
    private static final int SHORT_ANSWER_WORDS = 6;

    private final Doubt pending;
    private final Garden garden;
    private final LocalDate today;

    CaseAnswer(Doubt pending, Garden garden, LocalDate today) {
        this.pending = pending;
        this.garden = garden;
        this.today = today;
    }

    /** Whether the question asks for what was found. */
    boolean asksFor(Finding finding) {
        return pending.choices().stream().anyMatch(choice -> meaning(choice)[0].equals(finding.about()));
    }

    /**
     * The finding that the answer comes to; empty when it is none.
     *
     * @param said the message, or the label of the button tapped
     * @param found what the message tells of a closer look
     * @param alone what the message means as an answer and nothing else: "yes", "no", "unknown" …; {@code null} for none
     * @param plain whether it asks nothing, so that a word shared with one choice is enough
     */
    Optional<Finding> in(String said, String alone, List<Finding> found, boolean plain) {
        return pending.choices().stream()
                .filter(choice -> chosen(choice, meaning(choice), said, alone, found))
                .findFirst()
                .or(() -> found.isEmpty() && plain ? nearest(said) : Optional.empty())
                .map(choice -> about(meaning(choice)[0], meaning(choice)[1]));
    }

    /** "Something is eating the courgette leaves" answers nothing that was asked about the tomatoes. */
    boolean isOfAnother(List<SignSeen> signs) {
        String id = Clinic.subjectOf(pending.arguments().get(Doubt.CASE));
        String asked = garden.planting(id).map(one -> one.crop()).orElse(id);
        return !signs.isEmpty()
                && !id.equals("plot")
                && signs.stream()
                        .allMatch(sign -> sign.crop() != null && !sign.crop().equals(asked));
    }

    private static String[] meaning(Choice choice) {
        return choice.meaning().split("=", 2);
    }

    /** A short answer in other words: the one choice that shares a word with it. */
    private Optional<Choice> nearest(String said) {
        Set<String> words = new HashSet<>(List.of(bare(said).split(" ")));
        if (words.size() > SHORT_ANSWER_WORDS) {
            return Optional.empty();
        }
        List<Choice> sharing = pending.choices().stream()
                .filter(choice -> Stream.of((bare(choice.label()) + " " + meaning(choice)[1]).split("[ -]"))
                        .anyMatch(word -> word.length() > 2 && words.contains(word)))
                .toList();
        return sharing.size() == 1 ? Optional.of(sharing.get(0)) : Optional.empty();
    }

    private static boolean chosen(Choice choice, String[] meaning, String said, String alone, List<Finding> found) {
        String bare = bare(said);
        // "Yes, stony soil" answers what it names, not what was asked.
        boolean ofSomethingElse =
                !found.isEmpty() && found.stream().noneMatch(one -> one.about().equals(meaning[0]));
        return bare.equals(bare(choice.label()))
                || meaning[1].equals(alone)
                || (meaning[1].equals("yes") && bare.startsWith("yes ") && !ofSomethingElse)
                || (meaning[1].equals("no") && saysNo(bare) && !ofSomethingElse)
                || found.stream()
                        .anyMatch(one ->
                                one.about().equals(meaning[0]) && one.found().equals(meaning[1]));
    }

    private static boolean saysNo(String bare) {
        String[] words = bare.split(" ");
        return words[0].equals("no") && (words.length == 1 || PlainNo.before(words[1]));
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT)
                .replace('\u2019', '\'')
                .replaceAll("[^\\p{L}\\d' ]", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private Finding about(String question, String answer) {
        String id = Clinic.subjectOf(pending.arguments().get(Doubt.CASE));
        boolean known = garden.planting(id).isPresent();
        String crop = garden.planting(id).map(one -> one.crop()).orElse(id.equals("plot") ? null : id);
        return new Finding(
                known ? id : null, crop, pending.arguments().get(Doubt.TROUBLE), question, answer, true, today);
    }
}
