package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Finding;
import bothy.garden.Garden;
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
    private static final Set<String> YES =
            Set.of("yes", "y", "yep", "yeah", "yes it is", "yes they are", "it is", "they are");
    private static final Set<String> NO = Set.of("no", "n", "nope", "not really", "no it is not", "none");
    private static final Set<String> UNKNOWN = Set.of(
            "don't know",
            "dont know",
            "do not know",
            "i don't know",
            "i dont know",
            "not sure",
            "no idea",
            "dunno",
            "can't tell",
            "cant tell",
            "unsure",
            "haven't looked",
            "idk");
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
     * @param plain whether it asks nothing, so that a word shared with one choice is enough
     */
    Optional<Finding> in(String said, List<Finding> found, boolean plain) {
        return pending.choices().stream()
                .filter(choice -> chosen(choice, meaning(choice), said, found))
                .findFirst()
                .or(() -> found.isEmpty() && plain ? nearest(said) : Optional.empty())
                .map(choice -> about(meaning(choice)[0], meaning(choice)[1]));
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

    private static boolean chosen(Choice choice, String[] meaning, String said, List<Finding> found) {
        String bare = bare(said);
        // "Yes, stony soil" answers what it names, not what was asked.
        boolean ofSomethingElse =
                !found.isEmpty() && found.stream().noneMatch(one -> one.about().equals(meaning[0]));
        return bare.equals(bare(choice.label()))
                || (meaning[1].equals("yes") && (YES.contains(bare) || (bare.startsWith("yes ") && !ofSomethingElse)))
                || (meaning[1].equals("no") && (NO.contains(bare) || (saysNo(bare) && !ofSomethingElse)))
                || (meaning[1].equals(Finding.UNKNOWN) && UNKNOWN.contains(bare))
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
        String id = pending.arguments().get(CaseNotes.CASE);
        boolean known = garden.planting(id).isPresent();
        String crop = garden.planting(id).map(one -> one.crop()).orElse(id.equals("plot") ? null : id);
        return new Finding(known ? id : null, crop, question, answer, true, today);
    }
}
