package bothy.replying;

import bothy.almanac.Sheet;
import bothy.almanac.Wording;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Given;
import bothy.garden.Inquiry;
import bothy.garden.Logged;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** What is said of a question, a sign or a crop for which there is no advice. */
final class Unanswered {
    /** The matter of "is that normal?". */
    private static final String NORMAL = "normal";

    /** What was asked of no garden: told so in a line, whatever else was answered. */
    private static final String OFF_TOPIC = "off-topic";

    private static final Set<Question> LISTS = Set.of(Question.TO_DO, Question.STATUS, Question.NEXT, Question.WHY);
    /** "Sowing squash tomorrow, how do I do it?" is answered by what the plan called for. */
    private static final Set<Given.Occasion> ANSWERS =
            Set.of(Given.Occasion.ASKED, Given.Occasion.SIGN, Given.Occasion.PLANNED);

    private final Wording wording;
    private final Vocabulary vocabulary;
    private final Map<String, Sheet> sheets;
    private final Plot plot;
    private final Turn turn;

    Unanswered(Wording wording, Vocabulary vocabulary, Map<String, Sheet> sheets, Plot plot, Turn turn) {
        this.wording = wording;
        this.vocabulary = vocabulary;
        this.sheets = sheets;
        this.plot = plot;
        this.turn = turn;
    }

    /** Honest words for each question that no rule answered, and for crops without a sheet. */
    List<String> lines(List<Given> spoken) {
        Set<String> lines = new TreeSet<>();
        for (Inquiry inquiry : turn.heard().inquiries()) {
            boolean offTopic = OFF_TOPIC.equals(inquiry.topic());
            if (offTopic || !LISTS.contains(inquiry.question()) && !answered(inquiry, spoken)) {
                lines.add(noAnswer(inquiry));
            }
        }
        for (Logged line : turn.written()) {
            if (line.entry() instanceof Event event && event.crop() != null && !sheets.containsKey(event.crop())) {
                lines.add(talk("no-sheet", Map.of("crops", vocabulary.names().many(event.crop()))));
            }
        }
        turn.written().stream()
                .map(Logged::entry)
                .filter(SignSeen.class::isInstance)
                .map(SignSeen.class::cast)
                .filter(sign -> spoken.stream()
                        .noneMatch(given -> given.occasion() == Given.Occasion.SIGN
                                && given.neglect() != Given.Neglect.PERSON_HURT))
                .filter(sign -> !askedOf(sign, spoken))
                .filter(sign -> !(sign.sign().endsWith("watering") && feltTheSoil()))
                .forEach(sign -> lines.add(unknown(sign)));
        if (lines.isEmpty() && spoken.isEmpty() && tellsMoreOfATrouble()) {
            lines.add(talk("trouble-still-unknown", Map.of()));
        }
        return List.copyOf(lines);
    }

    /** "Is it normal that the parsnips are not up?" is answered when it was answered whether that is normal. */
    private boolean askedOf(SignSeen sign, List<Given> spoken) {
        return turn.heard().inquiries().stream().anyMatch(inquiry -> NORMAL.equals(inquiry.topic()))
                && spoken.stream()
                        .anyMatch(given ->
                                given.occasion() == Given.Occasion.ASKED && Objects.equals(given.crop(), sign.crop()));
    }

    private boolean tellsMoreOfATrouble() {
        return turn.written().stream()
                .anyMatch(line -> line.entry() instanceof Finding finding
                        && !finding.about().equals(Finding.OUTCOME));
    }

    private String unknown(SignSeen sign) {
        return sign.sign().equals(Troubles.UNNAMED)
                ? talk("trouble-unknown", Map.of())
                : talk("sign-unknown", Map.of("sign", sign.sign().replace('-', ' ')));
    }

    /** Soil told as dry or wet is answered as such; that the plants want less or more water is the same told twice. */
    private boolean feltTheSoil() {
        return turn.written().stream()
                .anyMatch(line -> line.entry() instanceof Event event && event.what() == What.SOIL_CHECKED);
    }

    private static boolean answered(Inquiry inquiry, List<Given> spoken) {
        return spoken.stream()
                .filter(given -> ANSWERS.contains(given.occasion()))
                .anyMatch(given -> inquiry.crop() == null || inquiry.crop().equals(given.crop()));
    }

    private String noAnswer(Inquiry inquiry) {
        if (inquiry.crop() != null && !sheets.containsKey(inquiry.crop())) {
            return talk("no-sheet-question", Map.of("crops", vocabulary.names().many(inquiry.crop())));
        }
        String key = inquiry.topic() == null
                ? inquiry.question().word()
                : inquiry.question().word() + ":" + inquiry.topic();
        String topic = wording.topics()
                .getOrDefault(key, wording.topics().get(inquiry.question().word()));
        if (topic != null) {
            return topic;
        }
        return plot.standing(turn.given(), inquiry)
                .filter(lines -> !inquiry.plantings().isEmpty())
                .map(lines -> noRule(inquiry) + "\n\n" + talk("where-they-stand", Map.of()) + "\n" + lines)
                .orElseGet(() -> noRule(inquiry));
    }

    private String noRule(Inquiry inquiry) {
        if (inquiry.crop() != null) {
            return talk("no-rule", Map.of("crops", vocabulary.names().many(inquiry.crop())));
        }
        boolean matter =
                inquiry.question() == Question.OTHER || !inquiry.plantings().isEmpty();
        return talk(matter ? "no-answer" : "which-crop-question", Map.of());
    }

    private String talk(String id, Map<String, String> words) {
        return Sentence.talk(wording.talk(), id, words);
    }
}
