package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.said.SeedSaid;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
            Question.WHAT_TO_GROW,
            Question.HOW_MANY_FIT,
            Question.SPACING,
            Question.READY,
            Question.HOW_HARVEST,
            Question.STATUS);
    private static final List<Pattern> CAN = List.of(
            Pattern.compile("\\bcans?\\b\\s*(?:is|are|of|holds?|takes?|has|=)?\\s*(?:about )?" + FeedLabels.NUMBER
                    + "\\s*" + FeedLabels.VOLUME + "\\b"),
            Pattern.compile(FeedLabels.NUMBER + "[\\s-]*" + FeedLabels.VOLUME
                    + "[\\s-]*(?:watering )?(?:can|bottle|jug|bucket)\\b"));
    /** "My can holds 7": litres, or gallons of whoever counts in those. */
    private static final Pattern CAN_OF = Pattern.compile(
            "\\bcan\\s+(?:holds|takes|is)\\s+(?:about |only )?" + FeedLabels.NUMBER + "\\s*(?:$|[.,;?!])");
    /** What a question that gives a label may have been taken for. */
    private static final Set<Question> MIXED = Set.of(
            Question.OTHER,
            Question.STATUS,
            Question.HOW_TO,
            Question.HOW_MUCH_WATER,
            Question.HOW_MANY_FIT,
            Question.FEED_WHAT,
            Question.FEED_WHEN);

    /** Plants that fit in a bed whose size stands elsewhere in the message. */
    private static final String BED = "bed";

    private static final Pattern GERMINATION = Pattern.compile("\\b(\\d{1,3})\\s*(?:%|percent|per cent)");
    private static final Set<Question> OF_BEDS = Set.of(Question.HOW_MANY_FIT, Question.SPACING);
    private static final Set<String> CORNER = Set.of("triangle", "triangular");
    private static final Set<String> ROUND = Set.of("round", "circular", "circle");

    /** With one of these "1 in 500" tells of a feed. */
    private static final Set<String> FEEDS = Set.of(
            "feed", "food", "fertiliser", "fertilizer", "seaweed", "comfrey", "concentrate", "dilute", "dilution");

    private static final double LEAST_CAN_LITRES = 0.5;
    private static final double MOST_IN_A_ROW = 10_000;
    /** Wider apart than this stands no vegetable. */
    private static final double WIDEST_APART_M = 3;

    /** Litres to fill pots with. */
    static final String COMPOST = "compost";

    private static final Set<String> WHEN = Set.of("when", "often", "frequently", "start", "stop");

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
        Inquiry byArea = FeedRates.in(inquiry, passage);
        if (!byArea.equals(inquiry)) {
            return byArea;
        }
        boolean ofLabel = MIXED.contains(inquiry.question())
                && (passage.words().contains("much") || labelAndCan(passage))
                && (FeedLabels.measured(passage).isPresent()
                        || FeedLabels.in(passage).isPresent()
                                && passage.words().stream().anyMatch(FEEDS::contains));
        boolean ofWater = inquiry.question() == Question.HOW_MUCH_WATER;
        if (ofWater
                && topics.find(passage.tokens(), from, to, passage).stream()
                        .anyMatch(topic -> topic.meaning().equals(COMPOST))) {
            // "How many litres of compost do 12 pots need".
            return counting(inquiry.asking(Question.HOW_MANY_FIT).withTopic(COMPOST), passage);
        }
        if (ofLabel || inquiry.question() == Question.FEED_DOSE || ofWater) {
            return feed(ofLabel ? inquiry.asking(Question.FEED_DOSE) : inquiry, passage);
        }
        List<PhraseBook.Found<String>> found =
                OPEN.contains(inquiry.question()) ? topics.find(passage.tokens(), from, to, passage) : List.of();
        boolean fitting = found.isEmpty()
                ? OF_BEDS.contains(inquiry.question())
                : found.get(0).meaning().equals(BED);
        if (fitting && inquiry.length() != null) {
            return shaped(found.isEmpty() ? inquiry : inquiry.asking(Question.HOW_MANY_FIT), passage);
        }
        return found.isEmpty() || fitting
                ? inquiry
                : counting(
                        inquiry.asking(Question.HOW_MANY_FIT)
                                .withTopic(found.get(0).meaning()),
                        passage);
    }

    /** "The feed says 20 ml in 5 litres, my can is 9 litres": told so, it is the dose that is wanted. */
    private static boolean labelAndCan(Passage passage) {
        String text = passage.message().toLowerCase(Locale.ROOT);
        return FeedLabels.measured(passage).isPresent()
                && CAN.stream().anyMatch(can -> can.matcher(text).find())
                && passage.words().stream().noneMatch(WHEN::contains);
    }

    /** "Round bed 2 m across", "triangle 2 m by 2 m". */
    private static Inquiry shaped(Inquiry inquiry, Passage passage) {
        boolean round = passage.words().stream().anyMatch(ROUND::contains);
        boolean corner = inquiry.width() != null && passage.words().stream().anyMatch(CORNER::contains);
        return round ? inquiry.withTopic("round-bed") : corner ? inquiry.withTopic("corner-bed") : inquiry;
    }

    private static Inquiry counting(Inquiry inquiry, Passage passage) {
        return switch (inquiry.topic()) {
            case COMPOST -> PotsAsked.in(inquiry, passage);
            case "cells" ->
                PotsAsked.cells(passage)
                        .map(cells -> inquiry.with(inquiry.count(), inquiry.length(), Double.valueOf(cells), "cells"))
                        .orElseGet(() -> ofSeed(inquiry, passage));
            case "seeds" -> ofSeed(inquiry, passage);
            case "row" -> ofRow(inquiry, passage);
            default -> inquiry;
        };
    }

    /** "26 pieces, how long a row do I need, 35 cm between", "how long a row at 4 inch". */
    private static Inquiry ofRow(Inquiry inquiry, Passage passage) {
        Integer plants = passage.counts(0, passage.size()).stream()
                .filter(number -> number.value() > 1 && number.value() < MOST_IN_A_ROW)
                .map(number -> Integer.valueOf((int) number.value()))
                .findFirst()
                .orElse(null);
        Double apart = passage.quantities().stream()
                .filter(quantity -> quantity.unit().equals("m") && quantity.value() < WIDEST_APART_M)
                .map(Quantity::value)
                .findFirst()
                .orElse(null);
        return inquiry.with(plants, null, apart, apart == null ? null : "m apart");
    }

    /** With the germination that the packet promises, or else the age of the seed, where it was told. */
    private static Inquiry ofSeed(Inquiry inquiry, Passage passage) {
        Matcher percent = GERMINATION.matcher(passage.message().toLowerCase(Locale.ROOT));
        if (percent.find()) {
            return inquiry.with(inquiry.count(), inquiry.length(), Double.valueOf(percent.group(1)), "%");
        }
        return passage.seeds().stream()
                .map(SeedSaid::years)
                .filter(Objects::nonNull)
                .findFirst()
                .map(years -> inquiry.with(inquiry.count(), inquiry.length(), Double.valueOf(years), "years"))
                .orElse(inquiry);
    }

    /** A question about feed or water with the can and, of feed, the label told in the message. */
    static Inquiry feed(Inquiry inquiry, Passage passage) {
        Units units = passage.situation().grower().units();
        String text = passage.message().toLowerCase(Locale.ROOT);
        Optional<FeedLabels.Found> label =
                inquiry.question() == Question.FEED_DOSE ? FeedLabels.in(passage) : Optional.empty();
        Double can = null;
        for (Pattern pattern : CAN) {
            Matcher told = pattern.matcher(text);
            if (can == null && told.find()) {
                can = FeedLabels.number(told.group(1)) * FeedLabels.litres(told.group(2), units);
            }
        }
        Matcher bare = CAN_OF.matcher(text);
        if (can == null && bare.find()) {
            can = FeedLabels.number(bare.group(1)) * FeedLabels.litres(units == Units.US ? "gallons" : "litres", units);
        }
        can = can == null && label.isPresent() ? water(passage, label.get()) : can;
        if (can == null && label.isEmpty() && PotsAsked.sized(text)) {
            // "How much do 6 tomatoes in 20 litre pots need": no can.
            return inquiry.with(inquiry.count(), inquiry.length(), null, null);
        }
        return label.isEmpty() && can == null
                ? inquiry
                : inquiry.withFeed(label.map(FeedLabels.Found::label).orElse(null), can);
    }

    /** "How much for 2 gallons": water told beside the label, {@code null} when none is. */
    private static Double water(Passage passage, FeedLabels.Found label) {
        return passage.quantities().stream()
                .filter(quantity -> quantity.unit().equals("L") && quantity.value() >= LEAST_CAN_LITRES)
                .filter(quantity -> !label.covers(passage.tokens().get(quantity.end() - 1)))
                .map(quantity -> exactly(quantity, passage))
                .findFirst()
                .orElse(null);
    }

    /** Two gallons to the last figure: of rounded litres a spoon less would fit in. */
    private static Double exactly(Quantity water, Passage passage) {
        String unit = passage.word(water.end() - 1);
        return unit.matches(FeedLabels.VOLUME)
                ? water.told()
                        * FeedLabels.litres(unit, passage.situation().grower().units())
                : water.value();
    }
}
