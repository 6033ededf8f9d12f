package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.FeedLabel;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The figures that a question is about: seeds, cells, yield or compost, the size of a can, the strength on a label. */
final class NumbersAsked {
    private static final String FILE = "questions";
    private static final Set<Question> OPEN = Set.of(
            Question.OTHER,
            Question.HOW_TO,
            Question.WHEN_SOW,
            Question.HOW_MANY_FIT,
            Question.SPACING,
            Question.READY,
            Question.HOW_HARVEST,
            Question.STATUS);
    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";
    private static final String VOLUME = "(litres?|liters?|ltrs?|l|imp gal|gallons?|gal|pints?|quarts?)";
    private static final Pattern LABEL = Pattern.compile(NUMBER
            + "\\s*(ml|mls|millilitres?|milliliters?|cc)\\s*(?:of (?:\\w+ )?(?:feed|food|fertili[sz]er) )?(?:per|to|in|for|/|a|each|every)\\s*(?:each |every |an? )?"
            + NUMBER + "?\\s*" + VOLUME + "\\b");
    private static final Pattern ONE_TO =
            Pattern.compile("\\b1\\s*(?::|to|in|part to|part in)\\s*" + NUMBER + "(?!\\s*" + VOLUME + "|\\d)");
    private static final List<Pattern> CAN = List.of(
            Pattern.compile("\\bcans?\\b\\s*(?:is|are|of|holds?|takes?|has|=)?\\s*(?:about )?" + NUMBER + "\\s*"
                    + VOLUME + "\\b"),
            Pattern.compile(NUMBER + "[\\s-]*" + VOLUME + "[\\s-]*(?:watering )?can"));
    private static final double US_GALLON_LITRES = 3.785411784;
    private static final double GALLON_LITRES = 4.54609;

    private final PhraseBook<String> topics = new PhraseBook<>();

    NumbersAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.names(FILE, "/numbers").forEach(topic -> file.into(topics, "/numbers/" + topic, topic));
    }

    Set<String> vocabulary() {
        return topics.vocabulary();
    }

    /** The question with the number that it asks for and the figures told in the message. */
    Inquiry in(Inquiry inquiry, Passage passage, int from, int to) {
        if (inquiry.question() == Question.FEED_DOSE || inquiry.question() == Question.HOW_MUCH_WATER) {
            return feed(inquiry, passage);
        }
        List<PhraseBook.Found<String>> found =
                OPEN.contains(inquiry.question()) ? topics.find(passage.tokens(), from, to, passage) : List.of();
        return found.isEmpty()
                ? inquiry
                : inquiry.asking(Question.HOW_MANY_FIT).withTopic(found.get(0).meaning());
    }

    private static Inquiry feed(Inquiry inquiry, Passage passage) {
        boolean us = passage.situation().grower().units() == bothy.garden.Units.US;
        String text = passage.message().toLowerCase(Locale.ROOT);
        FeedLabel label = inquiry.question() == Question.FEED_DOSE ? label(text, us) : null;
        Double can = null;
        for (Pattern pattern : CAN) {
            Matcher told = pattern.matcher(text);
            if (can == null && told.find()) {
                can = number(told.group(1)) * litres(told.group(2), us);
            }
        }
        return label == null && can == null ? inquiry : inquiry.withFeed(label, can);
    }

    private static FeedLabel label(String text, boolean us) {
        Matcher told = LABEL.matcher(text);
        if (told.find()) {
            double water = (told.group(3) == null ? 1 : number(told.group(3))) * litres(told.group(4), us);
            double feed = number(told.group(1));
            return feed > 0 && water > 0 ? new FeedLabel(feed, water) : null;
        }
        Matcher parts = ONE_TO.matcher(text);
        return parts.find() && number(parts.group(1)) > 0 ? new FeedLabel(1000 / number(parts.group(1)), 1) : null;
    }

    private static double number(String told) {
        return Double.parseDouble(told.replace(',', '.'));
    }

    private static double litres(String unit, boolean us) {
        double gallon = us ? US_GALLON_LITRES : GALLON_LITRES;
        return switch (unit.charAt(0)) {
            case 'g', 'i' -> gallon;
            case 'p' -> gallon / 8;
            case 'q' -> gallon / 4;
            default -> 1;
        };
    }
}
