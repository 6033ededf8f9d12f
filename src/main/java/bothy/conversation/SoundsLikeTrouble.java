package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Heard;
import bothy.garden.Question;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.Description;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Messages whose words sound like a trouble and that tell or ask something else: of ripeness, of supper, of holes made to plant in. */
final class SoundsLikeTrouble {
    private static final Set<What> BEGUN = EnumSet.of(What.SOWN, What.PLANTED_OUT, What.PRICKED_OUT, What.POTTED_ON);

    /** Holes that were made to set something in: "2 per hole", "12 holes". */
    private static final Pattern DUG =
            Pattern.compile("\\b(per|each|every|an?|one|deep|in|the|\\d+|planting) holes?\\b");

    /** Matters whose words may sound like a trouble. */
    private static final Set<String> OF_NO_TROUBLE = Set.of(
            "into-the-greenhouse",
            "was-it-too-early",
            "chitting",
            "catches-blight",
            "will-they-ripen",
            "year-review",
            "next-year",
            "scapes"); // "The curly flower thing".

    /** Questions of what is picked and kept. */
    private static final Set<String> OF_KITCHEN = Set.of("harvest-size", "freezing", "pesto");

    /** "How long a row do 26 potatoes need" tells of no trouble. */
    private static final Set<Question> OF_PLANNING = EnumSet.of(Question.HOW_MANY_FIT, Question.SPACING);

    /** Questions of what may come. */
    private static final Set<String> AHEAD = Set.of("will-split", "will-bolt", "blight-risk", "night-cold");

    private final Description description;
    private final String text;
    private final Function<String, Description> reading;

    /** @param reading looks at any part of the message as a description */
    SoundsLikeTrouble(Description description, String text, Function<String, Description> reading) {
        this.description = description;
        this.text = text;
        this.reading = reading;
    }

    /** Whether the message is one of them. */
    boolean toldIn(Heard heard) {
        boolean brief = text.split("\\s+").length <= LooselyTold.BRIEF;
        return asksAMatter(heard)
                || asksWhatToGrow(heard)
                || asksAhead(heard)
                || setInHoles(heard)
                || justUp(heard)
                || lostOnly(heard)
                || countIsOpen(heard)
                || asksOfTheHarvest(heard) && (brief || showsRipeness(heard))
                || asksOfEating(heard) && brief;
    }

    /** "Sowed 16 beans, 2 per hole": the holes are the grower's own. */
    private boolean setInHoles(Heard heard) {
        return heard.signs().isEmpty()
                && description.complaints() <= 1
                && DUG.matcher(text.toLowerCase(Locale.ROOT)).find()
                && heard.statements().stream()
                        .anyMatch(told -> told.sure()
                                && (told.event().what() == What.SOWN
                                        || told.event().what() == What.PLANTED_OUT));
    }

    /** "Planted 7 tomatoes in the bags, one snapped": a loss that is told by itself shows no trouble to look into. */
    private boolean lostOnly(Heard heard) {
        List<Statement> lost = heard.statements().stream()
                .filter(told -> told.sure()
                        && told.event().what() == What.DIED
                        && told.event().count() != null)
                .toList();
        return !lost.isEmpty()
                && heard.signs().isEmpty()
                && lost.size() < heard.statements().size()
                && reading.apply(LooselyTold.beside(text, lost)).complaints() == 0;
    }

    /** "Basil up too, like tiny green dots" shows seedlings. */
    private boolean justUp(Heard heard) {
        return heard.signs().isEmpty()
                && text.split("\\s+").length <= LooselyTold.BRIEF
                && description.clearComplaints() <= 1
                && heard.statements().stream()
                        .anyMatch(told -> told.sure() && told.event().what() == What.EMERGED);
    }

    /** "Will the tomatoes split after all that rain?": nothing has split. */
    private boolean asksAhead(Heard heard) {
        return heard.signs().isEmpty()
                && heard.inquiries().stream()
                        .anyMatch(inquiry -> inquiry.topic() != null && AHEAD.contains(inquiry.topic())
                                || OF_PLANNING.contains(inquiry.question()) && description.clearComplaints() == 0);
    }

    /** "The silks have gone brown, are they ready?" tells of ripeness. */
    private static boolean asksOfTheHarvest(Heard heard) {
        return heard.inquiries().stream()
                .anyMatch(inquiry -> inquiry.question() == Question.READY
                        || inquiry.question() == Question.HOW_HARVEST
                        || inquiry.topic() != null && OF_KITCHEN.contains(inquiry.topic()));
    }

    /** "A windy balcony, what is worth growing?" tells of the place, and nothing grows yet. */
    private boolean asksWhatToGrow(Heard heard) {
        return description.clearComplaints() <= 1
                && heard.signs().isEmpty()
                && heard.inquiries().stream().anyMatch(inquiry -> inquiry.question() == Question.WHAT_TO_GROW);
    }

    /** "It has turned orange and the stalk is cracking, cut it or leave it" tells of ripeness. */
    private boolean showsRipeness(Heard heard) {
        return description.clearComplaints() <= 1
                && heard.inquiries().stream()
                        .anyMatch(inquiry -> !inquiry.cues().isEmpty());
    }

    /** "When can they go in the tunnel" asks of the tunnel, and tells of none in a leaf. */
    private static boolean asksAMatter(Heard heard) {
        return heard.inquiries().stream().anyMatch(inquiry -> OF_NO_TROUBLE.contains(String.valueOf(inquiry.topic())));
    }

    /** "Can guinea pigs eat carrot tops?" tells of no gnawed carrots. */
    private static boolean asksOfEating(Heard heard) {
        return heard.inquiries().stream().anyMatch(inquiry -> inquiry.question() == Question.SAFE)
                && heard.statements().isEmpty();
    }

    /** "Sowed courgettes, 4 spots of 2 seeds" tells of no spots: how many there are is still to be asked. */
    private static boolean countIsOpen(Heard heard) {
        return heard.doubt() != null
                && heard.doubt().about() == Doubt.About.HOW_MANY
                && heard.statements().stream()
                        .anyMatch(statement -> BEGUN.contains(statement.event().what()));
    }
}
